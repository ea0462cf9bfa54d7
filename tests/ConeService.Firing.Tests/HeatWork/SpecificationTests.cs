using System.Globalization;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;
using static ConeService.Firing.Tests.HeatWork.Firings;

namespace ConeService.Firing.Tests.HeatWork;

/// <summary>Every number of the heat-work specification, section 7, within its printed precision (tests/Vectors/heat-work.csv).</summary>
public class SpecificationTests
{
    private static readonly Dictionary<string, (double Expected, double Tolerance)> Vectors = CsvFile.Read("Vectors/heat-work.csv")
        .ToDictionary(
            r => r["id"],
            r => (double.Parse(r["expected"], CultureInfo.InvariantCulture), double.Parse(r["tolerance"], CultureInfo.InvariantCulture)));

    [Fact]
    public void A_hold_at_the_end_point_bends_cone_6_from_nothing()
    {
        Check("hold-at-end-point", 60 / Curve("6").BendRate(1222 + Zero));
        Check("slope-at-end-point", Curve("6").Slope(1222 + Zero));
    }

    [Theory]
    [InlineData(1200)]
    [InlineData(1210)]
    [InlineData(1230)]
    public void The_last_rate_follows_from_the_peak(int peak) =>
        Check($"last-rate-{peak}", ProgrammeSolver.Rate(Curve("6"), Ramp(60, peak), 0).Value!.Value);

    [Fact]
    public void A_short_hold_at_the_end_point_goes_half_way_to_the_next_cone()
    {
        var work = Measure(Ramp(60, 1222, 10));
        Assert.Equal(("6", "7"), Names(work));
        Check("ramp-and-hold", work.Reached!.Progress);
        Check("ramp-and-hold-fraction", work.Fraction!.Value);
    }

    [Fact]
    public void A_fast_ramp_reaches_less()
    {
        var work = Measure(Ramp(150, 1222));
        Assert.Equal(("5", "5.5"), Names(work));
        Check("fast-ramp-fraction", work.Fraction!.Value);
    }

    [Fact]
    public void Cooling_counts()
    {
        var work = Measure(Ramp(60, 1222, 0, Down(250)));
        Check("slow-cooling", work.Reached!.Progress);
        Check("slow-cooling-margin", work.Reached!.MarginKelvin);
    }

    [Theory]
    [InlineData(10)]
    [InlineData(20)]
    [InlineData(40)]
    public void A_lower_peak_needs_a_hold(int drop) =>
        Check($"drop-{drop}", 60 * ProgrammeSolver.Hold(Curve("6"), Ramp(60, 1222 - drop), 0).Value!.Value);

    private static ScaleWork Measure(HeatProgramme programme) =>
        new ConeCurves(Reference.Charts.Default, 60).Measure(programme.ToHistory());

    private static (string, string) Names(ScaleWork work) => (work.Reached!.Cone.Cone.ToString(), work.Next!.Cone.Cone.ToString());

    private static void Check(string id, double actual)
    {
        var (expected, tolerance) = Vectors[id];
        Assert.True(Math.Abs(actual - expected) <= tolerance, $"{id}: {actual} is not {expected} ± {tolerance}");
    }
}
