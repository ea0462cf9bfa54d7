using ConeService.Contract.Answers;

namespace ConeService.Firing.Tests.Contract;

/// <summary>The contract: near matches are offered only within a third of the letters and never across opposites.</summary>
public class NearMatchesTests
{
    private static readonly string[] Kinds =
        ["bisque", "glaze", "single", "overglaze", "raku", "salt", "soda", "wood", "pit", "saggar"];

    // Letters wrong of letters sent: foo to wood are 2 of 3, glaz to glaze 1 of 4, bsique swaps two neighbours, fog to pit 3 of 3.
    [Theory]
    [InlineData("foo", null)]
    [InlineData("fog", null)]
    [InlineData("", null)]
    [InlineData("   ", null)]
    [InlineData("electric", null)]
    [InlineData("glaz", "glaze")]
    [InlineData("bsique", "bisque")]
    [InlineData("Sagger", "saggar")]
    [InlineData("sod", "soda")]
    [InlineData("rku", "raku")]
    [InlineData("rx", null)]
    public void A_word_is_offered_within_a_third_of_the_letters(string sent, string? near) =>
        Assert.Equal(near, NearMatches.Find(sent, Kinds) is [var first, ..] ? first : null);

    // Each pair lies within a third of the letters, and means the contrary.
    [Theory]
    [InlineData("cadmium-fired", "cadmium-raw")]
    [InlineData("raw-umber-burnt", "fired-umber-burnt")]
    [InlineData("underglaze", "overglaze")]
    [InlineData("undergalze", "overglaze")]
    [InlineData("unglazed", "glazed")]
    [InlineData("glazed", "unglazed")]
    [InlineData("unglased", "glazed")]
    [InlineData("insoluble", "soluble")]
    [InlineData("unfired", "fired")]
    [InlineData("stoneware-light", "stoneware-dark")]
    [InlineData("mid-range-gloss", "mid-range-matt")]
    [InlineData("kiln-min", "kiln-max")]
    public void The_contrary_is_never_offered(string sent, string contrary)
    {
        Assert.Empty(NearMatches.Find(sent, [contrary]));
        Assert.Null(NearMatches.Probably(sent, [contrary]));
    }

    [Theory]
    [InlineData("raw-cadmum", "raw-cadmium")]
    [InlineData("overglase", "overglaze")]
    [InlineData("ungalzed", "unglazed")]
    [InlineData("thicknessMillimetres", "thickestMillimetres")]
    public void A_misspelling_is_no_contrary(string sent, string near) => Assert.Equal([near], NearMatches.Find(sent, [near]));

    // Words left out: all that was sent is there, spelt well enough.
    [Theory]
    [InlineData("self-suporting", "witness-self-supporting")]
    [InlineData("earthenware", "red-earthenware")]
    public void A_name_that_holds_every_word_sent_is_offered(string sent, string near) =>
        Assert.Equal([near], NearMatches.Find(sent, [near]));

    [Fact]
    public void The_nearest_comes_first_and_no_more_than_asked_for()
    {
        Assert.Equal(["witness-large"], NearMatches.Find("wittness-large", ["witness-small", "witness-large"], 1));
        Assert.Equal(["cone", "cones"], NearMatches.Find("conee", ["cones", "bone-dry", "cone"], 2));
        Assert.Equal("Probably cone.", NearMatches.Probably("cnoe", ["rate", "cone"])?.ToString());
    }
}
