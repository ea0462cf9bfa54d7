using ConeService.Contract.Answers;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Cones;

/// <summary>What a user of an end point must know, in sentences.</summary>
internal static class EndPointNotes
{
    /// <summary>The notes for one value.</summary>
    public static List<Message> For(ConeChart chart, ChartCone cone, HeatingRate? rate, EndPointValue value)
    {
        var notes = new List<Message>();
        if (value.Basis == Basis.Extrapolated)
        {
            notes.Add(Message.Of(
                "cones.extrapolated",
                ("chart", chart.Id),
                ("cone", cone.Cone.ToString()),
                ("slowest", cone.Cells[0].RateCelsiusPerHour),
                ("fastest", cone.Cells[^1].RateCelsiusPerHour),
                ("rate", rate?.ToString())));
        }

        if (value.Basis == Basis.Borrowed)
        {
            notes.Add(Message.Of(
                "cones.borrowed",
                ("chart", chart.Id),
                ("cone", cone.Cone.ToString()),
                ("lender", ConeCharts.DefaultChart),
                ("rate", value.From[0].RateCelsiusPerHour)));
        }

        if (rate?.CelsiusPerHour > 300m) notes.Add(Message.Of("cones.nothing-measured"));
        if (rate is null) notes.Add(Message.Of("cones.no-uncertainty"));
        notes.AddRange(value.From.Where(c => c.Note is not null).Select(c => Message.Verbatim(c.Note!)));
        return notes;
    }
}
