using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.HeatWork;

namespace ConeService.Api.Features.HeatWork;

/// <summary>A firing as a figure: the temperature, and the cones going down along it. SVG without script, for screen, print, dark
/// mode and screen readers.</summary>
internal static class HeatWorkFigure
{
    public const string MediaType = "image/svg+xml";
    public const string ContentType = MediaType + "; charset=utf-8";

    private const string Dark =
        "@media screen and (prefers-color-scheme:dark){text{fill:#e8e6e3}.s{fill:#aaa}.bg{fill:#16181b}.g{stroke:#3a3d42}"
        + ".a,.b{stroke:#aaa}.t{stroke:#7fb2e5}.d{fill:#16181b;stroke:#e8925c}.r{fill:#e8925c}.l,.c{stroke:#e8925c}}";

    private const string Style = $$$"""
        <style>
        text{font-family:system-ui,-apple-system,"Segoe UI",sans-serif;font-size:13px;fill:#222}
        .h{font-size:17px;font-weight:600}.s{font-size:11px;fill:#555}
        .g{stroke:#ccc;stroke-width:1}.a{stroke:#444;stroke-width:1}
        .t{fill:none;stroke:#1f4e79;stroke-width:2;stroke-linejoin:round}
        .d{fill:#fff;stroke:#9c3d10;stroke-width:2}.r{fill:#9c3d10}.l{stroke:#9c3d10;stroke-width:1;stroke-dasharray:2 3}
        .c{fill:none;stroke:#9c3d10;stroke-width:7;stroke-linecap:round}.b{stroke:#444;stroke-width:3}.bg{fill:#fff}
        {{{Dark}}}
        @media print{.t{stroke:#000}.d,.l,.c{stroke:#555}.r{fill:#555}}
        </style>
        """;

    /// <summary>Draws a firing.</summary>
    public static string Render(HeatWorkAnswer answer, FiringCurve curve)
    {
        var frame = new FigureFrame(curve);
        var svg = new StringBuilder();
        Open(svg, $"Firing to cone {answer.Reading}", Describe(answer));
        svg.Append(CultureInfo.InvariantCulture,
            $"<text class=\"h\" x=\"{FigureFrame.Left}\" y=\"28\">{HtmlPage.Encode(Heading(answer))}</text>");
        svg.Append(CultureInfo.InvariantCulture,
            $"<text class=\"s\" x=\"{FigureFrame.Left}\" y=\"47\">{HtmlPage.Encode(Facts(answer))}</text>");
        frame.DrawAxes(svg);
        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"t\" d=\"{frame.Curve(curve)}\"/>");
        ConesAlongCurve.Draw(svg, frame, answer, curve);
        ConesAlongCurve.DrawStanding(svg, answer);
        svg.Append(CultureInfo.InvariantCulture,
            $"<text class=\"s\" x=\"{FigureFrame.Left}\" y=\"{FigureFrame.Height - 10}\">"
            + $"Chart {HtmlPage.Encode(answer.Chart)}, "
            + $"data package {HtmlPage.Encode(answer.DatasetVersion)}. "
            + $"Computed from the meter; a witness cone beside the ware decides.</text>");
        return svg.Append("</svg>\n").ToString();
    }

    /// <summary>A figure of words, where there is nothing to draw.</summary>
    public static string OfWords(string title, string text)
    {
        var svg = new StringBuilder();
        Open(svg, title, text);
        svg.Append(CultureInfo.InvariantCulture,
            $"<text class=\"h\" x=\"{FigureFrame.Left}\" y=\"60\">{HtmlPage.Encode(title)}</text>"
            + $"<text x=\"{FigureFrame.Left}\" y=\"90\">{HtmlPage.Encode(text)}</text>");
        return svg.Append("</svg>\n").ToString();
    }

    /// <summary>The head of a figure, with title and description for who can't see it.</summary>
    internal static void Open(
        StringBuilder svg, string title, string description, int width = FigureFrame.Width, int height = FigureFrame.Height) => svg
        .Append(CultureInfo.InvariantCulture, $"<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 {width} {height}\" ")
        .Append(CultureInfo.InvariantCulture, $"""
        width="{width}" height="{height}" style="max-width:100%;height:auto" role="img" aria-labelledby="t d">
        <title id="t">{HtmlPage.Encode(title)}</title>
        <desc id="d">{HtmlPage.Encode(description)}</desc>
        {Style}
        <rect class="bg" width="{width}" height="{height}"/>

        """);

    private static string Heading(HeatWorkAnswer answer) => answer.Reached is null ? "No cone is down" : $"Cone {answer.Reading}";

    private static string Facts(HeatWorkAnswer answer) => string.Create(CultureInfo.InvariantCulture,
        $"Peak {answer.PeakCelsius:0} °C ({answer.PeakFahrenheit:0} °F) after {answer.PeakAtMinutes / 60:0.0} h"
        + $"{(answer.RateOverLast100CelsiusPerHour is { } r ? $", last 100 °C at {r:0} °C/h" : "")}"
        + $", {answer.Above1000CelsiusMinutes / 60:0.0} h above 1000 °C"
        + $"{(answer.Warnings.Count > 0 ? $"; {answer.Warnings.Count} warning{(answer.Warnings.Count == 1 ? "" : "s")}" : "")}");

    private static string Describe(HeatWorkAnswer answer)
    {
        var last = answer.Cones.Where(c => c.DownAtMinutes is not null).TakeLast(4)
            .Select(c => string.Create(CultureInfo.InvariantCulture, $"cone {c.Cone} at {c.DownAtMinutes / 60:0.00} hours"));
        return $"Temperature over time. {Facts(answer)}. Cones went down: {(last.Any() ? string.Join(", ", last) : "none")}.";
    }
}
