using ConeService.Firing.Cones;
using CsCheck;
using MathNet.Numerics;
using MathNet.Numerics.Integration;

namespace ConeService.Firing.Tests.Cones;

public class ArrheniusIntegralTests
{
    // Source: heat-work specification section 7, from an independent prototype. x is printed to 1e-8, which moves the
    // value by up to 1.5e-12.
    [Fact]
    public void Scaled_E2_at_the_specified_point() => Assert.Equal(0.0171597375182, ArrheniusIntegral.ScaledE2(56.30916532), 1.5e-12);

    // Source: MathNet.Numerics, SpecialFunctions.ExponentialIntegral(x, 2).
    [Fact]
    public void Scaled_E2_agrees_with_MathNet() => Gen.Double[14, 600].Sample(x =>
    {
        var expected = Math.Exp(x) * SpecialFunctions.ExponentialIntegral(x, 2);
        Assert.Equal(1, ArrheniusIntegral.ScaledE2(x) / expected, 12);
    });

    // Source: MathNet.Numerics' Gauss-Kronrod quadrature of exp(−E/RT), scaled by its value at the top. Where it starts the integrand
    // has fallen to e^-45 of that, so that nothing is left out and the rule needs few panels.
    [Fact]
    public void The_integral_agrees_with_quadrature() => Gen.Select(Gen.Double[800, 1750], Gen.Double[2.5e5, 2e6])
        .Sample((kelvin, energy) =>
    {
        var top = energy / (ArrheniusIntegral.GasConstant * kelvin);
        var integral = GaussKronrodRule.Integrate(
            t => Math.Exp(top - (energy / (ArrheniusIntegral.GasConstant * t))),
            kelvin / (1 + (45 / top)), kelvin, out _, out _, 1e-12, 30);
        Assert.Equal(Math.Log(integral) - top, ArrheniusIntegral.LogG(kelvin, energy), 9);
    });

    [Fact]
    public void The_energy_of_a_slope_gives_the_slope_back() => Gen.Select(Gen.Double[800, 1750], Gen.Double[2.5e5, 2e6])
        .Sample((kelvin, energy) =>
    {
        var found = ArrheniusIntegral.EnergyForSlope(kelvin, ArrheniusIntegral.Slope(kelvin, energy));
        Assert.Equal(1, found / energy, 10);
    });

    // Source: heat-work specification section 7: pure Arrhenius, E = 700 kJ/mol, anchored at 60 °C/h → 1222 °C.
    [Theory]
    [InlineData(15, 1187.2459)]
    [InlineData(150, 1245.8778)]
    [InlineData(300, 1264.4448)]
    public void Pure_Arrhenius_end_points(double rate, double celsius)
    {
        const double anchor = 1222 + 273.15;
        var wanted = ArrheniusIntegral.LogG(anchor, 700e3) + Math.Log(rate / 60);
        var kelvin = MathNet.Numerics.RootFinding.Brent.FindRoot(t => ArrheniusIntegral.LogG(t, 700e3) - wanted, 1300, 1700, 1e-10);
        Assert.Equal(celsius, kelvin - 273.15, 4);
    }

    // Source: the same: hold at 1222 °C to bend from nothing.
    [Fact]
    public void Pure_Arrhenius_hold() => Assert.Equal(25.6564, 60 / (60 * ArrheniusIntegral.Slope(1222 + 273.15, 700e3)), 4);
}
