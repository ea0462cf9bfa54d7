using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;
using CsCheck;
using static ConeService.Firing.Tests.HeatWork.Firings;

namespace ConeService.Firing.Tests.HeatWork;

/// <summary>The fast ways against the exact integral: what they claim must hold.</summary>
public class ScaleTableTests
{
    private static readonly BendingCurve[] Curves = [.. Reference.Charts.Default.Cones.Select(c => c.Curve(new(60))!)];
    private static readonly ScaleTable Table = new(Curves);

    // The curves of every chart, through each of its printed values: borrowed ones lie between whole degrees.
    private static readonly (string Name, BendingCurve[] Curves, ScaleTable Table)[] Tables =
    [
        .. Reference.Charts.Charts.SelectMany(chart => chart.Rates.Select(rate =>
        {
            BendingCurve[] curves = [.. chart.Cones.Select(c => c.Curve(new(rate))).OfType<BendingCurve>()];
            return ($"{chart.Id} at {rate} °C/h", curves, new ScaleTable(curves));
        })),
    ];

    [Fact]
    public void The_table_follows_a_ramp_to_a_billionth() =>
        Gen.Select(Gen.Double[500, 1500], Gen.Double[15, 300], Gen.Int[1, 30]).Sample((peak, rate, pieces) =>
            Compare(Log(t => 20 + (t * (peak - 20)), (peak - 20) / rate, pieces)), iter: 20);

    [Fact]
    public void The_table_follows_a_hold_to_a_billionth() =>
        Gen.Select(Gen.Double[500, 1500], Gen.Double[0.01, 5]).Sample((peak, hours) => Compare(Log(_ => peak, hours, 2)), iter: 100);

    [Fact]
    public void The_table_follows_flicker_and_slow_drift_to_a_billionth() =>
        Gen.Select(Gen.Double[600, 1400], Gen.Double[0, 0.2]).Sample((peak, step) =>
            Compare(Log(t => peak + (step * Math.Sin(5000 * t)) + (0.01 * t), 3, 200)), iter: 5);

    // A margin is told of cones that are far from bending, too: it needs the progress, however small.
    [Fact]
    public void A_cold_firing_leaves_every_cone_the_little_progress_it_made()
    {
        var log = Log(t => 20 + (280 * t), 3, 700);
        var (progress, _) = Table.Follow(log);
        for (var i = 0; i < Curves.Length; i++)
        {
            var exact = HeatIntegral.Progress(Curves[i], log);
            if (exact > 1e-240) Assert.Equal(1, progress[i] / exact, 1e-7);
        }
    }

    // A cubic of K by whole degrees was wrong by 1.4e-4 for 05 at the first and by 9e-2 for the 022 of the small chart at the
    // second, whose borrowed knots lie between whole degrees.
    [Theory]
    [InlineData(1043.24)]
    [InlineData(623.10)]
    public void Steep_and_borrowed_curves_are_followed_as_well(double celsius) => Compare(Log(_ => celsius, 1, 2));

    // The whole scale, second by second for a day: every cone down at the same minute as by the exact integral.
    [Fact]
    public void A_day_of_samples_puts_every_cone_down_at_its_minute()
    {
        var log = Log(t => 20 + (1330 * Math.Sin(Math.PI * t)) + (0.4 * Math.Sin(9999 * t)), 24, 86_400);
        var (progress, down) = Table.Follow(log);
        for (var i = 0; i < Curves.Length; i += 9)
        {
            var exact = HeatIntegral.Progress(Curves[i], log, out var at);
            Assert.Equal(1, progress[i] / exact, 1e-9);
            Assert.Equal(at is null, down[i] is null);
            if (at is { } hours) Assert.Equal(hours * 60, down[i]!.Value * 60, 1e-3);
        }
    }

    // Source: heat-work specification section 2: a 1 K histogram with the bin's mean temperature is good to 1e-4.
    [Fact]
    public void The_histogram_keeps_the_total_to_its_claim()
    {
        var log = Log(t => 20 + (1250 * Math.Sin(Math.PI * t)), 24, 86_400);
        var bins = new ResidenceHistogram(log).Bins().ToList();
        Assert.Equal(24, bins.Sum(b => b.Hours), 1e-6);
        foreach (var curve in Curves.Where((_, i) => i % 9 == 0))
            Assert.Equal(1, bins.Sum(b => b.Hours * curve.BendRate(b.Kelvin)) / HeatIntegral.Progress(curve, log), 1e-3);
        Assert.Equal(1, bins.Sum(b => b.Hours * Curve("6").BendRate(b.Kelvin)) / HeatIntegral.Progress(Curve("6"), log), 1e-4);
    }

    [Fact]
    public void A_steeper_curve_of_exponent_one_is_the_curve_itself()
    {
        var log = Ramp(60, 1240, 10).ToHistory();
        var progress = Table.FollowSteeper(new(log), 1);
        for (var i = 0; i < Curves.Length; i++) Assert.Equal(1, progress[i] / HeatIntegral.Progress(Curves[i], log), 2e-3);
    }

    // The curves of an old chart are so steep that K is lost in rounding at room temperature.
    [Fact]
    public void A_steeper_or_flatter_curve_does_a_finite_work_on_every_chart()
    {
        foreach (var chart in Reference.Charts.Charts.Where(c => c.DefaultRate is not null))
        {
            var curves = chart.Cones.Select(c => c.Curve(chart.DefaultRate!.Value)).OfType<BendingCurve>().ToList();
            foreach (var exponent in new[] { Math.Exp(-0.2), 1, Math.Exp(0.2) })
            {
                var progress = new ScaleTable(curves).FollowSteeper(new(History((0, -25), (4, 1300), (9, 20))), exponent);
                Assert.All(progress, p => Assert.True(double.IsFinite(p) && p >= 0, $"{chart.Id}: {p}"));
            }
        }
    }

    private static void Compare(HeatHistory log)
    {
        foreach (var (name, curves, table) in Tables)
        {
            var (progress, _) = table.Follow(log);
            for (var i = 0; i < curves.Length; i++)
            {
                var exact = HeatIntegral.Progress(curves[i], log);
                // What is a billionth of the way moves no cone, and no firing goes a billion times past one.
                if (exact is > 1e-9 and < 1e9)
                    Assert.True(Math.Abs((progress[i] / exact) - 1) < 1e-9, $"{name}, curve {i}: {progress[i]} for {exact}");
            }
        }
    }

    private static HeatHistory Log(Func<double, double> celsius, double hours, int pieces) =>
        new(Enumerable.Range(0, pieces + 1).Select(i => new HeatPoint(hours * i / pieces, celsius((double)i / pieces) + Zero)).ToArray());
}
