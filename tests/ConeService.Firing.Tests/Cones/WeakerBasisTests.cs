using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Cones;

/// <summary>An answer that two cones decide rests on the weaker of the two.</summary>
public class WeakerBasisTests
{
    // Source: the 1926 chart prints 930 °C for cone 09 at both rates, so it has no kinetics of its own; 010 (890 and 895 °C)
    // and 08 (945 and 950 °C) have. At 100 °C/h 910 °C lies between 010 and 09, and 940 °C between 09 and 08.
    [Theory]
    [InlineData(910, "010", "09")]
    [InlineData(940, "09", "08")]
    public void A_reading_between_an_own_and_a_borrowed_curve_is_borrowed(int celsius, string reached, string next)
    {
        var reading = new ReadingCalculator(Reference.Charts).Answer(new(celsius), Reference.Ask("100C/h", "nbs-1926"));
        Assert.Equal((reached, next, Basis.Borrowed), (reading.Reached, reading.Next, reading.Basis));
    }

    [Theory]
    [InlineData(910, "010", "09")]
    [InlineData(940, "09", "08")]
    public void So_is_a_firing_that_ends_there(int celsius, string reached, string next)
    {
        var answer = Follow(100, celsius, "nbs-1926").Answer;
        Assert.Equal((reached, next, Basis.Borrowed), (answer.Reached, answer.Next, answer.Basis));
        Assert.Equal(Basis.Interpolated, answer.Cones.Single(c => c.Cone is "010").Basis);
        Assert.Equal(Basis.Borrowed, answer.Cones.Single(c => c.Cone is "09").Basis);
    }

    // Source: the older chart prints 1222 °C for cone 6 at 150 °C/h only; at 60 °C/h the borrowed curve takes it to
    // 1222 − (1243 − 1222) = 1201 °C. There the margin is 0 and σ² = (a/√3)² + 2.3² + (6·ln 2.5)², with a = 1 + 0.003·101 K
    // of a new type S of class 1 (IEC 60584). The factor g, 1 for such a ramp, is read from a histogram to a hundredth.
    [Fact]
    public void A_borrowed_curve_is_less_sure_in_a_firing_too()
    {
        var answer = Follow(60, 1201, "older-150").Answer;
        Assert.Equal(6.01, answer.Cones.Single(c => c.Cone == "6").SigmaCelsiusDifference, 0.07);
    }

    private static HeatWorkResult Follow(double rate, double celsius, string chart) =>
        new HeatWorkCalculator(Reference.Charts).Answer(new HeatWorkRequest
        {
            Units = "C",
            Chart = chart,
            Segments = [new(rate, celsius)],
            Thermocouple = new("S", "iec-60584", SentText.Of("1"), 0),
            Uncertainty = new(0, 0, 0),
        });
}
