using System.Globalization;
using ConeService.Api.Http;
using ConeService.Contract.Plans;
using ConeService.Data;
using CsvHelper;

namespace ConeService.Api.Features.Plans;

/// <summary>A plan as CSV: a line for each piece, firing and layer, then one for each that is left undone.</summary>
internal static class PlanCsv
{
    private static readonly string[] Columns =
    [
        "firing", "kiln", "loading_from", "start", "opening_from", "unloaded_at", "firing_kind", "cone", "atmosphere", "schedule",
        "fill_percent", "layer", "layer_height_millimetres", "piece", "count", "stage", "left_undone", "dataset_version",
    ];

    /// <summary>Writes the plan; blanks stand for what is null in JSON.</summary>
    public static string Write(FiringPlan plan)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = CsvWriter.Create(text, Csv.Writing, leaveOpen: true);
        csv.WriteRecord(Columns);
        foreach (var firing in plan.Firings)
        {
            foreach (var layer in firing.Layers)
            {
                foreach (var piece in layer.Pieces) Line(csv, plan, firing, layer, piece);
            }
        }

        foreach (var undone in plan.Unplanned)
        {
            for (var blank = 0; blank < 13; blank++) csv.WriteField("");
            csv.WriteField(Csv.Inert(undone.Id));
            csv.WriteField(undone.Count);
            csv.WriteField(undone.Stage);
            csv.WriteField(EnumWords.Word(undone.Reason));
            csv.WriteField(plan.DatasetVersion);
            csv.EndRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    private static void Line(CsvWriter csv, FiringPlan plan, PlanFiring firing, PlanLayer layer, LayerPieces piece)
    {
        csv.WriteField(firing.Number);
        csv.WriteField(Csv.Inert(firing.KilnId));
        csv.WriteField(Moment(firing.LoadingFrom));
        csv.WriteField(Moment(firing.Start));
        csv.WriteField(Moment(firing.OpeningFrom));
        csv.WriteField(Moment(firing.UnloadedAt));
        csv.WriteField(Csv.Inert(firing.FiringKind));
        csv.WriteField(Csv.ConeAsSent(firing.Cone));
        csv.WriteField(Csv.Inert(firing.Atmosphere));
        csv.WriteField(firing.Schedule);
        csv.WriteField(firing.FillPercent);
        csv.WriteField(layer.Number);
        csv.WriteField(layer.HeightMillimetres);
        csv.WriteField(Csv.Inert(piece.Id));
        csv.WriteField(piece.Count);
        csv.WriteField(piece.Stage);
        csv.WriteField("");
        csv.WriteField(plan.DatasetVersion);
        csv.EndRecord();
    }

    private static string Moment(DateTimeOffset at) => at.ToString("yyyy-MM-ddTHH:mm:sszzz", CultureInfo.InvariantCulture);
}
