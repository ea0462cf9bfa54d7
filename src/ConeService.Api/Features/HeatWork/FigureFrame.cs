using System.Globalization;
using System.Text;
using ConeService.Firing.HeatWork;

namespace ConeService.Api.Features.HeatWork;

/// <summary>The plot of a figure: where a moment lies, the axes, and the temperature as a path.</summary>
internal sealed class FigureFrame
{
    public const int Width = 900;
    public const int Height = 600;
    public const int Left = 64;
    private const int Right = Width - 64;
    private const int Top = 66;
    private const int Bottom = 420;

    private static readonly double[] HourSteps = [0.25, 0.5, 1, 2, 4, 6, 12, 24, 48, 96, 240];

    private readonly double start;
    private readonly double hours;
    private readonly int lowest;
    private readonly int highest;

    public FigureFrame(HeatHistory history)
    {
        start = history.Start.Hours;
        hours = history.DurationHours;
        var coldest = double.PositiveInfinity;
        foreach (var point in history.Points) coldest = Math.Min(coldest, HeatWorkFigure.Celsius(point));
        lowest = Math.Min(0, (int)Math.Floor(coldest / 200) * 200);
        highest = Math.Max(lowest + 200, (int)Math.Ceiling((HeatWorkFigure.Celsius(history.Peak) + 20) / 200) * 200);
    }

    public double X(double at) => Left + ((at - start) / hours * (Right - Left));

    public double Y(double celsius) => Bottom - ((celsius - lowest) / (highest - lowest) * (Bottom - Top));

    /// <summary>°C on the left, °F on the right, hours below.</summary>
    public void DrawAxes(StringBuilder svg)
    {
        for (var c = lowest; c <= highest; c += 200)
        {
            var y = Y(c);
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"g\" d=\"M{Left} {y:0.#}H{Right}\"/><text x=\"{Left - 8}\" y=\"{y + 4:0.#}\" text-anchor=\"end\">{c}</text><text x=\"{Right + 8}\" y=\"{y + 4:0.#}\">{(c * 1.8) + 32:0}</text>");
        }

        var step = HourSteps.FirstOrDefault(s => hours / s <= 12, 480);
        for (var h = 0.0; h <= hours * 1.0001; h += step)
        {
            var x = X(start + h);
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"a\" d=\"M{x:0.#} {Bottom}v5\"/><text x=\"{x:0.#}\" y=\"{Bottom + 19}\" text-anchor=\"middle\">{h:0.##}</text>");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"a\" d=\"M{Left} {Top}V{Bottom}H{Right}V{Top}\" fill=\"none\"/><text class=\"s\" x=\"{Left - 8}\" y=\"{Top - 10}\" text-anchor=\"end\">°C</text><text class=\"s\" x=\"{Right + 8}\" y=\"{Top - 10}\">°F</text><text class=\"s\" x=\"{Right}\" y=\"{Bottom + 34}\" text-anchor=\"end\">hours</text>");
    }

    /// <summary>The temperature: of many samples in one column of pixels the first, lowest, highest and last.</summary>
    public string Curve(HeatHistory history)
    {
        var path = new StringBuilder();
        var points = history.Points;
        for (var i = 0; i < points.Length;)
        {
            var column = (int)X(points[i].Hours);
            var (first, low, high) = (i, i, i);
            for (; i < points.Length && (int)X(points[i].Hours) == column; i++)
            {
                if (points[i].Kelvin < points[low].Kelvin) low = i;
                if (points[i].Kelvin > points[high].Kelvin) high = i;
            }

            foreach (var at in new[] { first, Math.Min(low, high), Math.Max(low, high), i - 1 }.Distinct())
            {
                path.Append(CultureInfo.InvariantCulture, $"{(path.Length == 0 ? 'M' : 'L')}{X(points[at].Hours):0.##} {Y(HeatWorkFigure.Celsius(points[at])):0.##}");
            }
        }

        return path.ToString();
    }
}
