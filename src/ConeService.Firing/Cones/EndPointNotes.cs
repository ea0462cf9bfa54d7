using ConeService.Contract.Answers;
using ConeService.Contract.Quantities;

namespace ConeService.Firing.Cones;

/// <summary>What a user of an end point must know, in sentences.</summary>
internal static class EndPointNotes
{
    /// <summary>The notes for one value.</summary>
    public static List<string> For(ConeChart chart, ChartCone cone, HeatingRate? rate, EndPointValue value)
    {
        var notes = new List<string>();
        if (value.Basis == Basis.Extrapolated)
        {
            notes.Add($"Chart {chart.Id} prints cone {cone.Cone} only from {cone.Cells[0].RateCelsiusPerHour} to {cone.Cells[^1].RateCelsiusPerHour} °C/h; {rate} is outside, so σ is widened.");
        }

        if (value.Basis == Basis.Borrowed)
        {
            notes.Add($"Chart {chart.Id} has no kinetics for cone {cone.Cone}: the shape of the curve of {ConeCharts.DefaultChart} was moved through its value at {value.From[0].RateCelsiusPerHour} °C/h.");
        }

        if (rate?.CelsiusPerHour > 300m)
        {
            notes.Add("Above 300 °C/h nothing was measured; above 150 °C/h differences inside the kiln and the lag of the thermocouple weigh more than the cone.");
        }

        if (rate is null)
        {
            notes.Add("The chart states no heating rate, so no uncertainty can be given: a cone moves by tens of degrees between a slow and a fast firing.");
        }

        notes.AddRange(value.From.Select(c => c.Note).OfType<string>());
        return notes;
    }
}
