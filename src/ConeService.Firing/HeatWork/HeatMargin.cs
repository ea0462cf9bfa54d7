using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>Progress as degrees of a steady firing at 60 °C/h: how far past the end point, or how far short of it.</summary>
internal static class HeatMargin
{
    private static readonly double LogRate = Math.Log(ConeReader.MarginRate);

    /// <summary>m = K⁻¹(60·I) − K⁻¹(60), K; positive when the firing went past. Minus the whole way up when nothing happened.</summary>
    public static double Of(BendingCurve curve, double progress) =>
        curve.Inverse(LogRate + Math.Log(Math.Max(progress, LeastProgress))) - curve.Inverse(LogRate);

    /// <summary>The progress whose margin this is: the inverse of <see cref="Of"/>.</summary>
    public static double Progress(BendingCurve curve, double margin) =>
        Math.Exp(curve.LogK(curve.Inverse(LogRate) + margin) - LogRate);

    // Below this the margin says nothing any more, and ln 0 would say less.
    private const double LeastProgress = 1e-250;
}
