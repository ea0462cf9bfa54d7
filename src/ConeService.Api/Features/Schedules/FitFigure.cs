using System.Globalization;
using System.Text;
using ConeService.Api.Features.HeatWork;
using ConeService.Api.Http;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;

namespace ConeService.Api.Features.Schedules;

/// <summary>
/// A fitted firing as a figure of the shape of a printed page: the curve, the cones along it, and what the ware passes. SVG without script.
/// </summary>
internal static class FitFigure
{
    private const int Width = 760;
    private const int Height = 1060;
    private const int Row = 18;
    private const int LegendTop = 62;
    private const int Foot = 46;
    private const double LabelRoom = 16;
    private const double LabelWidth = 34;
    private const int LongestLine = 112;

    /// <summary>Draws the fit.</summary>
    /// <param name="result">The fit.</param>
    /// <param name="alone">False on a sheet that tells the programme, and what decides, itself.</param>
    public static string Render(FittedSchedule result, bool alone = true)
    {
        var (fit, curve) = (result.Answer, result.Curve);
        var cones = (fit.Kiln?.HeatWork ?? fit.HeatWork).Cones;
        var legend = Legend(fit, alone);
        var bottom = Height - Foot - (legend.Count * Row) - LegendTop;
        var frame = new FigureFrame(curve, Width, bottom);
        var svg = new StringBuilder();
        HeatWorkFigure.Open(svg, Heading(fit), Describe(fit), Width, Height);
        Text(svg, "h", FigureFrame.Left, 26, Heading(fit));
        Text(svg, "s", FigureFrame.Left, 44, Wrap(Facts(fit)).First());
        frame.DrawAxes(svg);
        Clock(svg, frame, fit, bottom);
        // What the controller asks for lies under what the kiln does.
        if (fit.Kiln is not null)
        {
            var asked = frame.Curve(result.Programme);
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"l\" style=\"stroke-width:3\" fill=\"none\" d=\"{asked}\"/>");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"t\" d=\"{frame.Curve(curve)}\"/>");
        Cones(svg, frame, cones, fit.Cone);
        Marks(svg, frame, fit, curve);
        Lines(svg, legend, bottom + LegendTop);
        Text(
            svg, "s", FigureFrame.Left, Height - 26,
            $"Chart {fit.Chart}, data package {fit.DatasetVersion}."
            + (alone ? " Witness cones beside the ware decide, not the meter." : ""));
        var line = fit.Kiln is null
            ? "Line: the programme; its cooling is a guess, as no kiln was described."
            : "Line: the kiln, by its model. Dotted: what the controller asks for.";
        Text(svg, "s", FigureFrame.Left, Height - 10, line + " Open circles: cones going down.");
        return svg.Append("</svg>\n").ToString();
    }

    private static void Text(StringBuilder svg, string style, int x, int y, string text) =>
        svg.Append(CultureInfo.InvariantCulture, $"<text class=\"{style}\" x=\"{x}\" y=\"{y}\">{HtmlPage.Encode(text)}</text>");

    private static string Heading(ScheduleFit fit) =>
        fit.Schedule.Name + (fit.Cone is { } cone ? $" to cone {cone}" : "") + (fit.Kiln?.Id is { } kiln ? $" in {kiln}" : "");

    private static string Facts(ScheduleFit fit)
    {
        var f = fit.Units == "F";
        var (peak, after) = (QuantityFormat.Temperature((double)fit.PeakCelsius, f), QuantityFormat.Duration(fit.Times.PeakMinutes));
        var facts = new List<string> { $"Peak {peak} after {after}" };
        if (fit.Times.OpeningMinutes is { } opening) facts.Add($"earliest opening after {QuantityFormat.Duration(opening)}");
        if (fit.Kiln is { Fuel: null } kiln) facts.Add(FormattableString.Invariant($"{kiln.Energy.TotalKilowattHours:0} kWh"));
        facts.Add($"cones {(fit.Kiln?.HeatWork ?? fit.HeatWork).Reading}");
        return string.Join(", ", facts);
    }

    private static string Describe(ScheduleFit fit)
    {
        var marks = fit.Landmarks.Select(l => FormattableString.Invariant($"{l.Name} at {l.FromMinutes / 60:0.0} hours"));
        return $"Temperature over time. {Facts(fit)}. Programme: {string.Join("; ", fit.Segments.Select(s => s.InWords))}. "
            + $"On the way: {string.Join("; ", marks)}.";
    }

    private static void Middle(StringBuilder svg, double x, double y, string text) =>
        svg.Append(CultureInfo.InvariantCulture, $"<text class=\"s\" x=\"{x:0.#}\" y=\"{y:0.#}\" text-anchor=\"middle\">{text}</text>");

    // Time of day under the hours, where a start was given.
    private static void Clock(StringBuilder svg, FigureFrame frame, ScheduleFit fit, int bottom)
    {
        if (fit.Times.Start is not { } start) return;
        var day = start.Date.AddDays(-1);
        foreach (var hours in frame.HourMarks())
        {
            var (x, time) = (frame.X(hours), FitMoments.At(fit, hours * 60)!.Value);
            if (x > Width - 120) break;
            Middle(svg, x, bottom + 33, time.ToString("HH:mm", CultureInfo.InvariantCulture));
            if (time.Date == day) continue;
            day = time.Date;
            Middle(svg, x, bottom + 46, time.ToString("d MMM", CultureInfo.InvariantCulture));
        }
    }

    private static void Cones(StringBuilder svg, FigureFrame frame, IReadOnlyList<FitCone> cones, string? target)
    {
        var named = new List<(double X, double Y)>();
        // The target is named first, then the hottest.
        foreach (var cone in cones.Where(c => c.DownAtMinutes is not null).Reverse().OrderByDescending(c => c.Cone == target))
        {
            var (x, y, aim) = (frame.X(cone.DownAtMinutes!.Value / 60), frame.Y(cone.DownAtCelsius!.Value), cone.Cone == target);
            var (style, radius) = aim ? ("r", 5) : ("d", 3);
            svg.Append(CultureInfo.InvariantCulture, $"<circle class=\"{style}\" cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"{radius}\"/>");
            if (named.Any(n => Math.Abs(n.Y - y) < LabelRoom && Math.Abs(n.X - x) < LabelWidth)) continue;
            named.Add((x, y));
            var weight = aim ? " font-weight=\"600\"" : "";
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"l\" d=\"M{x - 5:0.#} {y - 4:0.#}l-11 -9\"/>");
            svg.Append(CultureInfo.InvariantCulture, $"<text x=\"{x - 18:0.#}\" y=\"{y - 12:0.#}\" text-anchor=\"end\"{weight}>");
            svg.Append(CultureInfo.InvariantCulture, $"{HtmlPage.Encode(cone.Cone)}</text>");
        }
    }

    // Numbers on the curve where the ware enters each landmark; beside the curve, so that they hide nothing.
    private static void Marks(StringBuilder svg, FigureFrame frame, ScheduleFit fit, FiringCurve curve)
    {
        double last = double.NegativeInfinity, lastY = 0;
        foreach (var (mark, i) in fit.Landmarks.Select((l, i) => (l, i)))
        {
            var (x, y) = (frame.X(mark.FromMinutes / 60), frame.Y((double)(mark.Cooling ? mark.CelsiusMax : mark.CelsiusMin)));
            var at = x + 15;
            if (at - last < 18 && Math.Abs(y - lastY) < 18) at = last + 18;
            (last, lastY) = (at, y);
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"a\" d=\"M{x:0.#} {y:0.#}H{at - 8:0.#}\"/>");
            svg.Append(CultureInfo.InvariantCulture, $"<circle class=\"a bg\" cx=\"{at:0.#}\" cy=\"{y:0.#}\" r=\"8\"/>");
            Middle(svg, at, y + 4, $"{i + 1}");
        }
    }

    private static List<(string Head, string Text)> Legend(ScheduleFit fit, bool alone)
    {
        var f = fit.Units == "F";
        var lines = fit.Landmarks.Select((l, i) => (
            $"{i + 1}",
            $"{l.Name}, {Span(l, f)}, {Hours(l.FromMinutes)}{Until(l)}{(l.Advice is null ? "" : ". " + l.Advice)}")).ToList();
        lines.Add(("", Ends(fit)));
        if (alone) lines.AddRange(fit.Segments.Select(s => ($"s{s.Number}", $"{s.InWords}: {s.Purpose}")));
        return [.. lines.SelectMany(l => Wrap(l.Item2).Select((text, i) => (i == 0 ? l.Item1 : "", text)))];
    }

    private static string Until(FitLandmark mark) => mark.ToMinutes is { } to && to > mark.FromMinutes + 6 ? " to " + Hours(to) : "";

    // How the witness cones stand at the end.
    private static string Ends(ScheduleFit fit)
    {
        var cones = (fit.Kiln?.HeatWork ?? fit.HeatWork).Cones
            .Where(c => fit.WitnessCones is not { } w || c.Cone == w.Guide || c.Cone == w.Target || c.Cone == w.Guard);
        return $"At the end, with {(fit.Kiln is null ? "the programme followed" : "the kiln as modelled")}: "
            + string.Join(", ", cones.Select(c => c.DownAtMinutes is null
                ? FormattableString.Invariant($"cone {c.Cone} at {c.ClockHand:0.#} o’clock")
                : $"cone {c.Cone} down")) + ".";
    }

    private static void Lines(StringBuilder svg, List<(string Head, string Text)> legend, int top)
    {
        foreach (var (line, i) in legend.Select((l, i) => (l, i)))
        {
            var (x, y) = (FigureFrame.Left, top + (i * Row));
            svg.Append(CultureInfo.InvariantCulture, $"<text class=\"s\" x=\"{x - 6}\" y=\"{y}\" text-anchor=\"end\">{line.Head}</text>");
            Text(svg, "s", x, y, line.Text);
        }
    }

    private static string Span(FitLandmark mark, bool fahrenheit)
    {
        var low = QuantityFormat.Temperature((double)mark.CelsiusMin, fahrenheit);
        var high = QuantityFormat.Temperature((double)mark.CelsiusMax, fahrenheit);
        return mark.CelsiusMin == mark.CelsiusMax ? low : $"{low[..^3]} to {high}";
    }

    private static string Hours(double minutes) => FormattableString.Invariant($"{minutes / 60:0.0} h");

    private static IEnumerable<string> Wrap(string text)
    {
        while (text.Length > LongestLine && text.LastIndexOf(' ', LongestLine) is var at and > 0)
        {
            yield return text[..at];
            text = text[(at + 1)..];
        }

        yield return text;
    }
}
