using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.HeatWork;

namespace ConeService.Api.Features.HeatWork;

/// <summary>
/// A firing under way as a figure for a phone: the log solid, what is foreseen dashed, the cones along both, and the three lines in
/// words. SVG without script.
/// </summary>
internal static class ForecastFigure
{
    private const int Width = 480;
    private const int Bottom = 360;
    private const int LineTop = Bottom + 64;
    private const int Row = 22;
    private const int LongestLine = 52;

    // Read at the width of a phone, 320 px, where the figure is drawn at two thirds.
    private const string Larger = """
        <style>text{font-size:16px}.h{font-size:18px}.s{font-size:14px}.f{stroke-dasharray:7 5}.n{stroke-dasharray:2 3}</style>
        """;

    /// <summary>Draws the forecast.</summary>
    public static string Render(Forecast forecast)
    {
        var answer = forecast.Answer;
        var (log, ahead) = (forecast.Log(), forecast.Ahead?.Invoke());
        var whole = ahead is null ? log : new FiringCurve([.. log.Points, .. ahead.Points.Skip(1)]);
        var words = answer.Lines
            .SelectMany((line, i) => Wrap(line.ToString()).Select((text, j) => (text, First: j == 0 && i > 0))).ToList();
        var height = LineTop + (Row * words.Count) + (10 * answer.Lines.Count) + 30;
        var frame = new FigureFrame(whole, Width, Bottom);
        var svg = new StringBuilder();
        HeatWorkFigure.Open(svg, $"Firing under way to cone {answer.Cone}", string.Join(' ', answer.Lines), Width, height);
        svg.Append(Larger);
        Text(svg, "h", 12, 26, $"To cone {answer.Cone}, {answer.Now.Celsius:0} °C now");
        frame.DrawAxes(svg);
        var now = frame.X(whole.Start.Hours + (answer.Now.Minutes / 60));
        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"a n\" d=\"M{now:0.#} 66V{Bottom}\"/>");
        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"t\" d=\"{frame.Curve(log)}\"/>");
        if (ahead is not null) svg.Append(CultureInfo.InvariantCulture, $"<path class=\"t f\" d=\"{frame.Curve(ahead)}\"/>");
        ConesAlongCurve.Draw(svg, frame, Near(answer), whole);
        var y = LineTop;
        foreach (var (text, first) in words)
        {
            if (first) y += 10;
            Text(svg, "w", 12, y, text);
            y += Row;
        }

        Text(svg, "s", 12, y + 14, "Line: the log. Dashed: foreseen. A witness cone decides.");
        return svg.Append("</svg>\n").ToString();
    }

    // The target and its neighbours: on a phone there is no room for the whole scale.
    private static HeatWorkAnswer Near(ForecastAnswer answer)
    {
        var cones = answer.HeatWork.Cones;
        var at = cones.Index().First(c => c.Item.Cone == answer.Cone).Index;
        return answer.HeatWork with { Cones = [.. cones.Skip(Math.Max(0, at - 1)).Take(at == 0 ? 2 : 3)], Reached = answer.Cone };
    }

    private static void Text(StringBuilder svg, string style, int x, int y, FormattableString text) =>
        Text(svg, style, x, y, FormattableString.Invariant(text));

    private static void Text(StringBuilder svg, string style, int x, int y, string text) =>
        svg.Append(CultureInfo.InvariantCulture, $"<text class=\"{style}\" x=\"{x}\" y=\"{y}\">{HtmlPage.Encode(text)}</text>");

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
