using ConeService.Firing.Kilns;

namespace ConeService.Firing.Tests.Kilns;

public class ThicknessLimitTests
{
    // Source: heat-work specification section 6, by hand: 60/3600 K/s · (0.0125 m)² / (2·3e-7 m²/s) = 4.3403 K; and 100 mm at 60 °C/h
    // 69.444 K.
    [Theory]
    [InlineData(60, 25, 4.3403)]
    [InlineData(60, 100, 69.4444)]
    public void The_middle_lags_by_the_square_of_the_thickness(double rate, double millimetres, double kelvin) =>
        Assert.Equal(kelvin, ThicknessLimit.Difference(rate, millimetres), 4);

    [Fact]
    public void The_rate_gives_the_difference_back() => Assert.Equal(10, ThicknessLimit.Difference(ThicknessLimit.Rate(10, 40), 40), 12);

    [Fact]
    public void The_diffusivity_is_the_one_of_the_table() =>
        Assert.Equal(ThicknessLimit.GreenClayDiffusivity, KilnCases.Model.Defaults["green-clay-diffusivity"]);
}
