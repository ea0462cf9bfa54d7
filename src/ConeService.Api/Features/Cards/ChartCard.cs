using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>A whole chart, hottest cone first; cones that differ by a zero alone are marked apart.</summary>
internal static class ChartCard
{
    // Without a zero in front, with one.
    private static readonly bool[] Signs = [false, true];

    /// <summary>Name of the card.</summary>
    public const string Path = "chart";

    private const int MostUsual = 7;

    public static readonly string[] Names = ["rate", "chart", "unit"];

    public static Card Of(CardAsk ask)
    {
        var cones = ask.Reference.Cones;
        var chart = cones.Chart(cones.DefaultChart).Chart;
        IReadOnlyList<EndPoint> points = [];
        IReadOnlyList<string> sources = [];
        RefusedException? refused = null;
        try
        {
            if (ask["unit"] is { } unit and not ("both" or "C" or "F"))
            {
                throw new RefusedException(new Finding(
                    FindingCodes.UnitsUnknown, "unit", unit, Message.Of("schedules.units-unknown", ("sent", unit)),
                    Message.Verbatim(["C", "F", "both"])));
            }

            if (ask["chart"] is { } named) chart = cones.Chart(named).Chart;
            (points, sources) = Points(cones, chart, ask["rate"]);
        }
        catch (RefusedException failure)
        {
            (refused, sources) = (failure, [chart.Source]);
        }

        return new(
            CardFrame.Path(Path, ask, Names), "Cone chart",
            $"Every cone of the chart “{chart.Name}” with its temperature, hottest first.",
            body => Write(body, ask, chart, points, refused), sources)
        {
            Refused = refused,
        };
    }

    /// <summary>Every cone that the chart can tell of at the rate, hottest cone first.</summary>
    /// <exception cref="RefusedException">None can be told, for the same reason.</exception>
    public static (IReadOnlyList<EndPoint> Points, IReadOnlyList<string> Sources) Points(
        ConeReference cones, ChartSummary chart, string? rate)
    {
        var onChart = cones.Chart(chart.Id).EndPoints.Select(e => e.Cone).ToHashSet();
        var all = cones.List().Items.Select(i => i.Cone).Where(onChart.Contains).Reverse().ToList();
        // The first says what is wrong with the rate, if something is; after that some cones may be out of reach of it.
        RefusedException? refused = null;
        var points = new List<EndPoint>();
        foreach (var cone in all)
        {
            try
            {
                points.Add(cones.EndPoint(cone, rate, chart.Id));
            }
            catch (RefusedException failure)
            {
                refused ??= failure;
            }
        }

        return points.Count > 0 ? (points, [.. points.SelectMany(p => p.Sources).Distinct()]) : throw refused!;
    }

    private static void Write(
        CardBody body, CardAsk ask, ChartSummary chart, IReadOnlyList<EndPoint> points, RefusedException? refused)
    {
        var charts = ask.Reference.Cones.Charts();
        var unit = ask["unit"] ?? "both";
        if (!ask.Look.IsShort)
        {
            new CardForm(ask, Path)
                .Choice("chart", "Chart", charts.Items.Select(c => (c.Id, c.Name)), charts.DefaultChart)
                .Choice("rate", "Heating rate", [("", "the chart’s usual one"), .. chart.RatesCelsiusPerHour
                    .Select(r => ($"{CardWords.Number(r)}C/h", CardWords.Rate(r)))], "")
                .Choice("unit", "Unit", [("both", "°C and °F"), ("C", "°C"), ("F", "°F")], "both")
                .Into(body, "Show");
        }

        CardFrame.Wrong(body, refused);
        if (points.Count == 0) return;
        body.Say($"{chart.Name}, heated at {CardWords.Rate(points[0].RateCelsiusPerHour)} over the last 100 °C.", needed: true);
        body.Say("The zero counts down: cone 06 is far cooler than cone 6.", "warn", needed: true);
        List<Cell> heads = ["Cone"];
        if (unit is "both" or "C") heads.Add(Cell.Number("°C"));
        if (unit is "both" or "F") heads.Add(Cell.Number("°F"));
        // A short card has no room for a column that mostly says the same: it marks what was not seen in print.
        var isShort = ask.Look.IsShort;
        if (!isShort) heads.Add("How sure");
        var twins = points.Select(p => p.Cone).ToHashSet();
        Cell[] Row(EndPoint p)
        {
            List<Cell> row = [Named(p.Cone, twins, isShort && p.Confidence == Confidence.FromMemory ? "*" : "")];
            if (unit is "both" or "C") row.Add(Cell.Number(CardWords.Whole(p.Celsius)));
            if (unit is "both" or "F") row.Add(Cell.Number(CardWords.Whole(p.Fahrenheit)));
            if (!isShort) row.Add(CardWords.Of(p.Confidence));
            return [.. row];
        }

        if (isShort)
        {
            var usual = Usual(ask.Reference, points);
            if (usual.Exists(p => p.Confidence == Confidence.FromMemory)) body.Say("* from memory, not seen in print", "small");
            body.Table("Cones that studios fire most", [.. heads], usual.Select(Row));
            return;
        }

        var shown = points;
        body.Table(
            "Where each cone goes down, hottest first",
            [.. heads],
            [.. Signs
                .Select(zero => (
                    zero ? "With a zero: cooler" : "Without a zero: hotter",
                    (IReadOnlyList<Cell[]>)[.. shown.Where(p => p.Cone[0] == '0' == zero).Select(Row)]))
                .Where(g => g.Item2.Count > 0)]);
        foreach (var assumed in points[0].Assumed.Select(a => a.Reason.ToString()).Distinct()) body.Say(assumed, "small");
        body.Say("A witness cone beside the ware decides, not the meter. " + FromMemory.Of(ask.Reference), "small");
    }

    // A cone that another differs from by its zero alone carries the other beside it.
    private static Cell Named(string cone, HashSet<string> all, string mark)
    {
        var twin = cone[0] == '0' ? cone[1..] : "0" + cone;
        return all.Contains(twin)
            ? new Cell($"{cone}{mark} not {twin}", Markup: $"{cone}{mark} <span class=\"mark\">not {twin}</span>")
            : cone + mark;
    }

    // Those that most kinds of firing go to.
    private static List<EndPoint> Usual(FiringReference reference, IReadOnlyList<EndPoint> points)
    {
        var usual = reference.Dataset.UsualFirings.CountBy(u => u.Cone).OrderByDescending(c => c.Value).Take(MostUsual)
            .Select(c => c.Key).ToHashSet();
        var common = points.Where(p => usual.Contains(p.Cone)).ToList();
        return common.Count > 0 ? common : [.. points];
    }
}
