using ConeService.Contract.Cones;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Cones;

/// <summary>Describes charts and the scale as the API lists them.</summary>
/// <param name="charts">The charts.</param>
internal sealed class ChartDescriber(ConeCharts charts)
{
    /// <summary>All charts.</summary>
    public ChartList List() => new(charts.Dataset.VersionId, ConeCharts.DefaultChart, [.. charts.Charts.Select(Summary)]);

    /// <summary>One chart with every cell.</summary>
    public ChartDetail Detail(ConeChart chart) => new(
        charts.Dataset.VersionId,
        Summary(chart),
        [.. chart.Cones.SelectMany(c => c.Cells).Select(PrintedCells.OfChart)],
        [.. chart.Cones.SelectMany(c => c.Cells).Select(c => c.Source).Prepend(chart.Row.Source).Distinct()]);

    /// <summary>The scale.</summary>
    public ConeList Scale()
    {
        var rate = charts.Default.DefaultRate;
        return new(charts.Dataset.VersionId, Message.Of("cones.scale-note"), [.. charts.Scale.Cones.Select(cone =>
        {
            var row = charts.Scale.Row(cone);
            var cell = charts.Default.Find(cone)?.CellAt(rate);
            return new ConeListItem(
                cone.ToString(), row.Kind, row.WholeStep,
                cell is null ? null : PrintedCells.EndPoint(cell),
                [.. charts.Charts.Where(c => c.Find(cone) is not null).Select(c => c.Id)],
                row.Confidence, row.Sources);
        })]);
    }

    private static ChartSummary Summary(ConeChart chart)
    {
        var cells = chart.Cones.SelectMany(c => c.Cells).ToList();
        return new(
            chart.Id, chart.Row.Title, chart.Row.ConeForm, chart.Row.Composition,
            chart.Rates, chart.DefaultRate?.CelsiusPerHour,
            chart.Cones[0].Cone.ToString(), chart.Cones[^1].Cone.ToString(),
            cells.Count,
            [.. cells.CountBy(c => c.Confidence).OrderBy(c => c.Key).Select(c => new ConfidenceCount(c.Key, c.Value))],
            chart.Row.Confidence, chart.Row.Source, chart.Row.Note, chart.Row.Evidence?.Locator);
    }
}
