using System.Globalization;
using ConeService.Firing;

namespace ConeService.Api.Features.Figures;

/// <summary>The clock of a bending cone: how far it leans, told by the hour to which its tip points.</summary>
internal static class BendingCone
{
    /// <summary>Alternative text.</summary>
    public const string Alt = "Seven cones bending further and further, from as set to six o'clock, where the tip is level with the base";

    // The lean as set (fact cone-lean-and-height), and what an hour of the clock is worth, degrees.
    private const double AsSet = 8;
    private const double Hour = 15;

    private const double Length = 66;
    private const double HalfWidth = 9;
    private const int Steps = 14;
    private const int Ground = 150;

    // What is said of the bend below the cones, by id of the facts.
    private static readonly string[] Facts =
        ["end-point-right-angle-bend", "bend-slow-then-fast", "bend-span-by-clock-position", "bend-duration-by-cone-number"];

    public static string Draw(FiringReference reference)
    {
        var facts = reference.Cones.Facts(null).Items.Where(f => Facts.Contains(f.Id)).OrderBy(f => Array.IndexOf(Facts, f.Id)).ToList();
        const int Height = 364;
        var figure = new Figure("The clock of a bending cone", Alt + ". " + string.Join(' ', facts.Select(f => f.Name)), Height);
        figure.Text(16, 46, "Look at the tip: the hour to which it points, seen from the base, tells how far the cone has gone.", "s");
        for (var hour = 0; hour <= 6; hour++)
        {
            var x = 46 + (hour * 86);
            var lean = hour == 0 ? AsSet : hour * Hour;
            Cone(figure, x, lean);
            figure.Text(x + 6, Ground + 34, hour == 0 ? "as set" : $"{hour} o'clock", anchor: "middle");
            figure.Text(x + 6, Ground + 50, string.Create(CultureInfo.InvariantCulture, $"{lean:0}°"), "s", "middle");
        }

        figure.Lines(16, Ground + 78, facts.Select(f => f.Name));
        return figure.End(Height, FigureKinds.Foot(reference));
    }

    // The middle of the cone bends as an arc of a circle, upright as set at its foot, so that the line from foot to tip leans as told.
    private static void Cone(Figure figure, double x, double lean)
    {
        var (from, to) = (AsSet * Math.PI / 180, ((2 * lean) - AsSet) * Math.PI / 180);
        var (left, right) = (new List<(double X, double Y)>(), new List<(double X, double Y)>());
        var (at, up) = (x, (double)Ground);
        for (var i = 0; i <= Steps; i++)
        {
            var share = (double)i / Steps;
            var angle = from + ((to - from) * share);
            var half = HalfWidth * (1 - (0.85 * share));
            left.Add((at - (half * Math.Cos(angle)), up - (half * Math.Sin(angle))));
            right.Add((at + (half * Math.Cos(angle)), up + (half * Math.Sin(angle))));
            at += Length / Steps * Math.Sin(angle);
            up -= Length / Steps * Math.Cos(angle);
        }

        right.Reverse();
        figure.Shape("M" + FigureKinds.Points(left.Concat(right)) + "Z");
        // The hand of the clock, from the foot beyond the tip, and the base in which the cone stands.
        var hand = lean * Math.PI / 180;
        const double Far = Length;
        figure.Path("M" + FigureKinds.Points([(x, Ground), (x + (Far * Math.Sin(hand)), Ground - (Far * Math.Cos(hand)))]), "l");
        figure.Shape(string.Create(CultureInfo.InvariantCulture, $"M{x - 18} {Ground}H{x + 18}V{Ground + 12}H{x - 18}Z"));
    }
}
