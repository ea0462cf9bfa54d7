using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>How long to soak for the next cone, predicted from ramps: no measured holds exist.</summary>
internal static class Soak
{
    /// <summary>
    /// After a ramp at rate b to T, a cone that needs ΔT more bends in t = (e^{s·ΔT} − 1)/(s·b): the closed form for a
    /// curve of one slope.
    /// </summary>
    /// <param name="slope">s = d ln K/dT, 1/K.</param>
    /// <param name="rate">b, K/h.</param>
    /// <param name="missing">ΔT, K.</param>
    public static double Hours(double slope, double rate, double missing) => (Math.Exp(slope * missing) - 1) / (slope * rate);

    /// <summary>Hold at a temperature, after a ramp to it, that puts a cone just down, h; 0 when the ramp already does.</summary>
    /// <param name="curve">The cone.</param>
    /// <param name="kelvin">Where to hold, K.</param>
    /// <param name="rate">Rate of the ramp, K/h.</param>
    public static double ToBend(BendingCurve curve, double kelvin, double rate) =>
        Math.Max(0, 1 - (curve.K(kelvin) / rate)) / curve.BendRate(kelvin);
}
