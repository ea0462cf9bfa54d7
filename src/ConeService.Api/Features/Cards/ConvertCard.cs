using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Data;
using ConeService.Firing;

namespace ConeService.Api.Features.Cards;

/// <summary>A converter: a cone to its temperature, a temperature to the cone that it reaches, and their neighbours.</summary>
internal static class ConvertCard
{
    /// <summary>Name of the card.</summary>
    public const string Path = "convert";

    private const int Neighbours = 2;

    public static readonly string[] Names = ["cone", "temperature", "unit", "rate", "chart"];

    public static Card Of(CardAsk ask)
    {
        var asked = new Asked();
        try
        {
            Read(ask, asked);
        }
        catch (RefusedException refused)
        {
            asked.Refused = refused;
        }

        return new(
            CardFrame.Path(Path, ask, Names), Title(asked),
            "Which temperature a pyrometric cone stands for, and which cone a temperature reaches, "
            + "at a heating rate.", body => Write(body, ask, asked), asked.Sources)
        {
            Refused = asked.Refused,
        };
    }

    private static void Read(CardAsk ask, Asked asked)
    {
        var cones = ask.Reference.Cones;
        var (cone, temperature, rate, chart) = (ask["cone"], ask["temperature"], ask["rate"], ask["chart"]);
        // Without an answer the chart is named, by which answers would be given.
        asked.Sources = [cones.Chart(chart ?? cones.DefaultChart).Chart.Source];
        if (cone is null && temperature is null) return;

        if (cone is not null) asked.EndPoint = cones.EndPoint(cone, rate, chart);
        if (temperature is not null)
        {
            // A number alone is in the unit that was chosen; one with its own unit keeps it.
            var text = char.IsAsciiLetter(temperature.Trim()[^1]) ? temperature : temperature.Trim().TrimEnd('°') + (ask["unit"] ?? "C");
            asked.Reading = cones.Reading(text, rate, chart);
        }

        asked.Sources = [.. (asked.EndPoint?.Sources ?? []).Concat(asked.Reading?.Sources ?? []).Distinct()];
        asked.Around = Around(cones, asked.EndPoint?.Cone ?? asked.Reading!.Reached, rate, asked.EndPoint?.Chart ?? asked.Reading!.Chart);
    }

    // The cones beside it that the chart can tell of at this rate, hottest first.
    private static List<EndPoint> Around(ConeReference cones, string cone, string? rate, string chart)
    {
        var onChart = cones.Chart(chart).EndPoints.Select(e => e.Cone).Distinct().ToHashSet();
        var scale = cones.List().Items.Select(i => i.Cone).Where(onChart.Contains).ToList();
        var at = scale.IndexOf(cone);
        var first = Math.Max(0, at - Neighbours);
        return [.. scale.Skip(first).Take(at + Neighbours + 1 - first).Reverse()
            .SelectMany(c => CardFrame.Try(() => cones.EndPoint(c, rate, chart)))];
    }

    private static string Title(Asked asked) => (asked.EndPoint, asked.Reading) switch
    {
        ({ } point, null) => $"Cone {point.Cone} as a temperature",
        (null, { } reading) => $"{CardWords.Number(reading.Celsius)} °C as a cone",
        _ => "Cones and temperatures",
    };

    private static void Write(CardBody body, CardAsk ask, Asked asked)
    {
        var cones = ask.Reference.Cones;
        var chart = cones.Charts().Items.First(c => c.Id == cones.DefaultChart);
        new CardForm(ask, Path)
            .Line("cone", "Cone", "06")
            .Line("temperature", "or temperature", "1222")
            .Choice("unit", "in", [("C", "°C"), ("F", "°F")], "C")
            .Choice("rate", "Heating rate", chart.RatesCelsiusPerHour.Select(r => ($"{CardWords.Number(r)}C/h", CardWords.Rate(r))),
                $"{CardWords.Number(chart.DefaultRateCelsiusPerHour ?? 60)}C/h")
            .Into(body, "Convert");
        CardFrame.Wrong(body, asked.Refused);
        if (asked.EndPoint is { } point) Tell(body, cones, point);
        if (asked.Reading is { } reading) Tell(body, reading);
        if (asked.Around.Count > 0)
        {
            var here = asked.EndPoint?.Cone ?? asked.Reading!.Reached;
            body.Table(
                "Its neighbours, hottest first", ["Cone", Cell.Number("°C"), Cell.Number("°F")],
                asked.Around.Select(e => (Cell[])
                [
                    e.Cone == here ? e.Cone + " (here)" : e.Cone, Cell.Number(CardWords.Whole(e.Celsius)),
                    Cell.Number(CardWords.Whole(e.Fahrenheit)),
                ]));
        }

        if (asked.EndPoint is null && asked.Reading is null && asked.Refused is null)
            body.Say("Write a cone, such as 6, 06 or 5½, or a temperature. Cone 06 and cone 6 are not the same: the zero counts down.");
        foreach (var assumed in (asked.EndPoint?.Assumed ?? asked.Reading?.Assumed ?? []).Select(a => a.Reason.ToString()).Distinct())
            body.Say(assumed, "small");
        body.Say("A witness cone beside the ware decides, not the meter.", "small");
        body.Say(FromMemory.Of(ask.Reference), "small");
    }

    private static void Tell(CardBody body, ConeReference cones, EndPoint point)
    {
        body.Say(
            $"Cone {point.Cone} goes down at {CardWords.Whole(point.Celsius)} °C ({CardWords.Whole(point.Fahrenheit)} °F) "
            + "when it is heated at "
            + $"{CardWords.Rate(point.RateCelsiusPerHour)} ({EnumWords.Word(point.Basis)}; {CardWords.Of(point.Confidence)}).",
            "lead", needed: true);
        if (cones.Describe(cones.Read(point.Cone)).MixUp is { } mixUp) body.Say($"Not cone {mixUp.Cone}. {mixUp.Message}", "warn");
        foreach (var note in point.Notes) body.Say(note.ToString(), "small");
    }

    private static void Tell(CardBody body, ConeReading reading)
    {
        body.Say(
            $"{CardWords.Number(reading.Celsius)} °C ({CardWords.Whole(reading.Fahrenheit)} °F), reached at "
            + $"{CardWords.Rate(reading.RateCelsiusPerHour)}, puts down cone {reading.Reading} "
            + $"({EnumWords.Word(reading.Basis)}; {CardWords.Of(reading.Confidence)}).", "lead", needed: true);
        foreach (var note in reading.Notes) body.Say(note.ToString(), "small");
    }

    private sealed class Asked
    {
        public EndPoint? EndPoint { get; set; }

        public ConeReading? Reading { get; set; }

        public RefusedException? Refused { get; set; }

        public List<EndPoint> Around { get; set; } = [];

        public IReadOnlyList<string> Sources { get; set; } = [];
    }
}
