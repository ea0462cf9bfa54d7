using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Tests.HeatWork;

public class BendTests
{
    // Source: heat-work specification section 3; 8° is the lean at which a cone is set, 90° is down.
    [Theory]
    [InlineData(0, 8.0)]
    [InlineData(0.5, 29.6)]
    [InlineData(0.75, 54.4)]
    [InlineData(0.9, 74.9)]
    [InlineData(1, 90.0)]
    [InlineData(7, 90.0)]
    public void A_cone_leans_late(double progress, double degrees) => Assert.Equal(degrees, ConeBend.Degrees(progress), 0.05);

    [Fact]
    public void A_cone_that_is_down_points_to_six() => Assert.Equal(6, ConeBend.Clock(ConeBend.Degrees(1)), 1e-12);

    [Theory]
    [InlineData(8, 0)]
    [InlineData(29.6, 0.5)]
    [InlineData(74.9, 0.9)]
    public void The_lean_tells_the_progress(double degrees, double progress) => Assert.Equal(progress, ConeBend.Progress(degrees), 0.001);
}
