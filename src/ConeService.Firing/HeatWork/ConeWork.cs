using ConeService.Contract.HeatWork;
using ConeService.Contract.Quantities;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>What a firing did to one cone.</summary>
/// <param name="Cone">The cone on its chart.</param>
/// <param name="Curve">The curve it was computed with.</param>
/// <param name="Progress">I: 0 untouched, 1 just down; goes on rising beyond.</param>
/// <param name="MarginKelvin">How far past its end point (+) or short of it (−), in degrees of a 60 °C/h firing, K.</param>
/// <param name="DownAtHours">When it went down, h since the time 0 of the history; null when it stayed up.</param>
internal sealed record ConeWork(ChartCone Cone, BendingCurve Curve, double Progress, double MarginKelvin, double? DownAtHours)
{
    // Beyond it a number says no more than that the cone is far past.
    private const double MostProgress = 100;

    /// <summary>True when the cone is down (90°), or short of it by less than anything tells.</summary>
    public bool IsDown => Progress >= HeatIntegral.Down || HeatMargin.IsJustDown(MarginKelvin);

    /// <summary>How far it leans, degrees from upright.</summary>
    public double BendDegrees => ConeBend.Degrees(IsDown ? 1 : Progress);

    /// <summary>A progress as answers tell it: 100 stands for 100 and more.</summary>
    public static double Told(double progress) => Math.Min(progress, MostProgress);

    /// <summary>σ of the margin, K.</summary>
    /// <param name="shared">What all cones share.</param>
    /// <param name="rate">Rate over the last 100 K, by which the chart's scatter is widened.</param>
    /// <param name="slope">Effect of the uncertain slope, K.</param>
    /// <param name="history">The firing.</param>
    internal double SigmaOf(SharedUncertainty shared, HeatingRate rate, double slope, ResidenceHistogram history) => HeatUncertainty.Sigma(
        shared, Cone.Computed(rate)?.SigmaCelsius ?? 0, slope, HeatUncertainty.PerKelvin(Curve, history, MarginKelvin));
}
