using System.Globalization;
using ConeService.Contract.Cones;
using ConeService.Firing.Cones;
using ConeService.Firing.Tests.Support;
using CsCheck;

namespace ConeService.Firing.Tests.Cones;

public class ConeCurveTests
{
    private static readonly IReadOnlyList<ChartCone> WithCurves =
        [.. Reference.Charts.Charts.SelectMany(c => c.Cones).Where(c => c.HasRates && c.Curve(new(60)) is not null)];

    private static readonly Gen<BendingCurve> AnyCurve = Gen.Int[0, WithCurves.Count - 1].Select(i => WithCurves[i].Curve(new(60))!);

    public static TheoryData<string, string, string, string> Computed =>
        [
            .. CsvFile.Read("Vectors/computed-end-points.csv")
                .Select(r => (r["cone"], r["rate_celsius_per_hour"], r["celsius"], r["tolerance_celsius"])),
        ];

    [Theory]
    [MemberData(nameof(Computed))]
    public void An_end_point_between_and_beyond_the_printed_rates(string cone, string rate, string celsius, string tolerance)
    {
        var answer = new EndPointCalculator(Reference.Charts).Answer(Cone.Parse(cone), Reference.Ask(rate + "C/h"));
        Assert.Equal(Number(celsius), (double)answer.Celsius, Number(tolerance));
    }

    // Source: heat-work specification section 7: cone 6, slope at 1222 °C and hold there to bend from nothing.
    [Fact]
    public void Slope_and_hold_of_cone_6_at_its_end_point()
    {
        var curve = Reference.Charts.Default.Find(Cone.Parse("6"))!.Curve(new(60))!;
        Assert.Equal(0.0405996, curve.Slope(1222 + 273.15), 7);
        Assert.Equal(24.6308, 60 / curve.BendRate(1222 + 273.15), 3);
    }

    // Identity of section 2: K(T_end(b)) = b to 1e-12 relative in ln.
    [Fact]
    public void The_end_point_inverts_the_curve() => Gen.Select(AnyCurve, Gen.Double[5, 600]).Sample((curve, rate) =>
        Assert.Equal(Math.Log(rate), curve.LogK(curve.EndPoint(rate)), 1e-12 * Math.Max(1, Math.Abs(Math.Log(rate)))));

    [Fact]
    public void The_curve_rises_strictly() => Gen.Select(AnyCurve, Gen.Double[700, 1900], Gen.Double[0.001, 100])
        .Sample((curve, kelvin, step) => Assert.True(curve.LogK(kelvin + step) > curve.LogK(kelvin)));

    // The slope is the derivative of the curve on both sides of every knot: checked against a central difference.
    [Fact]
    public void The_slope_is_the_derivative() => Gen.Select(AnyCurve, Gen.Double[5, 600]).Sample((curve, rate) =>
    {
        var kelvin = curve.EndPoint(rate);
        var difference = (curve.LogK(kelvin + 1e-3) - curve.LogK(kelvin - 1e-3)) / 2e-3;
        Assert.Equal(1, difference / curve.Slope(kelvin), 2e-3);
    });

    [Fact]
    public void A_curve_needs_two_rising_points()
    {
        Assert.Throws<ArgumentException>(() => new ConeCurve([(60, 1400)], 7e5));
        Assert.Throws<ArgumentException>(() => new ConeCurve([(60, 1400), (150, 1400)], 7e5));
    }

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);
}
