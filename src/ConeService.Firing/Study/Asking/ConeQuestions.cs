using System.Globalization;
using ConeService.Contract.Cones;
using ConeService.Data;

namespace ConeService.Firing.Study.Asking;

/// <summary>Cones to temperatures and back, and which is hotter: from printed cells of the chart that answers by default.</summary>
internal sealed class ConeQuestions
{
    // Choices nearer than this would be decided by the chart and the rate, and not by knowing cones.
    private const decimal LeastApart = 15;
    private const int Choices = 3;

    private readonly Dataset data;
    private readonly IReadOnlyList<EndPointRow> cells;
    private readonly string chart;

    public ConeQuestions(Dataset data, Evidenced evidenced, string chart)
    {
        (this.data, this.chart) = (data, chart);
        cells = [.. data.EndPoints.Where(
            e => e.Chart == chart && e.RateCelsiusPerHour is not null && evidenced.MayAsk(e.Confidence, [e.Source]))];
    }

    /// <summary>The questions.</summary>
    public IEnumerable<QuestionDraft> All() =>
        from cell in cells
        from draft in (QuestionDraft?[])[Temperature(cell), Back(cell), Hottest(cell)]
        where draft is not null
        select draft;

    private QuestionDraft? Temperature(EndPointRow cell) => Draft(
        "cones-to-temperatures", cell,
        $"A kiln rises {Rate(cell)} at the end. At about which temperature does cone {cell.Cone} go down?",
        Degrees(cell.Celsius),
        [.. Others(cell).Select(o => Degrees(o.Celsius)), $"{Fahrenheit(cell):0} °C"],
        MixUp(cell) is { } other
            ? $"Cone {cell.Cone} goes down at {Degrees(cell.Celsius)} ({Fahrenheit(cell):0} °F); "
                + $"{Degrees(other.Celsius)} belongs to cone {other.Cone}."
            : $"Cone {cell.Cone} goes down at {Degrees(cell.Celsius)} ({Fahrenheit(cell):0} °F).");

    private QuestionDraft? Back(EndPointRow cell) => Draft(
        "temperatures-to-cones", cell,
        $"A kiln rises {Rate(cell)} and is switched off at {Degrees(cell.Celsius)}. Which cone has just gone down?",
        $"cone {cell.Cone}", [.. Others(cell).Select(o => $"cone {o.Cone}")],
        $"{Degrees(cell.Celsius)} is the end point of cone {cell.Cone}. "
        + "Cones with a zero in front count backwards: 06 is far cooler than 6.");

    private QuestionDraft? Hottest(EndPointRow cell)
    {
        IReadOnlyList<EndPointRow> cooler = [.. Others(cell).Where(o => o.Celsius <= cell.Celsius - LeastApart)];
        return Draft(
            "hotter-or-cooler", cell, $"Which of these cones is the hottest, in a kiln that rises {Rate(cell)}?",
            $"cone {cell.Cone}", [.. cooler.Select(o => $"cone {o.Cone}")],
            $"Cone {cell.Cone} goes down at {Degrees(cell.Celsius)}; the others go down sooner. A zero in front means cooler, "
            + "and the bigger the number behind it, the cooler.");
    }

    // The cone with the other sign first: the commonest mistake; then those around it, the nearer first.
    private List<EndPointRow> Others(EndPointRow cell)
    {
        var others = cells.Where(c => c.RateCelsiusPerHour == cell.RateCelsiusPerHour && Math.Abs(c.Celsius - cell.Celsius) >= LeastApart)
            .OrderBy(c => Math.Abs(c.Celsius - cell.Celsius)).ToList();
        if (MixUp(cell) is { } mixUp && others.Remove(mixUp)) others.Insert(0, mixUp);
        var kept = new List<EndPointRow>();
        foreach (var other in others.Where(o => kept.All(k => Math.Abs(k.Celsius - o.Celsius) >= LeastApart))) kept.Add(other);
        return kept;
    }

    private EndPointRow? MixUp(EndPointRow cell)
    {
        var other = Cone.Parse(cell.Cone).MixUp.ToString();
        return cells.FirstOrDefault(c => c.Cone == other && c.RateCelsiusPerHour == cell.RateCelsiusPerHour);
    }

    private QuestionDraft? Draft(string topic, EndPointRow cell, string stem, string right, IReadOnlyList<string> wrong, string why) =>
        wrong.Count < Choices ? null : new(
            topic, $"{cell.Cone}-{cell.Rate}", stem, right, [.. wrong.Take(Choices - 1), wrong[^1]],
            $"{why} Chart: {data.Charts.First(c => c.Id == chart).Title}.", [cell.Source], cell.Confidence, "end-points",
            string.Join('@', cell.Chart, cell.Cone, cell.Rate));

    private static decimal Fahrenheit(EndPointRow cell) => cell.Fahrenheit ?? Math.Round((cell.Celsius * 9 / 5) + 32);

    private static string Degrees(decimal celsius) => string.Create(CultureInfo.InvariantCulture, $"{celsius:0} °C");

    private static string Rate(EndPointRow cell) => string.Create(CultureInfo.InvariantCulture, $"{cell.RateCelsiusPerHour:0} °C an hour");
}
