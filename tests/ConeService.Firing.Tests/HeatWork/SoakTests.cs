using ConeService.Firing.HeatWork;
using static ConeService.Firing.Tests.HeatWork.Firings;

namespace ConeService.Firing.Tests.HeatWork;

/// <summary>Heat-work specification, section 5.</summary>
public class SoakTests
{
    [Theory]
    [InlineData(25, 58, 0.5)]
    [InlineData(50, 5.3 * 60, 3)]
    public void The_closed_form_gives_the_rule_of_the_trade(double missing, double minutes, double tolerance) =>
        Assert.Equal(minutes, 60 * Soak.Hours(0.06, 60, missing), tolerance);

    [Theory]
    [InlineData("6", "7", 26, 0.5)]
    [InlineData("06", "05", 6.3 * 60, 3)]
    public void Real_neighbours_differ_widely(string reached, string next, double minutes, double tolerance) =>
        Assert.Equal(minutes, 60 * Soak.ToBend(Curve(next), Curve(reached).EndPoint(60), 60), tolerance);

    // A curve of one slope for which both ways must agree.
    [Fact]
    public void A_solved_hold_bends_the_cone()
    {
        var hold = ProgrammeSolver.Hold(Curve("7"), Ramp(60, 1222), 0).Value!.Value;
        Assert.Equal(hold, Soak.ToBend(Curve("7"), 1222 + Zero, 60), 1e-9);
        Assert.Equal(1, Ramp(60, 1222, hold * 60).Progress(Curve("7")), 1e-12);
    }
}
