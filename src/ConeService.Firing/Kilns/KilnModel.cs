using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;
using ConeService.Contract.Quantities;
using ConeService.Data;
using ConeService.Firing.Kilns.Thermal;

namespace ConeService.Firing.Kilns;

/// <summary>
/// The lumped kiln: chamber, load, a wall in eight layers. Equations, defaults and limits: docs/kilns.md. Thread-safe; make one per
/// dataset.
/// </summary>
/// <param name="dataset">Where materials and defaults come from.</param>
internal sealed class KilnModel(Dataset dataset)
{
    /// <summary>A chamber less than this behind the set-point follows, K.</summary>
    public const double FollowingKelvin = 10;

    /// <summary>A kiln is opened below this, °C.</summary>
    public const double OpeningCelsius = 95;

    /// <summary>Firings are predicted over at most this long, h.</summary>
    public const double LongestHours = 400;

    /// <summary>Climbing more slowly than this over an hour at full power is a stall, °C/h.</summary>
    public const double StallCelsiusPerHour = 5;

    /// <summary>Time step, s. From 5 to 60 s the energy is the same within 0.1 %.</summary>
    public const double StepSeconds = 60;

    /// <summary>The material of ware and furniture.</summary>
    internal const string ClayMaterial = "fired-clay";

    private const double Hour = 3600;

    // Of packages of before these rows.
    private const double OpenLeak = 3;
    private const double ProppedLeak = 5;
    private const double LeakSpan = 2;
    private const double WallSpan = 1.25;

    /// <summary>Version of the data behind the answers.</summary>
    public string DatasetVersion => dataset.VersionId;

    /// <summary>The numbers taken where nothing is stated.</summary>
    public KilnDefaults Defaults { get; } = new(dataset);

    /// <summary>Decides every parameter.</summary>
    /// <param name="kiln">The kiln.</param>
    /// <param name="load">The load; null: all by volume.</param>
    /// <param name="kilnField">JSON pointer of the kiln, for findings.</param>
    /// <param name="loadField">JSON pointer of the load, for findings.</param>
    /// <exception cref="RefusedException">Something is absurd; every finding is named.</exception>
    public KilnSetup Resolve(StatedKiln kiln, KilnLoad? load = null, string kilnField = "/kiln", string loadField = "/load") =>
        new KilnResolver(dataset, Defaults, kiln, load ?? new(), kilnField, loadField).Resolve();

    /// <summary>Fires the programme.</summary>
    /// <param name="setup">Kiln and load.</param>
    /// <param name="programme">The programme; targets from 5 °C above the room to 1400 °C, rates from 0.1 to 10000 °C/h, holds up to
    /// <see cref="LongestHours"/>.</param>
    /// <param name="stepSeconds">Time step, s, 1 to 60; shorter ones serve tests.</param>
    /// <exception cref="ArgumentException">The programme has no segment, or a number outside these ranges; callers check theirs
    /// before.</exception>
    public KilnPrediction Predict(KilnSetup setup, KilnProgramme programme, double stepSeconds = StepSeconds) =>
        Predict(setup, programme, stepSeconds, LongestHours, LongestHours);

    /// <summary>The same, as far as somebody wants to know.</summary>
    /// <param name="setup">Kiln and load.</param>
    /// <param name="programme">The programme.</param>
    /// <param name="stepSeconds">Time step, s, 1 to 60.</param>
    /// <param name="mostHours">A programme that is not ended by then is not completed, h.</param>
    /// <param name="coolsTo">When cooling is followed no further, h since the start; what was not seen to be cold has no hours to
    /// opening.</param>
    public KilnPrediction Predict(KilnSetup setup, KilnProgramme programme, double stepSeconds, double mostHours, double coolsTo)
    {
        programme.Check();
        ArgumentOutOfRangeException.ThrowIfLessThan(stepSeconds, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(stepSeconds, StepSeconds);
        var physics = KilnAssembler.Assemble(dataset, Defaults, setup);
        var room = programme.RoomCelsius + Temperature.KelvinAtZero;
        var balance = new HeatBalance(physics, programme.StartCelsius + Temperature.KelvinAtZero, room);
        var record = new FiringRecord(balance);
        var flue = new FlueLoss(Defaults["flue-loss"], Defaults["flue-loss-slope"]);
        Func<double, double>? available = setup.Heat != KilnHeat.Electric
            ? kelvin => flue.Available(kelvin - Temperature.KelvinAtZero, programme.RoomCelsius)
            : null;
        var watts = setup.AvailableKilowatts * 1000;
        Func<double, double> most = available is null ? _ => watts : kelvin => watts * available(kelvin);
        var unit = Defaults["leak"] * setup.InsideSquareMetres * Defaults["air-heat"];
        // A leak that is stated may hold the vent already: the greater counts.
        Func<VentSetting, double> leak = vent => unit * Math.Max(setup.LeakFactor, VentLeak(vent));
        var run = new FiringRun(balance, record, most, physics.Load.DryKelvin, stepSeconds)
        {
            Available = available,
            LeakOf = leak,
            LongestHours = Math.Min(mostHours, LongestHours),
        };

        record.Add(0, double.NaN, 0, always: true);
        var segments = new List<SegmentRun>(programme.Segments.Count);
        var completed = true;
        for (var i = 0; i < programme.Segments.Count; i++)
        {
            segments.Add(completed ? run.Run(i, programme.Segments[i]) : NotRun(i, run.Hours, balance));
            completed &= segments[i].RampEndHours is not null;
        }

        var end = run.Hours;
        var opening = run.Cool(OpeningCelsius + Temperature.KelvinAtZero, Math.Min(coolsTo, LongestHours));
        return new(
            segments,
            setup.MaxCelsius is { } limit && programme.Segments.Any(s => s.TargetCelsius > limit),
            completed,
            record.PeakKelvin - Temperature.KelvinAtZero,
            record.PeakHours,
            end,
            opening,
            Energy(setup, record.PeakParts, balance.Parts()),
            setup.Heat != KilnHeat.Electric ? Fuel(run.Fuel / Hour / 1000, setup.FuelFactor) : null,
            record.Chamber,
            record.Load,
            record.Samples,
            balance.Steps);
    }

    /// <summary>
    /// When the kiln may be opened, by the spans of leak and wall: earliest when it leaks and its wall is thin, latest when neither.
    /// </summary>
    /// <param name="setup">Kiln and load.</param>
    /// <param name="programme">The programme.</param>
    /// <param name="prediction">What the kiln makes of it.</param>
    /// <returns>Hours from the start, in half hours; null where the firing is not completed or takes too long to cool.</returns>
    public (double Least, double Most)? OpeningSpan(KilnSetup setup, KilnProgramme programme, KilnPrediction prediction)
    {
        if (!prediction.Completed || prediction.HoursToOpening is not { } opening) return null;
        var (leak, wall) = (Defaults.Of("leak-span", LeakSpan), Defaults.Of("wall-span", WallSpan));
        if (setup.Assumed.All(a => a.Parameter != "kiln.wall.thicknessMillimetres")) wall = 1;
        double? Cooling(double leaks, double thick)
        {
            // With power to spare, so that only the cooling differs.
            var fired = Predict(
                setup with
                {
                    LeakFactor = setup.LeakFactor * leaks,
                    WallMillimetres = setup.WallMillimetres * thick,
                    AvailableKilowatts = 3 * setup.AvailableKilowatts,
                },
                programme);
            return fired.HoursToOpening - fired.HoursToEnd;
        }

        if (Cooling(leak, 1 / wall) is not { } fast || Cooling(1 / leak, wall) is not { } slow) return null;
        var (least, most) = (Math.Min(opening, prediction.HoursToEnd + fast), Math.Max(opening, prediction.HoursToEnd + slow));
        return (Math.Floor((least * 2) + 1e-9) / 2, Math.Ceiling((most * 2) - 1e-9) / 2);
    }

    private double VentLeak(VentSetting vent) => vent switch
    {
        VentSetting.Open => Defaults.Of("vent-open-leak", OpenLeak),
        VentSetting.Propped => Defaults.Of("vent-propped-leak", ProppedLeak),
        _ => 0,
    };

    private static SegmentRun NotRun(int index, double hours, HeatBalance balance)
    {
        var celsius = balance.Chamber - Temperature.KelvinAtZero;
        return new(
            index,
            Following.NotRun,
            StartHours: hours,
            RampEndHours: null,
            EndHours: hours,
            PlannedHours: null,
            StartCelsius: celsius,
            EndCelsius: celsius,
            LargestLagKelvin: 0,
            FollowsToCelsius: null,
            MeanRateCelsiusPerHour: null,
            LastRateCelsiusPerHour: null,
            LargestKilowatts: 0,
            LoadLagKelvin: 0);
    }

    private KilnEnergy Energy(KilnSetup setup, HeatParts peak, HeatParts end)
    {
        var drying = setup.KilogramsWater * Defaults["water-heat"] / Hour;
        var total = KilowattHours(end.Given);
        return new(
            TotalKilowattHours: total,
            ToPeakKilowattHours: KilowattHours(peak.Given),
            AfterPeakKilowattHours: total - KilowattHours(peak.Given),
            WareKilowattHours: KilowattHours(peak.Ware),
            FurnitureKilowattHours: KilowattHours(peak.Furniture),
            WaterKilowattHours: KilowattHours(peak.Water),
            WallsKilowattHours: KilowattHours(peak.Walls),
            ChamberKilowattHours: KilowattHours(peak.Chamber),
            SurfaceKilowattHours: KilowattHours(peak.Surface),
            LeakKilowattHours: KilowattHours(peak.Leak),
            UnaccountedKilowattHours: KilowattHours(end.Missing),
            KilowattHoursPerKilogram: FiringEnergy.Specific(total, drying, setup.KilogramsWare - setup.KilogramsWater));
    }

    private KilnFuel Fuel(double bound, double? factor) =>
        new(bound, factor, bound * factor, bound * Defaults["fuel-factor-low"], bound * Defaults["fuel-factor-high"]);

    private static double KilowattHours(double joules) => joules / Hour / 1000;
}
