using ConeService.Contract.Quantities;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>When a curve passes a temperature.</summary>
internal static class HistoryCrossing
{
    /// <summary>The first time upwards, or the last time downwards, h; null when it never does.</summary>
    public static double? At(HeatHistory curve, double celsius, bool up)
    {
        var points = curve.Points;
        var kelvin = celsius + Temperature.KelvinAtZero;
        double? found = null;
        for (var i = 1; i < points.Length; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            if (up ? !(a.Kelvin <= kelvin && b.Kelvin > kelvin) : !(a.Kelvin > kelvin && b.Kelvin <= kelvin)) continue;
            found = a.Hours + ((kelvin - a.Kelvin) / (b.Kelvin - a.Kelvin) * (b.Hours - a.Hours));
            if (up) return found;
        }

        return found;
    }
}
