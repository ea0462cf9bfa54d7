using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>What a maker allows is held against the programme that is handed out, whatever heats the kiln.</summary>
public class FitLimitTests
{
    [Theory]
    [InlineData("mid-range-glaze", "6", "small")]
    [InlineData("mid-range-glaze-crystal-cooling", "6", "large")]
    [InlineData("high-fire-oxidation", "10", "small")]
    [InlineData("high-fire-oxidation", "10", "large")]
    [InlineData("bisque-thick", "06", "small")]
    [InlineData("gas-reduction", "10", "gas")]
    public void The_final_peak_is_held_against_the_limit(string id, string cone, string kiln)
    {
        var peak = (int)Fits.Fit(id, cone, Fits.Kilns[kiln]).Answer.PeakCelsius;
        Assert.Equal(peak, Fits.Fit(id, cone, Fits.Kilns[kiln] with { MaxTemperature = peak }).Answer.PeakCelsius);
        for (var below = 1; below <= 4; below++)
        {
            var finding = Refused(id, cone, Fits.Kilns[kiln] with { MaxTemperature = peak - below });
            Assert.Equal(("kiln-below-cone", "/kiln/maxTemperature"), (finding.Code, finding.Field));
        }
    }

    [Fact]
    public void A_wood_kiln_keeps_its_limit()
    {
        // Cone 11 is far above 1000 °C however slow the firing.
        var finding = Refused("wood-tunnel", "11", new("tunnel", "wood", MaxTemperature: 1000));
        Assert.Equal(("kiln-below-cone", "/kiln/maxTemperature"), (finding.Code, finding.Field));
        Assert.Equal("kiln-number-out-of-range", Refused("wood-tunnel", "11", new("tunnel", "wood", MaxTemperature: 90)).Code);
    }

    // Raku ends at 980 °C, far above the end point of cone 022 (586 °C at 60 °C/h, orton-2016).
    [Fact]
    public void A_template_without_a_cone_is_held_against_the_hottest_cone()
    {
        var finding = Refused("raku-western", null, new("small", "wood", MaxCone: "022"));
        Assert.Equal(("kiln-below-cone", "/kiln/maxCone"), (finding.Code, finding.Field));
    }

    // By hand: (400/230)² − 1 = 202 %; 254.4 V is 6 % over 240 V.
    [Theory]
    [InlineData(230, 400, true)]
    [InlineData(208, 240, true)]
    [InlineData(240, 254.5, true)]
    [InlineData(240, 254.3, false)]
    [InlineData(230, 240, false)]
    public void More_than_six_per_cent_over_the_rated_voltage_is_refused(double installed, double wired, bool refused)
    {
        var kiln = Fits.Kilns["small"] with { VoltsInstalled = installed, VoltsAsWired = wired };
        if (!refused)
        {
            Assert.NotNull(Fits.Fit("bisque-thin-ware", "06", kiln).Answer.Kiln);
            return;
        }

        var finding = Refused("bisque-thin-ware", "06", kiln);
        Assert.Equal(("kiln-overvoltage", "/kiln/voltsAsWired"), (finding.Code, finding.Field));
        Assert.Contains("wiring overheats", finding.Message.ToString(), StringComparison.Ordinal);
    }

    // By hand: (208/240)² = 75 %.
    [Fact]
    public void Less_than_the_rated_voltage_is_explained()
    {
        var fit = Fits.Fit("bisque-careful", "06", Fits.Kilns["small"] with { VoltsInstalled = 240, VoltsAsWired = 208 }).Answer;
        Assert.Contains(fit.Warnings, w => w.ToString().Contains("75 % of the rated power", StringComparison.Ordinal));
    }

    private static Finding Refused(string id, string? cone, Kiln kiln) =>
        Assert.Single(Assert.Throws<RefusedException>(() => Fits.Fit(id, cone, kiln)).Findings);
}
