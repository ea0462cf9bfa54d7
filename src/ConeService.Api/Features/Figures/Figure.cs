using System.Globalization;
using System.Text;
using ConeService.Api.Features.HeatWork;
using ConeService.Api.Http;

namespace ConeService.Api.Features.Figures;

/// <summary>A figure that is drawn: SVG without script, with a title and a description for who can't see it.</summary>
internal sealed class Figure
{
    /// <summary>Width, px.</summary>
    public const int Width = 640;

    private readonly StringBuilder svg = new();

    /// <summary>Begins a figure.</summary>
    /// <param name="title">What it shows.</param>
    /// <param name="description">The same in a sentence: its alternative text.</param>
    /// <param name="height">Height, px.</param>
    public Figure(string title, string description, int height)
    {
        HeatWorkFigure.Open(svg, title, description, Width, height);
        Text(16, 26, title, "h");
    }

    /// <summary>A word.</summary>
    public void Text(double x, double y, string text, string style = "", string anchor = "start") => svg.Append(
        CultureInfo.InvariantCulture,
        $"<text class=\"{style}\" x=\"{x:0.#}\" y=\"{y:0.#}\" text-anchor=\"{anchor}\">{HtmlPage.Encode(text)}</text>\n");

    /// <summary>A line, as a path.</summary>
    public void Path(string path, string style) =>
        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"{style}\" fill=\"none\" d=\"{path}\"/>\n");

    /// <summary>A dot.</summary>
    public void Dot(double x, double y) => svg.Append(
        CultureInfo.InvariantCulture, $"<circle class=\"r\" cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"4\"/>\n");

    /// <summary>A field of one colour.</summary>
    public void Field(double x, double y, double width, double height, string colour) => svg.Append(string.Create(
        CultureInfo.InvariantCulture,
        $"<rect class=\"b\" style=\"fill:{colour};stroke-width:1\" x=\"{x:0.#}\" y=\"{y:0.#}\" "
        + $"width=\"{width:0.#}\" height=\"{height:0.#}\"/>\n"));

    /// <summary>The figure, with where its values come from at the foot.</summary>
    public string End(int height, string foot)
    {
        Text(16, height - 10, foot, "s");
        return svg.Append("</svg>\n").ToString();
    }
}
