using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Datasets;
using ConeService.Contract.Texts;
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
            .Select(g => new SharedFigure(
                g.Key,
                PrintedCells.Fahrenheit(g.FirstOrDefault(c => c.Fahrenheit is not null) ?? g.First()),
                [.. g.Select(PrintedCells.Point)]))
            .ToList();
        return new(
            Message.Sentences(
                [Message.Of("cones.charts-differ"), .. byRate.Select(r => AtRate(cone, r.Rate, r.Cells)), .. shared.Select(Same)]),
            [.. byRate.Select(r => new RateSpread(
                r.Rate, r.Cells[0].Celsius, r.Cells[0].Chart, r.Cells[^1].Celsius, r.Cells[^1].Chart, At(r.Cells[0]), At(r.Cells[^1])))],
            shared);
    }

    private static Address At(EndPointRow cell) => TableAddress.OfCell(cell.Chart, cell.Cone, cell.RateCelsiusPerHour);

    private static Message AtRate(Cone cone, decimal rate, IEnumerable<EndPointRow> cells) => Message.Of(
        "cones.differ-at-rate",
        ("rate", rate),
        ("cone", cone.ToString()),
        ("figures", cells.Select(c => Message.Of(
            "cones.figure-on-chart", ("celsius", c.Celsius),
            ("fahrenheit", Whole(PrintedCells.Fahrenheit(c))), ("chart", c.Chart))).ToArray()));

    private static Message Same(SharedFigure figure) => Message.Of(
        "cones.same-figure",
        ("celsius", figure.Celsius),
        ("fahrenheit", Whole(figure.Fahrenheit)),
        ("charts", figure.PrintedBy.Select(Printer).Reverse().Aggregate(
            (rest, first) => Message.Of("cones.and-by", ("first", first), ("rest", rest)))));

    private static Message Printer(PrintedPoint point) => point.RateCelsiusPerHour is { } rate
        ? Message.Of("cones.chart-at-rate", ("chart", point.Chart), ("rate", rate))
        : Message.Of("cones.chart-without-rate", ("chart", point.Chart));

    private static decimal Whole(decimal value) => Math.Round(value, MidpointRounding.AwayFromZero);
}
