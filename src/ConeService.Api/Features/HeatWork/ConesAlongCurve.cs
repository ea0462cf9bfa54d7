using System.Globalization;
using System.Text;
using ConeService.Api.Http;
using ConeService.Contract.HeatWork;

namespace ConeService.Api.Features.HeatWork;

/// <summary>The cones of a figure: where each went down on the curve, and how the last ones stand at the end.</summary>
internal static class ConesAlongCurve
{
    private const double LabelRoom = 17;
    private const double LabelWidth = 34;

    /// <summary>A mark where each cone went down, with names as far as they find room; the hottest are named first.</summary>
    public static void Draw(StringBuilder svg, FigureFrame frame, HeatWorkAnswer answer, FiringCurve curve)
    {
        var named = new List<(double X, double Y)>();
        foreach (var cone in answer.Cones.Where(c => c.DownAtMinutes is not null).Reverse())
        {
            var at = curve.Start.Hours + (cone.DownAtMinutes!.Value / 60);
            var (x, y) = (frame.X(at), frame.Y(curve.CelsiusAt(at)));
            var reached = cone.Cone == answer.Reached;
            svg.Append(CultureInfo.InvariantCulture,
                $"<circle class=\"{(reached ? "r" : "d")}\" cx=\"{x:0.#}\" cy=\"{y:0.#}\" r=\"{(reached ? 5 : 3)}\"/>");
            if (named.Any(n => Math.Abs(n.Y - y) < LabelRoom && Math.Abs(n.X - x) < LabelWidth)) continue;
            named.Add((x, y));
            svg.Append(CultureInfo.InvariantCulture,
                $"<path class=\"l\" d=\"M{x - 5:0.#} {y - 4:0.#}l-11 -9\"/>"
                + $"<text x=\"{x - 18:0.#}\" y=\"{y - 12:0.#}\" text-anchor=\"end\""
                + $"{(reached ? " font-weight=\"600\"" : "")}>{HtmlPage.Encode(cone.Cone)}</text>");
        }
    }

    /// <summary>The cone reached, the one before and the next two, as they lean at the end.</summary>
    public static void DrawStanding(StringBuilder svg, HeatWorkAnswer answer)
    {
        var next = answer.Next is null ? answer.Cones.Count : answer.Cones.Index().First(c => c.Item.Cone == answer.Next).Index;
        var shown = answer.Cones.Skip(Math.Max(0, next - 2)).Take(4).ToList();
        const double height = 50, pitch = 104, ground = FigureFrame.Height - 76;
        const double left = FigureFrame.Left + 30.0;
        svg.Append(CultureInfo.InvariantCulture,
            $"<g aria-hidden=\"true\"><path class=\"b\" d=\"M{left - 24:0.#} {ground}H{left + (pitch * shown.Count) - 8:0.#}\"/>");
        foreach (var (i, cone) in shown.Index())
        {
            var x = left + (pitch * i);
            // A bent cone is a curve whose foot stays upright and whose tip leans by the whole angle.
            var lean = cone.BendDegrees * Math.PI / 180;
            var (tipX, tipY) = (
                x + (height * Math.Sin(lean) * 0.85),
                Math.Min(ground - 5, ground - (height * (0.28 + (0.72 * Math.Cos(lean))) * (cone.BendDegrees >= 90 ? 0.12 : 1))));
            var knee = ground - (height * 0.62);
            svg.Append(CultureInfo.InvariantCulture,
                $"<path class=\"c\" d=\"M{x:0.#} {ground - 5}Q{x + (height * 0.12):0.#} "
                + $"{knee - (height * 0.1 * Math.Sin(lean)):0.#} {tipX:0.#} {tipY:0.#}\"/>"
                + $"<text x=\"{x + 16:0.#}\" y=\"{ground + 18}\" text-anchor=\"middle\">{HtmlPage.Encode(cone.Cone)}</text>"
                + $"<text class=\"s\" x=\"{x + 16:0.#}\" y=\"{ground + 32}\" text-anchor=\"middle\">{Caption(cone)}</text>");
        }

        var beside = left + (pitch * shown.Count);
        svg.Append(CultureInfo.InvariantCulture,
            $"</g><text class=\"s\" x=\"{beside:0.#}\" y=\"{ground - 22}\">"
            + $"How cones of the chart stand at the end: angle from upright,</text>"
            + $"<text class=\"s\" x=\"{beside:0.#}\" y=\"{ground - 6}\">and P, the probability that a real one is down.</text>");
    }

    private static string Caption(ConeResult cone) => cone.DownAtMinutes is not null
        ? string.Create(CultureInfo.InvariantCulture, $"down, P {cone.ProbabilityDown:0.00}")
        : string.Create(CultureInfo.InvariantCulture, $"{cone.BendDegrees:0}°, P {cone.ProbabilityDown:0.00}");
}
