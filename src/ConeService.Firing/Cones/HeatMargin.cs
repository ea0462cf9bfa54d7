namespace ConeService.Firing.Cones;

/// <summary>Progress as degrees of a steady firing at 60 °C/h: how far past the end point, or how far short of it.</summary>
internal static class HeatMargin
{
    /// <summary>The rate whose degrees margins are expressed in, °C/h (docs/cone-curves.md).</summary>
    public const double Rate = 60;

    // A tenth of a kelvin is far below every uncertainty: whoever asks for a cone and misses it by less has it.
    private const double ToleranceKelvin = 0.1;

    // Below this the margin says nothing any more, and ln 0 would say less.
    private const double LeastProgress = 1e-250;

    /// <summary>ln of <see cref="Rate"/>.</summary>
    public static double LogRate { get; } = Math.Log(Rate);

    /// <summary>m = K⁻¹(60·I) − K⁻¹(60), K; positive when the firing went past.
    /// Minus the whole way up when nothing happened.</summary>
    public static double Of(BendingCurve curve, double progress) => OfLog(curve, Math.Log(Math.Max(progress, LeastProgress)));

    /// <summary>The margin of a progress told by its logarithm, K.</summary>
    public static double OfLog(BendingCurve curve, double logProgress) => curve.Inverse(LogRate + logProgress) - curve.Inverse(LogRate);

    /// <summary>True when a cone of this margin counts as down: it went past its end point, or misses it by at most 0.1 K.</summary>
    public static bool IsJustDown(double margin) => margin >= -ToleranceKelvin;

    /// <summary>The progress from which a cone counts as down.</summary>
    public static double JustDown(BendingCurve curve) => Progress(curve, -ToleranceKelvin);

    /// <summary>The progress whose margin this is: the inverse of <see cref="Of"/>.</summary>
    public static double Progress(BendingCurve curve, double margin) =>
        Math.Exp(curve.LogK(curve.Inverse(LogRate) + margin) - LogRate);
}
