using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>
/// How far a cone leans at a progress: ln tan(χ/2) runs straight in I between knots read off what the cone maker says of the bend
/// (facts whole-bend-span and bend-span-by-clock-position; docs/heat-work.md). Below the first knot a cone stands as it was set.
/// </summary>
internal static class ConeBend
{
    /// <summary>The lean up to which nobody tells a cone that has begun to move from one that stands, degrees: two o'clock.</summary>
    public const double StandingDegrees = 30;

    // A clock hand is read to half an hour.
    private const double HalfHour = 7.5;

    private const double SetDegrees = 8;
    private const double DownDegrees = 90;

    // Where cone 6 of the self-supporting chart is at 60 °C/h: first movement 22 K before the end, 1 o'clock 19.4 K (35 °F) and 4 o'clock
    // 4.4 K (8 °F) before it.
    private static readonly double[] Progresses = [0.442, 0.485, 0.840, 1];
    private static readonly double[] Logs = [LogTanHalf(SetDegrees), LogTanHalf(15), LogTanHalf(60), LogTanHalf(DownDegrees)];

    /// <summary>The progress at which a cone first moves.</summary>
    public static double FirstMovement => Progresses[0];

    /// <summary>The progress up to which a cone is called standing.</summary>
    public static double StandingProgress { get; } = Progress(StandingDegrees);

    /// <summary>The angle from upright, degrees: 8 until it moves, 90 when the cone is down.</summary>
    public static double Degrees(double progress)
    {
        if (progress <= Progresses[0]) return SetDegrees;
        if (progress >= 1) return DownDegrees;
        return 2 * Math.Atan(Math.Exp(Between(Progresses, Logs, progress))) * 180 / Math.PI;
    }

    /// <summary>The angle as the hour that the cone points to on a clock face: 90° is six o'clock.</summary>
    public static double Clock(double degrees) => degrees / 15;

    /// <summary>The progress at which a cone leans by an angle: that of the first movement at 8° and less, 1 at 90° and more.</summary>
    public static double Progress(double degrees) =>
        degrees <= SetDegrees ? Progresses[0] : degrees >= DownDegrees ? 1 : Between(Logs, Progresses, LogTanHalf(degrees));

    /// <summary>How long a cone takes from its first movement to down at 60 °C/h, minutes; a matter of how much its end point moves with
    /// the rate.</summary>
    public static double MinutesAt60(BendingCurve curve) => curve.EndPoint(60) - curve.Inverse(Math.Log(60 * FirstMovement));

    /// <summary>What a lean that was read can be trusted to, K: 5 at 1 o'clock and before, falling to 2 at 4 o'clock and after.</summary>
    public static double ReadingKelvin(double degrees) => 5 - (3 * (Math.Clamp(Clock(degrees), 1, 4) - 1) / 3);

    /// <summary>True when one lean is further than another by more than a person reads.</summary>
    public static bool IsFurther(double degrees, double than) => degrees > than + HalfHour;

    private static double LogTanHalf(double degrees) => Math.Log(Math.Tan(degrees / 2 * Math.PI / 180));

    private static double Between(double[] xs, double[] ys, double x)
    {
        var i = 0;
        while (i < xs.Length - 2 && xs[i + 1] < x) i++;
        return ys[i] + ((x - xs[i]) / (xs[i + 1] - xs[i]) * (ys[i + 1] - ys[i]));
    }
}
