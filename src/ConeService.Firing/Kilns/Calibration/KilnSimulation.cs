using ConeService.Data;
using ConeService.Firing.HeatWork;
using ConeService.Firing.HeatWork.Forecasting;
using ConeService.Firing.Kilns.Thermal;

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
/// <param name="firings">The firings that are fired.</param>
internal sealed class KilnSimulation(Dataset dataset, KilnModel model, IReadOnlyList<LoggedFiring> firings)
{
    private const double StepSeconds = 120;

    // Of all firings together, h.
    private const double FewHours = 150;
    private const double MoreHours = 400;

    // So close to its room a kiln cools no further, K.
    private const double ColdKelvin = 0.01;

    // Finer than for a prediction: a firing that ends a step later cools a step later, and an estimate must not move by stairs. Those of
    // many firings even out, and many firings, or long ones, must not take minutes.
    private readonly double programmeSeconds = (firings.Count, firings.Sum(f => f.CountedHours)) switch
    {
        ( <= 3, <= FewHours) => 20,
        ( <= 10, <= MoreHours) => 30,
        _ => KilnModel.StepSeconds,
    };

    // By firing and wall: what a kiln is like after it was led along a log depends on nothing else that is estimated.
    private readonly Dictionary<(LoggedFiring Firing, double WallMillimetres), LedKiln> led = [];

    /// <summary>How many steps of the heat balance were computed.</summary>
    public long Steps { get; private set; }

    /// <summary>Fires it.</summary>
    public SimulatedFiring Fire(LoggedFiring firing, KilnGuess guess)
    {
        var setup = guess.Into(firing.Setup);
        if (firing.Programme is not { } programme) return Cool(firing, guess, setup);
        var begun = firing.Log.Start.Hours;
        // What comes after the log is compared with nothing.
        var prediction = model.Predict(
            setup, programme, programmeSeconds, firing.MostHours, firing.FollowedHours - begun + (4 * programmeSeconds / 3600));
        Steps += prediction.Steps;
        var shifted = prediction.Chamber.Points.ToArray();
        for (var i = 0; i < shifted.Length; i++) shifted[i] = shifted[i] with { Hours = shifted[i].Hours + begun };
        return new(
            firing.BinsOf(new(shifted)), prediction.Energy.TotalKilowattHours, prediction.Completed ? prediction.HoursToEnd : null);
    }

    /// <summary>What the guessed kiln takes to go as the log goes, kWh.</summary>
    public double KilowattHoursAlong(LoggedFiring firing, KilnGuess guess) => Lead(firing, guess).KilowattHours(guess.LeakFactor);

    private LedKiln Lead(LoggedFiring firing, KilnGuess guess)
    {
        var key = (firing, guess.WallMillimetres);
        if (!led.TryGetValue(key, out var kiln))
        {
            led[key] = kiln = LedKiln.Along(
                firing, new(dataset, model.Defaults, firing.Setup with { WallMillimetres = guess.WallMillimetres }, firing.Led()));
            Steps += kiln.Balance.Steps;
        }

        return kiln;
    }

    private SimulatedFiring Cool(LoggedFiring firing, KilnGuess guess, KilnSetup setup)
    {
        var kiln = Lead(firing, guess);
        var energy = kiln.KilowattHours(guess.LeakFactor);
        if (firing.Bins.Length == 0) return new([], energy, null);
        var balance = new HeatBalance(kiln.Balance, KilnAssembler.Assemble(dataset, model.Defaults, setup));
        var hours = kiln.Hours;
        var points = new List<HeatPoint> { new(Math.Min(hours, firing.FromHours) - 1e-3, balance.Chamber), new(hours, balance.Chamber) };
        // Beyond the last moment it stays as it is.
        while (hours < firing.FollowedHours && balance.Chamber - ForecastReader.Room > ColdKelvin)
        {
            Patience.Check();
            balance.Step(StepSeconds, 0, 0);
            hours += StepSeconds / 3600;
            points.Add(new(hours, balance.Chamber));
        }

        Steps += balance.Steps;
        return new(firing.BinsOf(new(points.ToArray())), energy, null);
    }
}

/// <summary>A kiln led along a log, whatever its leak: where the chamber is known, the power that this takes is linear in it.</summary>
/// <param name="Balance">Its state where the log begins to be compared.</param>
/// <param name="Hours">That moment, h in the time of the log.</param>
/// <param name="LeakFactor">The leak that it was led with.</param>
/// <param name="Energy">What it took with that to the end of the programme, kWh.</param>
/// <param name="EnergyPerFactor">What one more of the leak factor takes, kWh.</param>
internal sealed record LedKiln(HeatBalance Balance, double Hours, double LeakFactor, double Energy, double EnergyPerFactor)
{
    /// <summary>Takes over what was led to the end of the programme, and leads it on to where the log is compared.</summary>
    public static LedKiln Along(LoggedFiring firing, KilnReplay replay)
    {
        var (steps, energy, leak) = (replay.Steps, 0.0, 0.0);
        // All steps along a log are of one length.
        if (steps.Count >= 2)
        {
            var hours = steps[^1].Hours - steps[^2].Hours;
            energy = steps.Sum(s => s.Watts) * hours / 1000;
            leak = replay.LeakPerFactor * steps.Sum(s => s.Kelvin - ForecastReader.Room) * hours / 1000;
        }

        if (firing.LedOn() is { } on) replay.Go(on);
        return new(replay.Balance, replay.Steps[^1].Hours, replay.Setup.LeakFactor, energy, leak);
    }

    /// <summary>What it takes to the end of the programme with another leak, kWh.</summary>
    public double KilowattHours(double leakFactor) => Energy + ((leakFactor - LeakFactor) * EnergyPerFactor);
}
