using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Kilns;

/// <summary>
/// A kiln is known again by its logs: the model is the truth, and the calibration sees of it logs, loads and meter readings.
/// </summary>
public class CalibrationTests
{
    private const double Zero = Temperature.KelvinAtZero;

    // Fast enough that the kiln lags near the top: only there power shows.
    private static readonly ProgrammeSegment[] Programme = [new(150, 600), new(200, 1220, 15)];

    private static readonly FitLoad[] Loads =
    [
        new(KilogramsWare: 25, KilogramsFurniture: 20, Dryness: "bone-dry"),
        new(KilogramsWare: 40, KilogramsFurniture: 20, Dryness: "bone-dry"),
        new(KilogramsWare: 32, KilogramsFurniture: 25, Dryness: "bone-dry"),
    ];

    // Numbers of the true kilns, of which the caller knows size and rating alone: by size a wall of 76 mm and a leak of 1. A small leak
    // is a small part of what a kiln loses, so that noise hides a tenth of it: there the standard error must say so.
    [Theory]
    [InlineData(150, 90, 1.6, 8.0, 9.0, true)]
    [InlineData(74, 64, 0.6, 5.2, 5.7, false)]
    [InlineData(198, 114, 2.5, 10.0, 11.0, true)]
    public void Wall_leak_and_power_are_found_within_a_tenth_under_two_per_cent_of_noise(
        double litres, double wall, double leak, double kilowatts, double rated, bool leaky)
    {
        var truth = new Kiln(
            "true", "electric", VolumeLitres: litres, Wall: new("insulating-firebrick", wall), Kilowatts: kilowatts, LeakFactor: leak);
        var told = Calibrate(
            new("true", "electric", VolumeLitres: litres, Kilowatts: rated),
            [.. Enumerable.Range(0, 6).Select(i => Fire(truth, Scaled(Loads[i % 3], litres / 150), seed: i + 1))]);
        Assert.InRange(told.WallThicknessMillimetres.Value!.Value, 0.9 * wall, 1.1 * wall);
        Assert.InRange(told.Kilowatts.Value!.Value, 0.9 * kilowatts, 1.1 * kilowatts);
        var most = leaky ? 0.1 * leak : 2 * told.LeakFactor.StandardError!.Value;
        Assert.InRange(told.LeakFactor.Value!.Value, leak - most, leak + most);
        Assert.InRange(told.LeakFactor.StandardError!.Value, 0.01 * leak, 0.3 * leak);
        Assert.Equal(
            told.WallThicknessMillimetres.Value,
            double.Parse(told.Kiln.Wall!.ThicknessMillimetres.Text!, System.Globalization.CultureInfo.InvariantCulture));
    }

    // The truth itself, by size and rating as wrong as above, from one log without noise.
    [Fact]
    public void Without_noise_one_firing_tells_all()
    {
        var truth = new Kiln(
            "true", "electric", VolumeLitres: 150, Wall: new("insulating-firebrick", 90), Kilowatts: 8, LeakFactor: 1.6);
        var told = Calibrate(new("true", "electric", VolumeLitres: 150, Kilowatts: 9), [Fire(truth, Loads[1], seed: 0)]);
        Assert.InRange(told.WallThicknessMillimetres.Value!.Value, 87, 93);
        Assert.InRange(told.LeakFactor.Value!.Value, 1.5, 1.7);
        Assert.InRange(told.Kilowatts.Value!.Value, 7.9, 8.1);
    }

    // Without the programme the fall alone speaks, and the meter with it.
    [Fact]
    public void Without_its_programme_a_firing_tells_what_the_kiln_loses()
    {
        var truth = new Kiln("true", "electric", VolumeLitres: 150, Wall: new("insulating-firebrick", 90), Kilowatts: 8, LeakFactor: 1.6);
        var told = Calibrate(
            new("true", "electric", VolumeLitres: 150, Kilowatts: 9),
            [.. Loads.Select(l => Fire(truth, l, seed: 0) with { Segments = null })]);
        Assert.InRange(told.WallThicknessMillimetres.Value!.Value, 80, 100);
        Assert.InRange(told.LeakFactor.Value!.Value, 1.3, 1.9);
        Assert.Contains("no programme", told.Kilowatts.WhyNot!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void What_was_not_seen_is_null_and_says_why()
    {
        var truth = new Kiln(default, "electric", VolumeLitres: 150, Kilowatts: 9);
        var fired = Fire(truth, Loads[0], seed: 3);
        var heating = fired with { Log = [.. fired.Log!.TakeWhile(s => s!.Minutes < 400)], MeterKilowattHours = null, Segments = null };
        var told = Calibrate(truth, [heating]);
        KilnEstimate[] all = [told.WallThicknessMillimetres, told.LeakFactor, told.Kilowatts];
        Assert.All(all, e => Assert.Null(e.Value));
        Assert.All(all, e => Assert.NotNull(e.WhyNot));
        Assert.Equal(truth with { Id = default }, told.Kiln with { Id = default });
        // A strong kiln that follows its programme shows what it loses, and not how much power it has.
        var easy = Fire(truth with { Kilowatts = 20 }, Loads[0], seed: 4);
        told = Calibrate(truth with { Kilowatts = 20 }, [easy]);
        Assert.Null(told.Kilowatts.Value);
        Assert.Contains("without needing all its power", told.Kilowatts.WhyNot!.ToString(), StringComparison.Ordinal);
    }

    // Each firing with elements two hundredths weaker than before.
    [Fact]
    public void Fading_elements_are_found_in_six_firings()
    {
        var firings = Enumerable.Range(0, 6).Select(i => Fire(
            new(default, "electric", VolumeLitres: 150, Kilowatts: 8.5 * Math.Pow(0.98, i)), Loads[i % 3], seed: 20 + i)).ToArray();
        var told = Calibrate(new(default, "electric", VolumeLitres: 150, Kilowatts: 8.5), firings);
        Assert.True(told.Trend.Power!.Creeps);
        Assert.InRange(told.Trend.Power.PercentPerFiring, -3, -1);
        Assert.True(told.Trend.Duration!.PercentPerFiring > 0);
        Assert.Contains("elements age", string.Join(' ', told.Verdict), StringComparison.Ordinal);
    }

    [Fact]
    public void A_kiln_that_stays_as_it_is_shows_no_trend()
    {
        var truth = new Kiln(default, "electric", VolumeLitres: 150, Kilowatts: 8.5);
        var told = Calibrate(truth, [.. Enumerable.Range(0, 6).Select(i => Fire(truth, Loads[i % 3], seed: 40 + i))]);
        Assert.False(told.Trend.Power!.Creeps);
        Assert.False(told.Trend.Energy!.Creeps);
    }

    // The meter reads 3 °C less each firing; the cones see the truth, hands read to half an hour.
    [Fact]
    public void A_drift_of_three_degrees_a_firing_is_found_after_six()
    {
        var truth = new Kiln(default, "electric", VolumeLitres: 150, Kilowatts: 12);
        var firings = new List<CalibrationFiring>();
        for (var i = 0; i < 6; i++)
        {
            var fired = Fire(truth, Loads[i % 3], seed: 0);
            var reference = new HeatWorkReference(new HeatWorkCalculator(Reference.Charts));
            var seen = reference.Follow(new() { Units = "C", Log = fired.Log }).Answer;
            var cones = seen.Cones.Where(c => c.Cone is "3" or "4" or "5" or "6" or "7" or "8").Select(c => c.BendDegrees switch
            {
                >= 90 => new WitnessCone(c.Cone, "down"),
                < 15 => new WitnessCone(c.Cone, "standing"),
                var lean => new WitnessCone(c.Cone, Clock: Math.Round(lean / 15 * 2) / 2),
            });
            firings.Add(fired with
            {
                Log = [.. fired.Log!.Select(s => s! with { Temperature = s.Temperature - (3 * i) })],
                Observations = [.. cones],
            });
        }

        var told = Calibrate(truth, firings);
        Assert.True(told.Trend.Offset!.Drifts);
        Assert.InRange(told.Trend.Offset.ChangeCelsiusDifference, 2, 4);
    }

    // What no model explains is told as such, in finite numbers: a wall that no cooling like this has, a log that breaks off for days.
    [Theory]
    [InlineData(10, 0)]
    [InlineData(500, 0)]
    [InlineData(76, 120_000)]
    public void What_fits_no_kiln_is_still_answered(double wall, double late)
    {
        List<LogSample> log = [new(0, 20), new(420, 1000), new(480, 870), new(600, 680), new(840, 440), new(1200, 260)];
        if (late > 0) log[^1] = log[^1] with { Minutes = late };
        var told = Calibrate(
            new(default, "electric", VolumeLitres: 150, Wall: new(default, wall), Atmospheres: ["oxidation"]), [new(Log: log)]);
        KilnEstimate[] all = [told.WallThicknessMillimetres, told.LeakFactor, told.Kilowatts];
        Assert.All(all, e => Assert.True(e.WhyNot is null
            ? double.IsFinite(e.Value!.Value) && double.IsFinite(e.StandardError!.Value)
            : e is { Value: null, StandardError: null }));
    }

    // What is sent back is ready for a fit, so what a fit would refuse is refused here.
    [Fact]
    public void A_kiln_that_no_fit_takes_is_not_sent_back()
    {
        var refused = Assert.Throws<RefusedException>(() => Calibrate(
            new(default, "electric", VolumeLitres: 150, MaxCone: "~", ControllerSegments: 1), [new(Log: [new(0, 20), new(60, 100)])]));
        Assert.Equal(["/kiln/maxCone", "/kiln/controllerSegments"], refused.Findings.Select(f => f.Field));
    }

    [Fact]
    public void It_ends_when_nobody_waits()
    {
        using var gone = new CancellationTokenSource();
        gone.Cancel();
        var truth = new Kiln(default, "electric", VolumeLitres: 150, Kilowatts: 9);
        Assert.Throws<OperationCanceledException>(() => FiringReference.Open(Reference.Dataset).Kilns.Calibrate(
            new("C", truth, [Fire(truth, Loads[0], seed: 0)]), gone.Token));
    }

    [Fact]
    public void A_gas_kiln_is_refused()
    {
        var truth = new Kiln(default, "electric", VolumeLitres: 150, Kilowatts: 9);
        var finding = Assert.Single(Assert.Throws<RefusedException>(
            () => Calibrate(truth with { Heat = "gas" }, [Fire(truth, Loads[0], seed: 1)])).Findings);
        Assert.Equal(("kiln-parameter-not-applicable", "/kiln/heat"), (finding.Code, finding.Field));
    }

    private static CalibrateAnswer Calibrate(Kiln kiln, IReadOnlyList<CalibrationFiring> firings) =>
        FiringReference.Open(Reference.Dataset).Kilns.Calibrate(new("C", kiln, firings), TestContext.Current.CancellationToken);

    private static FitLoad Scaled(FitLoad load, double share) => load with
    {
        KilogramsWare = load.KilogramsWare * share,
        KilogramsFurniture = load.KilogramsFurniture * share,
    };

    // A log by five minutes of what the true kiln does. Seed 0: without noise; else 2 % of each reading by itself, and of the meter's. By
    // the minute no kiln makes such leaps, and no route believes them.
    private static CalibrationFiring Fire(Kiln truth, FitLoad load, int seed)
    {
        var random = new Random(seed);
        double Noise() => seed == 0
            ? 0
            : 0.02 * Math.Sqrt(-2 * Math.Log(1 - random.NextDouble())) * Math.Cos(2 * Math.PI * random.NextDouble());
        double Number(SentText sent) => double.Parse(sent.Text!, System.Globalization.CultureInfo.InvariantCulture);
        var model = new KilnModel(Reference.Dataset);
        var setup = model.Resolve(
            new(
                Data.KilnHeat.Electric, Number(truth.VolumeLitres), Kilowatts: Number(truth.Kilowatts),
                Wall: truth.Wall is { } wall ? new("insulating-firebrick", Number(wall.ThicknessMillimetres)) : null,
                LeakFactor: truth.LeakFactor.IsAbsent ? null : Number(truth.LeakFactor)),
            new(load.KilogramsWare, load.KilogramsFurniture, null, WareStage.Green, Dryness.BoneDry));
        var fired = model.Predict(
            setup, new([.. Programme.Select(s => new KilnSegment(s.Rate, s.Target!.Value, (s.HoldMinutes ?? 0) / 60))]));
        Assert.True(fired.Completed);
        var points = fired.Chamber.Points;
        var log = new List<LogSample>();
        for (int minute = 0, i = 1; minute / 60.0 < fired.Chamber.End.Hours; minute += 5)
        {
            while (i < points.Length - 1 && points[i].Hours < minute / 60.0) i++;
            var (a, b) = (points[i - 1], points[i]);
            var celsius = a.Kelvin + (((minute / 60.0) - a.Hours) / (b.Hours - a.Hours) * (b.Kelvin - a.Kelvin)) - Zero;
            log.Add(new(minute, Math.Round(celsius * (1 + Noise()), 1)));
        }

        return new(null, log, Programme, load, fired.Energy.TotalKilowattHours * (1 + Noise()));
    }
}
