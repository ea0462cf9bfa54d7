using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Firing.Cones;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Cones;

public class ConeScaleTests
{
    private static readonly ConeScale Scale = Reference.Charts.Scale;

    // Source: Binns 1922, chapter on fire: the scale ascends from 022 through 01 to 1 and up; no cone 0 exists.
    [Fact]
    public void The_scale_ascends_from_022_through_01_to_1()
    {
        string[] ascending =
        [
            "022", "021", "020", "010", "09", "07", "06", "05.5", "05", "04", "03.5", "03", "02", "01",
            "1", "2", "5", "5.5", "6", "7", "10", "14", "15", "20", "23", "31", "31.5", "32", "42",
        ];
        Assert.Equal(ascending, ascending.Select(Cone.Parse).Order().Select(c => c.ToString()));
        Assert.Equal("1", Scale.Next(Cone.Parse("01"))?.ToString());
        Assert.Equal("01", Scale.Previous(Cone.Parse("1"))?.ToString());
    }

    // Source: Binns 1922: 04 is hotter than 05 and 06 (check value chk057).
    [Fact]
    public void Cone_04_is_hotter_than_05_and_05_than_06()
    {
        Assert.True(Cone.Parse("04") > Cone.Parse("05"));
        Assert.True(Cone.Parse("05") > Cone.Parse("06"));
    }

    [Theory]
    [InlineData("022", "14", 35)] // 022 … 01 are 22 cones, 1 … 14 are 14: 36 cones, 35 steps
    [InlineData("06", "6", 11)]
    [InlineData("6", "06", -11)]
    [InlineData("01", "1", 1)]
    [InlineData("06", "05.5", 0)] // a half cone counts as the whole cone below it
    [InlineData("5.5", "6", 1)]
    [InlineData("04", "10", 13)]
    public void Whole_cone_steps_count_without_the_half_cones(string from, string to, int steps) =>
        Assert.Equal(steps, Scale.WholeSteps(Cone.Parse(from), Cone.Parse(to)));

    [Fact]
    public void There_are_no_whole_cone_steps_outside_022_to_14() =>
        Assert.Null(Scale.WholeSteps(Cone.Parse("6"), Cone.Parse("15")));

    [Theory]
    [InlineData("022", null, "021")]
    [InlineData("06", "07", "05.5")]
    [InlineData("5", "4", "5.5")]
    [InlineData("20", "19", "23")]
    [InlineData("42", "41", null)]
    [InlineData("01a", "02a", "1a")]
    [InlineData("6a", "5a", null)]
    public void A_cone_has_its_neighbours(string cone, string? previous, string? next)
    {
        Assert.Equal(previous, Scale.Previous(Cone.Parse(cone))?.ToString());
        Assert.Equal(next, Scale.Next(Cone.Parse(cone))?.ToString());
    }

    [Fact]
    public void The_mix_up_of_06_is_6_and_back_and_they_are_more_than_200_degrees_apart()
    {
        var describer = new ConeDescriber(Reference.Charts);
        var six = describer.Describe(Cone.Parse("6")).MixUp!;
        var zeroSix = describer.Describe(Cone.Parse("06")).MixUp!;
        // 998 − 1222, printed at 60 °C/h
        Assert.Equal(("06", -224m, "witness-self-supporting"), (six.Cone, six.CelsiusDifference, six.Chart));
        Assert.Equal(("6", 224m), (zeroSix.Cone, zeroSix.CelsiusDifference));
        Assert.Null(describer.Describe(Cone.Parse("42")).MixUp);
    }

    [Theory]
    [InlineData("99", "022 to 42")]
    [InlineData("43", "022 to 42")]
    [InlineData("030", "022 to 42")]
    [InlineData("222", "022 to 42")]
    [InlineData("99.3", "022 to 42")]
    [InlineData("99.0", "022 to 42")]
    [InlineData("-44", "022 to 42")]
    [InlineData("0044", "022 to 42")]
    [InlineData("21", "20, 23")]
    [InlineData("6.5", "6, 7")]
    [InlineData("-6", "06, 6")]
    public void What_is_allowed_are_the_cones_beside_it_and_beyond_the_ends_the_scale(string sent, string allowed)
    {
        var finding = Assert.Throws<RefusedException>(() => FiringReference.Open(Reference.Dataset).Cones.Read(sent)).Findings[0];
        Assert.Equal(allowed, string.Join(", ", finding.Allowed));
    }
}
