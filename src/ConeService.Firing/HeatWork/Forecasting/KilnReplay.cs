using ConeService.Contract.Quantities;
using ConeService.Data;
using ConeService.Firing.Kilns;
using ConeService.Firing.Kilns.Thermal;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>
/// The log run through the kiln model: the chamber is led along it, so that load and wall come out as warm as they must be, and
/// the power that this takes is kept, step by step. Where the chamber is known, that power is linear in the leak.
/// </summary>
internal sealed class KilnReplay
{
    // So many steps at most: 400 h by the minute, the model's own longest firing; longer logs are led along in longer steps.
    private const int MostSteps = 24_000;

    // A log that begins hotter than this has lost its beginning, and a wall that is hot throughout would be wrong.
    private const double ColdStartKelvin = 60 + Temperature.KelvinAtZero;
    private const double LeadInKelvinPerHour = 120;

    private readonly List<ReplayStep> steps;

    /// <summary>Leads the kiln along a log.</summary>
    public KilnReplay(Dataset dataset, KilnDefaults defaults, KilnSetup setup, HeatHistory log)
    {
        Setup = setup;
        Physics = KilnAssembler.Assemble(dataset, defaults, setup);
        // Of a factor of 0 nothing can be told, so the leak of a closed kiln comes from a setup that has one.
        LeakPerFactor = setup.LeakFactor > 0
            ? Physics.LeakConductance / setup.LeakFactor
            : KilnAssembler.Assemble(dataset, defaults, setup with { LeakFactor = 1 }).LeakConductance;
        var flue = new FlueLoss(defaults["flue-loss"], defaults["flue-loss-slope"]);
        Available = kelvin => flue.Available(kelvin - Temperature.KelvinAtZero, ForecastReader.Room - Temperature.KelvinAtZero);
        BeganHot = log.Start.Kelvin > ColdStartKelvin;
        Balance = new(Physics, BeganHot ? ForecastReader.Room : log.Start.Kelvin, ForecastReader.Room);
        if (BeganHot) LeadIn(log.Start.Kelvin);
        steps = new(Math.Min(MostSteps, (int)(log.DurationHours * 60)) + 1);
        Follow(log);
    }

    /// <summary>Kiln and load.</summary>
    public KilnSetup Setup { get; }

    /// <summary>The numbers of the heat balance.</summary>
    public KilnPhysics Physics { get; }

    /// <summary>Heat that leaking air takes at a leak factor of 1, W/K.</summary>
    public double LeakPerFactor { get; }

    /// <summary>Share of a fuel's heat that stays at a chamber temperature in K.</summary>
    public Func<double, double> Available { get; }

    /// <summary>True when the log lacks its beginning; a steady climb from the room was put before it.</summary>
    public bool BeganHot { get; }

    /// <summary>The state at the last sample.</summary>
    public HeatBalance Balance { get; }

    /// <summary>The steps along the log.</summary>
    public IReadOnlyList<ReplayStep> Steps => steps;

    /// <summary>Leads the kiln on.</summary>
    /// <param name="log">How the log goes on from its last sample.</param>
    public void Go(HeatHistory log) => Follow(log);

    private void LeadIn(double to)
    {
        const double seconds = KilnModel.StepSeconds;
        for (var kelvin = Balance.Chamber; kelvin < to;)
        {
            Patience.Check();
            kelvin = Math.Min(to, kelvin + (LeadInKelvinPerHour * seconds / 3600));
            Balance.Step(seconds, kelvin, double.PositiveInfinity, double.NegativeInfinity);
        }
    }

    private void Follow(HeatHistory log)
    {
        var points = log.Points;
        var count = Math.Clamp((int)Math.Ceiling(log.DurationHours * 3600 / KilnModel.StepSeconds), 1, MostSteps);
        var stride = log.DurationHours / count;
        for (int step = 1, i = 1; step <= count; step++)
        {
            Patience.Check();
            var hours = step == count ? log.End.Hours : log.Start.Hours + (step * stride);
            while (i < points.Length - 1 && points[i].Hours < hours) i++;
            var (a, b) = (points[i - 1], points[i]);
            var kelvin = a.Kelvin + ((hours - a.Hours) / (b.Hours - a.Hours) * (b.Kelvin - a.Kelvin));
            var watts = Balance.Step(stride * 3600, kelvin, double.PositiveInfinity, double.NegativeInfinity);
            steps.Add(new(hours, kelvin, watts));
        }
    }
}

/// <summary>A step along the log.</summary>
/// <param name="Hours">Its end, h in the time of the log.</param>
/// <param name="Kelvin">The chamber there, K.</param>
/// <param name="Watts">Power that brings the model's chamber there; below 0 where the real kiln loses more than the model.</param>
internal readonly record struct ReplayStep(double Hours, double Kelvin, double Watts);
