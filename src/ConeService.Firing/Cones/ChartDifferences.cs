using System.Globalization;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>Explains why one chart says 2232 °F and another 2269 °F for the same cone.</summary>
internal static class ChartDifferences
{
    /// <summary>The explanation; null when only one cell is printed.</summary>
    public static ChartDifference? Explain(Cone cone, IReadOnlyList<EndPointRow> cells)
    {
        if (cells.Count < 2) return null;
        var byRate = cells.Where(c => c.RateCelsiusPerHour is not null)
            .GroupBy(c => c.RateCelsiusPerHour!.Value)
            .Where(g => g.Count() > 1)
            .OrderBy(g => g.Key)
            .Select(g => (Rate: g.Key, Cells: g.OrderBy(c => c.Celsius).ToList()))
            .ToList();
        var shared = cells.GroupBy(c => c.Celsius)
            .Where(g => g.Select(c => c.RateCelsiusPerHour).Distinct().Count() > 1)
            .OrderBy(g => g.Key)
            .Select(g => new SharedFigure(g.Key, Fahrenheit(g), [.. g.Select(PrintedPoint.Of)]))
            .ToList();
        var sentences = new List<string> { "A figure for a cone means something only with its chart and its heating rate." };
        sentences.AddRange(byRate.Select(r => $"At {r.Rate} °C/h cone {cone} is {string.Join(", ", r.Cells.Select(c => $"{Both(c)} on {c.Chart}"))}."));
        sentences.AddRange(shared.Select(s =>
            $"The same {s.Celsius} °C ({Whole(s.Fahrenheit)} °F) is printed by {string.Join(" and by ", s.PrintedBy.Select(p => $"{p.Chart} {(p.RateCelsiusPerHour is { } r ? $"at {r} °C/h" : "without a rate")}"))}."));
        return new(
            string.Join(" ", sentences),
            [.. byRate.Select(r => new RateSpread(r.Rate, r.Cells[0].Celsius, r.Cells[0].Chart, r.Cells[^1].Celsius, r.Cells[^1].Chart))],
            shared);
    }

    private static decimal Fahrenheit(IEnumerable<EndPointRow> cells) =>
        cells.Select(c => c.Fahrenheit).FirstOrDefault(f => f is not null) ?? Temperature.ToFahrenheit(cells.First().Celsius);

    private static string Both(EndPointRow cell) => $"{cell.Celsius} °C ({Whole(cell.Fahrenheit ?? Temperature.ToFahrenheit(cell.Celsius))} °F)";

    private static string Whole(decimal value) => Math.Round(value, MidpointRounding.AwayFromZero).ToString(CultureInfo.InvariantCulture);
}
