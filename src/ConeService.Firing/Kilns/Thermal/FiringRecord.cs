using System.Runtime.CompilerServices;
using ConeService.Contract.Quantities;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Kilns.Thermal;

/// <summary>
/// What is kept of a firing while it runs: two thinned histories, samples for drawing, the peak and where the heat stood there.
/// </summary>
/// <param name="balance">The kiln.</param>
internal sealed class FiringRecord(HeatBalance balance)
{
    private const double Tolerance = 0.1;
    private const double SampleHours = 0.1;

    /// <summary>Less than this below the highest still counts as at the peak, K.</summary>
    private const double AtPeak = 0.5;

    private readonly HistoryThinner chamber = new(Tolerance), load = new(Tolerance);
    private readonly List<KilnSample> samples = new(512);
    private readonly HeatState atPeak = new();
    private double nextSample;

    /// <summary>Highest temperature of the chamber, K.</summary>
    public double PeakKelvin { get; private set; } = double.NegativeInfinity;

    /// <summary>First moment of it, h.</summary>
    public double PeakHours { get; private set; }

    /// <summary>Where the heat stood when the chamber was last at its highest.</summary>
    public HeatParts PeakParts => balance.Parts(atPeak);

    /// <summary>The samples so far.</summary>
    public IReadOnlyList<KilnSample> Samples => samples;

    public HeatHistory Chamber => chamber.ToHistory();

    public HeatHistory Load => load.ToHistory();

    /// <summary>Takes a moment.</summary>
    /// <param name="hours">When, h.</param>
    /// <param name="setPoint">Set-point, K; NaN where there is none.</param>
    /// <param name="watts">Power, W.</param>
    /// <param name="always">Sample it, whenever the last sample was.</param>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public void Add(double hours, double setPoint, double watts, bool always = false)
    {
        var kelvin = balance.Chamber;
        chamber.Add(hours, kelvin);
        load.Add(hours, balance.Load);
        if (kelvin > PeakKelvin + 0.01) (PeakKelvin, PeakHours) = (kelvin, hours);
        if (kelvin >= PeakKelvin - AtPeak) balance.Keep(atPeak);
        if (!always && hours < nextSample - 1e-9) return;
        var sample = new KilnSample(
            hours,
            double.IsNaN(setPoint) ? null : setPoint - Temperature.KelvinAtZero,
            kelvin - Temperature.KelvinAtZero,
            balance.Load - Temperature.KelvinAtZero,
            watts / 1000);
        if (samples.Count > 0 && samples[^1].Hours >= hours) samples[^1] = sample;
        else samples.Add(sample);
        nextSample = (Math.Floor((hours / SampleHours) + 1e-6) + 1) * SampleHours;
    }

    /// <summary>
    /// Mean rate from the sample where the chamber was <paramref name="span"/> K from where it is now, not before <paramref name="since"/>,
    /// K/h, positive; null when nothing moved.
    /// </summary>
    public double? RateOverLast(double span, double since)
    {
        var end = samples[^1];
        var i = samples.Count - 1;
        while (i > 0 && samples[i - 1].Hours >= since && Math.Abs(end.ChamberCelsius - samples[i].ChamberCelsius) < span) i--;
        var (hours, way) = (end.Hours - samples[i].Hours, Math.Abs(end.ChamberCelsius - samples[i].ChamberCelsius));
        return hours > 0 && way > 0 ? way / hours : null;
    }
}
