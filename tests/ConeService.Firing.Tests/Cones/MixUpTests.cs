using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Firing.Cones;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Cones;

/// <summary>06 and 6 are two cones: what guards against taking one for the other, and where it speaks.</summary>
public class MixUpTests
{
    // Source: the self-supporting chart prints 998 °C for 06 and 1222 °C for 6 at 60 °C/h; 224 K are 403 °F.
    [Theory]
    [InlineData("6", "Cone 06 is 224 °C (403 °F) cooler than cone 6. Ware for cone 06 fired to cone 6 can slump, ")]
    [InlineData("06", "Cone 6 is 224 °C (403 °F) hotter than cone 06. Ware for cone 06 fired to cone 6 can slump, ")]
    public void The_twin_is_told_with_its_distance_and_what_happens_to_the_ware(string cone, string sentence)
    {
        var told = new ConeDescriber(Reference.Charts).Describe(Cone.Parse(cone)).MixUp!.Message.ToString();
        Assert.StartsWith(sentence, told, StringComparison.Ordinal);
        Assert.EndsWith("a glaze for cone 6 stays unmelted at cone 06.", told, StringComparison.Ordinal);
    }

    // Source: the self-supporting chart at 60 °C/h; 01 and 1 are neighbours, 02 and 2 three cones apart, 03 and 3 five.
    [Theory]
    [InlineData("01", "Cone 1 is 18 °C (32 °F) hotter than cone 01, a neighbour on the scale.", "slump")]
    [InlineData("1", "Cone 01 is 18 °C (32 °F) cooler than cone 1, a neighbour on the scale.", "slump")]
    [InlineData("02", "can warp, and its glaze can run", "slump")]
    [InlineData("3", "can warp, and its glaze can run", "slump")]
    [InlineData("04", "can slump, bubble or melt onto the shelf", "neighbour")]
    public void What_a_mix_up_does_is_told_by_its_distance(string cone, string told, string not)
    {
        var said = new ConeDescriber(Reference.Charts).Describe(Cone.Parse(cone)).MixUp!.Message.ToString();
        Assert.Contains(told, said, StringComparison.Ordinal);
        Assert.DoesNotContain(not, said, StringComparison.Ordinal);
    }

    // No kiln of a pottery reaches cone 15 or 18: nobody fires 018 there by mistake.
    [Theory]
    [InlineData("018")]
    [InlineData("015")]
    [InlineData("18")]
    public void A_twin_beyond_every_pottery_kiln_is_not_told(string cone) =>
        Assert.Null(new ConeDescriber(Reference.Charts).Describe(Cone.Parse(cone)).MixUp);

    // The refractories chart begins at 12 and has no cone below 1: 015 is not on it but 15 is; of 04 it prints neither.
    [Theory]
    [InlineData("015", "It prints cone 15, which is another cone.")]
    [InlineData("04", null)]
    public void A_cone_that_a_chart_lacks_names_its_twin_only_where_the_chart_prints_that(string cone, string? sentence)
    {
        var refused = Assert.Throws<RefusedException>(
            () => new EndPointCalculator(Reference.Charts).Answer(Cone.Parse(cone), Reference.Ask("150C/h", "pce")));
        var finding = Assert.Single(refused.Findings);
        Assert.Equal("cone-not-on-chart", finding.Code);
        Assert.Equal(sentence, finding.LikelyMistake?.ToString());
    }

    // 03.5 is made and 3.5 is not; of 6.5 there is neither.
    [Theory]
    [InlineData("3.5", "Cone 03.5 exists.")]
    [InlineData("6.5", null)]
    [InlineData("8a", "Only Seger numbers 015a to 6a carry the letter a.")]
    [InlineData("023", "The scale begins at 022.")]
    [InlineData("22", "Numbers 21, 22, 24 and 25 are not made. A leading zero left out?")]
    public void A_cone_that_does_not_exist_names_its_twin_only_where_that_exists(string text, string? sentence)
    {
        Assert.False(Reference.Charts.Scale.TryRead(text, "cone", out _, out var finding));
        Assert.Equal(sentence, finding!.LikelyMistake?.ToString());
    }
}
