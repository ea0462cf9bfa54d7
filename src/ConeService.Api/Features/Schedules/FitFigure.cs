using System.Globalization;
using System.Text;
using ConeService.Api.Features.HeatWork;
using ConeService.Api.Http;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Firing.Schedules;
using ConeService.Firing.Schedules.Fitting;

namespace ConeService.Api.Features.Schedules;

/// <summary>A fitted firing as a figure of the shape of a printed page: the curve, the cones along it, and what the ware passes. SVG without script.</summary>
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
    public static string Render(FittedSchedule result)
    {
        var (fit, curve) = (result.Answer, result.Curve);
        var cones = (fit.Kiln?.HeatWork ?? fit.HeatWork).Cones;
        var legend = Legend(fit);
        var bottom = Height - Foot - (legend.Count * Row) - LegendTop;
        var frame = new FigureFrame(curve, Width, bottom);
        var svg = new StringBuilder();
        HeatWorkFigure.Open(svg, Heading(fit), Describe(fit), Width, Height);
        svg.Append(CultureInfo.InvariantCulture, $"<text class=\"h\" x=\"{FigureFrame.Left}\" y=\"26\">{HtmlPage.Encode(Heading(fit))}</text><text class=\"s\" x=\"{FigureFrame.Left}\" y=\"44\">{HtmlPage.Encode(Wrap(Facts(fit)).First())}</text>");
        frame.DrawAxes(svg);
        Clock(svg, frame, fit, bottom);
        // What the controller asks for lies under what the kiln does.
        if (fit.Kiln is not null) svg.Append(CultureInfo.InvariantCulture, $"<path class=\"l\" style=\"stroke-width:3\" fill=\"none\" d=\"{frame.Curve(result.Programme)}\"/>");
        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"t\" d=\"{frame.Curve(curve)}\"/>");
        Cones(svg, frame, cones, fit.Cone);
        Marks(svg, frame, fit, curve);
        Lines(svg, legend, bottom + LegendTop);
        svg.Append(CultureInfo.InvariantCulture, $"<text class=\"s\" x=\"{FigureFrame.Left}\" y=\"{Height - 26}\">Chart {HtmlPage.Encode(fit.Chart)}, data package {HtmlPage.Encode(fit.DatasetVersion)}. Witness cones beside the ware decide, not the meter.</text>");
        svg.Append(CultureInfo.InvariantCulture, $"<text class=\"s\" x=\"{FigureFrame.Left}\" y=\"{Height - 10}\">{(fit.Kiln is null ? "Line: the programme; its cooling is a guess, as no kiln was described." : "Line: the kiln, by its model. Dotted: what the controller asks for.")} Open circles: cones going down.</text>");
        return svg.Append("</svg>\n").ToString();
    }

    private static string Heading(ScheduleFit fit) => fit.Schedule.Title + (fit.Cone is { } cone ? $" to cone {cone}" : "") + (fit.Kiln?.Id is { } kiln ? $" in {kiln}" : "");

    private static string Facts(ScheduleFit fit)
    {
        var f = fit.Units == "F";
        var facts = new List<string> { $"Peak {QuantityFormat.Temperature((double)fit.PeakCelsius, f)} after {QuantityFormat.Duration(fit.Times.PeakHours * 60)}" };
        if (fit.Times.OpeningHours is { } opening) facts.Add($"earliest opening after {QuantityFormat.Duration(opening * 60)}");
        if (fit.Kiln is { Fuel: null } kiln) facts.Add(FormattableString.Invariant($"{kiln.Energy.TotalKilowattHours:0} kWh"));
        facts.Add($"cones {(fit.Kiln?.HeatWork ?? fit.HeatWork).Reading}");
        return string.Join(", ", facts);
    }

    private static string Describe(ScheduleFit fit) =>
        $"Temperature over time. {Facts(fit)}. Programme: {string.Join("; ", fit.Segments.Select(s => s.InWords))}. On the way: {string.Join("; ", fit.Landmarks.Select(l => FormattableString.Invariant($"{l.Landmark} at {l.FromHours:0.0} hours")))}.";

    // Time of day under the hours, where a start was given.
    private static void Clock(StringBuilder svg, FigureFrame frame, ScheduleFit fit, int bottom)
    {
        if (fit.Times.Start is not { } start) return;
        var day = start.Date.AddDays(-1);
        foreach (var hours in frame.HourMarks())
        {
            var (x, time) = (frame.X(hours), start.AddHours(hours));
            if (x > Width - 120) break;
            svg.Append(CultureInfo.InvariantCulture, $"<text class=\"s\" x=\"{x:0.#}\" y=\"{bottom + 33}\" text-anchor=\"middle\">{time:HH:mm}</text>");
            if (time.Date == day) continue;
            day = time.Date;
            svg.Append(CultureInfo.InvariantCulture, $"<text class=\"s\" x=\"{x:0.#}\" y=\"{bottom + 46}\" text-anchor=\"middle\">{time:d MMM}</text>");
        }
    }

    private static void Cones(StringBuilder svg, FigureFrame frame, IReadOnlyList<FitCone> cones, string? target)
    {
        var named = new List<(double X, double Y)>();
        // The target is named first, then the hottest.
        foreach (var cone in cones.Where(c => c.DownAtHours is not null).Reverse().OrderByDescending(c => c.Cone == target))
        {
            var (x, y, aim) = (frame.X(cone.DownAtHours!.Value), frame.Y(cone.DownAtCelsius!.Value), cone.Cone == target);
            svg.Append(CultureInfo.InvariantCulture, $"<circle class=\"{(aim ? "r" : "d")}\" cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"{(aim ? 5 : 3)}\"/>");
            if (named.Any(n => Math.Abs(n.Y - y) < LabelRoom && Math.Abs(n.X - x) < LabelWidth)) continue;
            named.Add((x, y));
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"l\" d=\"M{x - 5:0.#} {y - 4:0.#}l-11 -9\"/><text x=\"{x - 18:0.#}\" y=\"{y - 12:0.#}\" text-anchor=\"end\"{(aim ? " font-weight=\"600\"" : "")}>{HtmlPage.Encode(cone.Cone)}</text>");
        }
    }

    // Numbers on the curve where the ware enters each landmark; beside the curve, so that they hide nothing.
    private static void Marks(StringBuilder svg, FigureFrame frame, ScheduleFit fit, FiringCurve curve)
    {
        double last = double.NegativeInfinity, lastY = 0;
        foreach (var (mark, i) in fit.Landmarks.Select((l, i) => (l, i)))
        {
            var (x, y) = (frame.X(mark.FromHours), frame.Y((double)(mark.Cooling ? mark.CelsiusHigh : mark.CelsiusLow)));
            var at = x + 15;
            if (at - last < 18 && Math.Abs(y - lastY) < 18) at = last + 18;
            (last, lastY) = (at, y);
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"a\" d=\"M{x:0.#} {y:0.#}H{at - 8:0.#}\"/><circle class=\"a bg\" cx=\"{at:0.#}\" cy=\"{y:0.#}\" r=\"8\"/><text class=\"s\" x=\"{at:0.#}\" y=\"{y + 4:0.#}\" text-anchor=\"middle\">{i + 1}</text>");
        }
    }

    private static List<(string Head, string Text)> Legend(ScheduleFit fit)
    {
        var f = fit.Units == "F";
        var lines = fit.Landmarks.Select((l, i) => (
            $"{i + 1}",
            $"{l.Landmark}, {Span(l, f)}, {Hours(l.FromHours)}{(l.ToHours is { } to && to > l.FromHours + 0.1 ? " to " + Hours(to) : "")}{(l.Advice is null ? "" : ". " + l.Advice)}")).ToList();
        lines.Add(("", Ends(fit)));
        lines.AddRange(fit.Segments.Select(s => ($"s{s.Number}", $"{s.InWords}: {s.Purpose}")));
        return [.. lines.SelectMany(l => Wrap(l.Item2).Select((text, i) => (i == 0 ? l.Item1 : "", text)))];
    }

    // How the witness cones stand at the end.
    private static string Ends(ScheduleFit fit)
    {
        var cones = (fit.Kiln?.HeatWork ?? fit.HeatWork).Cones.Where(c => fit.WitnessCones is not { } w || c.Cone == w.Guide || c.Cone == w.Target || c.Cone == w.Guard);
        return $"At the end, with {(fit.Kiln is null ? "the programme followed" : "the kiln as modelled")}: "
            + string.Join(", ", cones.Select(c => c.DownAtHours is null ? FormattableString.Invariant($"cone {c.Cone} at {c.ClockHand:0.#} o’clock") : $"cone {c.Cone} down")) + ".";
    }

    private static void Lines(StringBuilder svg, List<(string Head, string Text)> legend, int top)
    {
        foreach (var (line, i) in legend.Select((l, i) => (l, i)))
        {
            svg.Append(CultureInfo.InvariantCulture, $"<text class=\"s\" x=\"{FigureFrame.Left - 6}\" y=\"{top + (i * Row)}\" text-anchor=\"end\">{line.Head}</text><text class=\"s\" x=\"{FigureFrame.Left}\" y=\"{top + (i * Row)}\">{HtmlPage.Encode(line.Text)}</text>");
        }
    }

    private static string Span(FitLandmark mark, bool fahrenheit) => mark.CelsiusLow == mark.CelsiusHigh
        ? QuantityFormat.Temperature((double)mark.CelsiusLow, fahrenheit)
        : $"{QuantityFormat.Temperature((double)mark.CelsiusLow, fahrenheit)[..^3]} to {QuantityFormat.Temperature((double)mark.CelsiusHigh, fahrenheit)}";

    private static string Hours(double hours) => FormattableString.Invariant($"{hours:0.0} h");

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
