using ConeService.Data;
using ConeService.Firing.HeatWork;
using ConeService.Firing.HeatWork.Forecasting;

namespace ConeService.Firing.Kilns.Calibration;

/// <summary>What is estimated of a kiln.</summary>
/// <param name="WallMillimetres">Thickness of the wall, mm.</param>
/// <param name="LeakFactor">Leak factor.</param>
/// <param name="PowerFactor">Power over what was stated or assumed.</param>
internal readonly record struct KilnGuess(double WallMillimetres, double LeakFactor, double PowerFactor)
{
    /// <summary>Kiln and load with the guess put in.</summary>
    public KilnSetup Into(KilnSetup setup) => setup with
    {
        WallMillimetres = WallMillimetres,
        LeakFactor = LeakFactor,
        RatedKilowatts = setup.RatedKilowatts * PowerFactor,
        AvailableKilowatts = setup.AvailableKilowatts * PowerFactor,
    };
}

/// <summary>What a guessed kiln does in a firing that was logged.</summary>
/// <param name="Bins">The chamber over the spans of the log, K.</param>
/// <param name="KilowattHours">What it takes.</param>
/// <param name="EndHours">When it ends the programme, h; null without one, or where it stalls.</param>
internal sealed record SimulatedFiring(double[] Bins, double KilowattHours, double? EndHours);

/// <summary>
/// Fires a guessed kiln: by its programme, where that is known; else along the log to the end of the programme, as the forecast of a
/// firing under way does, and from there without power.
/// </summary>
/// <param name="dataset">The data.</param>
/// <param name="model">The kiln model.</param>
/// <param name="firings">How many firings are fired.</param>
internal sealed class KilnSimulation(Dataset dataset, KilnModel model, int firings)
{
    private const double StepSeconds = 120;

    // Finer than for a prediction: a firing that ends a step later cools a step later, and an estimate must not move by stairs. Those of
    // many firings even out, and many firings must not take minutes.
    private readonly double programmeSeconds = firings <= 3 ? 20 : firings <= 10 ? 30 : KilnModel.StepSeconds;

    /// <summary>Fires it.</summary>
    public SimulatedFiring Fire(LoggedFiring firing, KilnGuess guess)
    {
        var setup = guess.Into(firing.Setup);
        if (firing.Programme is not { } programme) return Cool(firing, setup);
        var prediction = model.Predict(setup, programme, programmeSeconds);
        var shifted = prediction.Chamber.Points.ToArray();
        for (var i = 0; i < shifted.Length; i++) shifted[i] = shifted[i] with { Hours = shifted[i].Hours + firing.Log.Start.Hours };
        return new(
            firing.BinsOf(new(shifted)), prediction.Energy.TotalKilowattHours, prediction.Completed ? prediction.HoursToEnd : null);
    }

    /// <summary>What the guessed kiln takes to go as the log goes, kWh.</summary>
    public double KilowattHoursAlong(LoggedFiring firing, KilnGuess guess) =>
        Energy(Lead(firing, guess.Into(firing.Setup), firing.EndHours));

    private KilnReplay Lead(LoggedFiring firing, KilnSetup setup, double until) =>
        new(dataset, model.Defaults, setup, firing.Until(until));

    private SimulatedFiring Cool(LoggedFiring firing, KilnSetup setup)
    {
        var energy = Energy(Lead(firing, setup, firing.EndHours));
        if (firing.Bins.Length == 0) return new([], energy, null);
        var balance = Lead(firing, setup, firing.FromHours).Balance;
        var hours = firing.Until(firing.FromHours).End.Hours;
        var points = new List<HeatPoint> { new(Math.Min(hours, firing.FromHours) - 1e-3, balance.Chamber), new(hours, balance.Chamber) };
        while (hours < firing.Log.End.Hours)
        {
            balance.Step(StepSeconds, 0, 0);
            hours += StepSeconds / 3600;
            points.Add(new(hours, balance.Chamber));
        }

        return new(firing.BinsOf(new(points.ToArray())), energy, null);
    }

    // All steps along a log are of one length.
    private static double Energy(KilnReplay replay)
    {
        var steps = replay.Steps;
        return steps.Count < 2 ? 0 : steps.Average(s => s.Watts) / 1000 * steps.Count * (steps[^1].Hours - steps[^2].Hours);
    }
}
