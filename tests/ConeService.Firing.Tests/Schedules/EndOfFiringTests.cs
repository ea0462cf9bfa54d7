using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>Raku ends with the draw, practice of the trade (pitelka-2001); what burns fuel is ended by hand, step by step.</summary>
public class EndOfFiringTests
{
    [Theory]
    [InlineData(null)]
    [InlineData(25.0)]
    public void Raku_ends_with_the_draw(double? thickness)
    {
        foreach (var kiln in new Kiln?[] { null, new("bin", "raku", VolumeLitres: 100, Kilowatts: 30) })
        {
            var fit = Fits.Fit("raku-western", null, kiln, new(ThickestMillimetres: thickness)).Answer;
            Assert.Equal((null, null), (fit.Times.OpeningMinutes, fit.Kiln?.OpeningMinutes));
            Assert.Null(fit.Programme.CoolingRate);
            Assert.Equal(980, fit.Segments[^1].TargetCelsius);
            Assert.DoesNotContain(fit.Landmarks, l => l.Cooling);
            Assert.DoesNotContain(fit.Changes, c => c.Code == FitChangeCode.CoolingForThickness);
            Assert.Contains(fit.ShutDown, m => m.ToString().Contains("draw", StringComparison.Ordinal));
        }
    }

    [Theory]
    [InlineData("gas-reduction", "10", "gas", "main gas valve")]
    [InlineData("wood-tunnel", "11", "wood", "Stop stoking")]
    [InlineData("salt", "9", "vapour", "plume")]
    [InlineData("soda", "10", "vapour", "plume")]
    [InlineData("bisque-careful", "06", "gas", "main gas valve")]
    public void What_burns_fuel_ends_with_a_shut_down(string id, string cone, string heat, string step)
    {
        var steps = Fits.Fit(id, cone, new("kiln", heat, VolumeLitres: 300)).Answer.ShutDown.Select(m => m.ToString()).ToList();
        Assert.Contains(steps, s => s.Contains(step, StringComparison.Ordinal));
        Assert.Contains("local codes and licensed practice", steps[^1], StringComparison.Ordinal);
    }

    [Fact]
    public void A_controller_ends_an_electric_firing() =>
        Assert.Empty(Fits.Fit("bisque-careful", "06", Fits.Kilns["small"]).Answer.ShutDown);
}
