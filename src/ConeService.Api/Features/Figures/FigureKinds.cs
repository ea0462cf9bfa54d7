using System.Globalization;
using ConeService.Api.Features.Cards;
using ConeService.Api.Features.Schedules;
using ConeService.Contract.Cones;
using ConeService.Firing;

namespace ConeService.Api.Features.Figures;

/// <summary>The figures for course pages, drawn from the answers of the service.</summary>
internal static class FigureKinds
{
    private const int Row = 24;
    private const int Top = 70;

    // Rates at which the end point of a cone is computed for its curve, °C/h: those of the charts and between.
    private static readonly int[] Rates = [15, 20, 30, 40, 60, 80, 100, 120, 150];

    /// <summary>Figures that stand by themselves: name and alternative text.</summary>
    public static readonly (string Name, string Alt)[] All =
    [
        ("chart", "Ladder of pyrometric cones from 022 to 14 with the temperature at which each goes down"),
        ("colours", "Colours of the usual oxides in a glaze, oxidation beside reduction"),
        ("ware", "Cones at which clay bodies are mature"),
        ("bending-cone", BendingCone.Alt),
        ("cone-6", "Temperature at which cone 6 goes down, against the heating rate"),
        ("schedule-mid-range-glaze", "Temperature over time of a mid-range glaze firing, with what the ware passes"),
    ];

    /// <summary>Name of the figure that stands for a card where a link is shown as a picture.</summary>
    /// <param name="reference">The data in use.</param>
    /// <param name="card">Address of the card below /cards.</param>
    public static string Of(FiringReference reference, string card)
    {
        var parts = card.Split('?')[0].Split('/');
        return parts[0] switch
        {
            "chart" or "convert" => "chart",
            "colour" or "colour-compare" or "conditions" => "colours",
            "ware" or "fit" => "ware",
            "schedule" => "schedule-" + parts[1],
            // Where no rate can be computed for a cone there is no curve to draw.
            _ => parts[0].StartsWith("cone-", StringComparison.Ordinal) && Points(reference, parts[0][5..]).Any()
                ? parts[0]
                : "bending-cone",
        };
    }

    /// <summary>Alternative text of a figure.</summary>
    public static string Alt(string name) => Array.Find(All, f => f.Name == name).Alt
        ?? (name.StartsWith("cone-", StringComparison.Ordinal)
            ? $"Temperature at which cone {name[5..]} goes down, against the heating rate"
            : "Temperature over time of a firing, with what the ware passes");

    /// <summary>The figure; null where there is none of that name.</summary>
    /// <exception cref="Contract.Answers.RefusedException">What its name says is not in the data.</exception>
    public static string? Draw(FiringReference reference, string name) => name switch
    {
        "chart" => Chart(reference),
        "colours" => Colours(reference),
        "ware" => Ware(reference),
        "bending-cone" => BendingCone.Draw(reference),
        _ when name.StartsWith("cone-", StringComparison.Ordinal) => Cone(reference, name[5..]),
        _ when name.StartsWith("schedule-", StringComparison.Ordinal) => FitFigure.Render(ScheduleCard.Fit(new(
            reference, name[9..], new Dictionary<string, string>(), new(CardSize.Full, CardTheme.Light)))),
        _ => null,
    };

    private static string Chart(FiringReference reference)
    {
        var chart = reference.Cones.Chart(reference.Cones.DefaultChart).Chart;
        var points = ChartCard.Points(reference.Cones, chart, null).Points;
        var height = Top + (points.Count * Row) + 40;
        var (low, high) = (points.Min(p => p.Celsius), points.Max(p => p.Celsius));
        var figure = new Figure("Where each cone goes down, hottest first", All[0].Alt + ".", height);
        var rate = CardWords.Rate(points[0].RateCelsiusPerHour);
        figure.Text(16, 48, $"{chart.Name}, {rate}. The zero counts down: 06 is far cooler than 6.", "s");
        foreach (var (point, i) in points.Select((p, i) => (p, i)))
        {
            var (x, y) = (90 + (double)((point.Celsius - low) / (high - low) * 340), Top + (i * Row));
            figure.Path(string.Create(CultureInfo.InvariantCulture, $"M90 {y}H{x:0.#}"), "g");
            figure.Dot(x, y);
            figure.Text(76, y + 5, point.Cone, anchor: "end");
            var told = $"{CardWords.Whole(point.Celsius)} °C  {CardWords.Whole(point.Fahrenheit)} °F";
            figure.Text(Figure.Width - 16, y + 5, told, anchor: "end");
        }

        return figure.End(height, Foot(reference));
    }

    private static string Colours(FiringReference reference)
    {
        var pairs = ColourCompareCard.Pairs(reference).ToList();
        var height = Top + (pairs.Count * 40) + 40;
        var figure = new Figure("Oxidation beside reduction", All[1].Alt + ". " + CardWords.Swatches, height);
        figure.Text(16, 44, CardWords.Swatches, "s");
        figure.Text(120, 62, "Oxidation", "s");
        figure.Text(380, 62, "Reduction", "s");
        foreach (var (pair, i) in pairs.Select((p, i) => (p, i)))
        {
            var y = Top + (i * 40);
            figure.Text(16, y + 18, pair.Name);
            foreach (var (note, x) in new[] { (pair.Oxidation, 120), (pair.Reduction, 380) })
            {
                if (note is not null) figure.Field(x, y, 28, 28, note.Swatch.Hex);
                figure.Text(x + 36, y + 18, note is null ? "–" : CardWords.Sentence(note.Colour), "s");
            }
        }

        return figure.End(height, Foot(reference));
    }

    private static string Ware(FiringReference reference)
    {
        var bodies = reference.Materials.Bodies().Items.Where(b => b.Mature?.Min is not null && b.Mature.Max is not null).ToList();
        var steps = reference.Cones.List().Items.Where(c => c.WholeStep is not null).Select(c => c.Cone).ToList();
        double X(string cone) => 220 + ((double)steps.IndexOf(cone) / (steps.Count - 1) * 390);
        var shown = bodies.Where(b => steps.Contains(b.Mature!.Min!) && steps.Contains(b.Mature.Max!)).ToList();
        var height = Top + (shown.Count * Row) + 40;
        var figure = new Figure("Cones at which clay bodies are mature", All[2].Alt + ".", height);
        foreach (var cone in steps.Where((_, i) => i % 5 == 0)) figure.Text(X(cone), 54, cone, "s", "middle");
        foreach (var (body, i) in shown.Select((b, i) => (b, i)))
        {
            var y = Top + (i * Row);
            figure.Text(16, y + 5, CardWords.Sentence(body.Name));
            var (from, to) = (X(body.Mature!.Min!), X(body.Mature.Max!));
            // A hair longer than nothing: of one cone too there is a dot.
            figure.Path(string.Create(CultureInfo.InvariantCulture, $"M{from:0.#} {y}H{to + 0.1:0.#}"), "c");
            figure.Text(to + 10, y + 4, $"{body.Mature.Min} to {body.Mature.Max}", "s");
        }

        return figure.End(height, Foot(reference));
    }

    private static string Cone(FiringReference reference, string sent)
    {
        const int Height = 380;
        var cone = reference.Cones.Read(sent, "figure").ToString();
        var points = Points(reference, cone).ToList();
        if (points.Count == 0) _ = reference.Cones.EndPoint(cone);
        var (low, high) = ((double)points.Min(p => p.Celsius) - 10, (double)points.Max(p => p.Celsius) + 10);
        double X(decimal rate) => 80 + (((double)rate - 15) / 135 * 500);
        double Y(double celsius) => 310 - ((celsius - low) / (high - low) * 240);
        var figure = new Figure($"Cone {cone} against the heating rate", $"The faster the firing, the hotter cone {cone} goes down: from "
            + $"{CardWords.Whole(points[0].Celsius)} °C at {Rates[0]} °C/h to {CardWords.Whole(points[^1].Celsius)} °C. The band is one "
            + "standard uncertainty.", Height);
        var band = points.Where(p => p.SigmaCelsiusDifference is not null).ToList();
        foreach (var side in (double[])[-1, 1])
        {
            if (band.Count < 2) break;
            var edge = band.Select(p => (X(p.RateCelsiusPerHour!.Value), Y((double)p.Celsius + (side * p.SigmaCelsiusDifference!.Value))));
            figure.Path(Line(edge), "l");
        }

        figure.Path(Line(points.Select(p => (X(p.RateCelsiusPerHour!.Value), Y((double)p.Celsius)))), "t");
        foreach (var point in points.Where((_, i) => i % 2 == 0))
        {
            var x = X(point.RateCelsiusPerHour!.Value);
            if (point.Basis == Contract.Answers.Basis.Printed) figure.Dot(x, Y((double)point.Celsius));
            figure.Text(x - 8, Y((double)point.Celsius) - 12, CardWords.Whole(point.Celsius) + " °C", "s", "end");
            figure.Text(x, 334, CardWords.Number(point.RateCelsiusPerHour.Value), "s", "middle");
        }

        figure.Text(Figure.Width - 16, 352, "°C/h over the last 100 °C; dots are printed", "s", "end");
        return figure.End(Height, Foot(reference));
    }

    private static IEnumerable<EndPoint> Points(FiringReference reference, string cone) =>
        Rates.SelectMany(r => CardFrame.Try(() => reference.Cones.EndPoint(cone, $"{r}C/h")));

    private static string Line(IEnumerable<(double X, double Y)> points) => "M" + Points(points);

    /// <summary>Points of a path, after its first letter.</summary>
    public static string Points(IEnumerable<(double X, double Y)> points) => string.Join('L', points.Select(
        p => string.Create(CultureInfo.InvariantCulture, $"{p.X:0.#} {p.Y:0.#}")));

    /// <summary>Where the values come from.</summary>
    public static string Foot(FiringReference reference) =>
        $"Data package {reference.Dataset.VersionId}, {reference.Dataset.License}. A witness cone decides, not the meter.";
}
