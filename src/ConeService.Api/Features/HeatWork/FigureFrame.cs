using System.Globalization;
using System.Text;
using ConeService.Contract.HeatWork;

namespace ConeService.Api.Features.HeatWork;

/// <summary>The plot of a figure: where a moment lies, the axes, and the temperature as a path.</summary>
internal sealed class FigureFrame
{
    public const int Width = 900;
    public const int Height = 600;
    public const int Left = 64;
    private const int Top = 66;

    private static readonly double[] HourSteps = [0.25, 0.5, 1, 2, 4, 6, 12, 24, 48, 96, 240];

    private readonly int right;
    private readonly int bottom;
    private readonly double start;
    private readonly double hours;
    private readonly int lowest;
    private readonly int highest;

    /// <summary>Frames a curve.</summary>
    /// <param name="curve">The firing.</param>
    /// <param name="width">Width of the figure.</param>
    /// <param name="bottom">Where the plot ends, from the top of the figure.</param>
    public FigureFrame(FiringCurve curve, int width = Width, int bottom = 420)
    {
        right = width - 64;
        this.bottom = bottom;
        start = curve.Start.Hours;
        hours = curve.DurationHours;
        var coldest = double.PositiveInfinity;
        foreach (var point in curve.Points) coldest = Math.Min(coldest, point.Celsius);
        lowest = Math.Min(0, (int)Math.Floor(coldest / 200) * 200);
        highest = Math.Max(lowest + 200, (int)Math.Ceiling((curve.PeakCelsius + 20) / 200) * 200);
    }

    public double X(double at) => Left + ((at - start) / hours * (right - Left));

    public double Y(double celsius) => bottom - ((celsius - lowest) / (highest - lowest) * (bottom - Top));

    /// <summary>°C on the left, °F on the right, hours below.</summary>
    public void DrawAxes(StringBuilder svg)
    {
        for (var c = lowest; c <= highest; c += 200)
        {
            var y = Y(c);
            svg.Append(CultureInfo.InvariantCulture,
                $"<path class=\"g\" d=\"M{Left} {y:0.#}H{right}\"/>"
                + $"<text x=\"{Left - 8}\" y=\"{y + 4:0.#}\" text-anchor=\"end\">{c}</text>"
                + $"<text x=\"{right + 8}\" y=\"{y + 4:0.#}\">{(c * 1.8) + 32:0}</text>");
        }

        foreach (var h in HourMarks())
        {
            var x = X(start + h);
            svg.Append(CultureInfo.InvariantCulture,
                $"<path class=\"a\" d=\"M{x:0.#} {bottom}v5\"/>"
                + $"<text x=\"{x:0.#}\" y=\"{bottom + 19}\" text-anchor=\"middle\">{h:0.##}</text>");
        }

        svg.Append(CultureInfo.InvariantCulture,
            $"<path class=\"a\" d=\"M{Left} {Top}V{bottom}H{right}V{Top}\" fill=\"none\"/>"
            + $"<text class=\"s\" x=\"{Left - 8}\" y=\"{Top - 10}\" text-anchor=\"end\">°C</text>"
            + $"<text class=\"s\" x=\"{right + 8}\" y=\"{Top - 10}\">°F</text>"
            + $"<text class=\"s\" x=\"{right}\" y=\"{bottom + 34}\" text-anchor=\"end\">hours</text>");
    }

    /// <summary>Hours from the start at which the axis is marked.</summary>
    public IEnumerable<double> HourMarks()
    {
        var step = HourSteps.FirstOrDefault(s => hours / s <= 12, 480);
        for (var h = 0.0; h <= hours * 1.0001; h += step) yield return h;
    }

    /// <summary>The temperature: of many samples in one column of pixels the first, lowest, highest and last.</summary>
    public string Curve(FiringCurve curve)
    {
        var path = new StringBuilder();
        var points = curve.Points;
        for (var i = 0; i < points.Count;)
        {
            var column = (int)X(points[i].Hours);
            var (first, low, high) = (i, i, i);
            for (; i < points.Count && (int)X(points[i].Hours) == column; i++)
            {
                if (points[i].Celsius < points[low].Celsius) low = i;
                if (points[i].Celsius > points[high].Celsius) high = i;
            }

            foreach (var at in new[] { first, Math.Min(low, high), Math.Max(low, high), i - 1 }.Distinct())
            {
                path.Append(CultureInfo.InvariantCulture,
                    $"{(path.Length == 0 ? 'M' : 'L')}{X(points[at].Hours):0.##} {Y(points[at].Celsius):0.##}");
            }
        }

        return path.ToString();
    }
}
