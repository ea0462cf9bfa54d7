using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Firing.Tests.Loads;

/// <summary>
/// All pieces together in one kiln. Load rules load-within-room (60 and 75 % of the room), shelf-above-tallest-piece (6 mm) and
/// clearance-to-lid (25 mm); common practice. A mug of 80 by 80 by 100 mm stands on 0.785 · 80 · 80 = 5,024 mm² and takes 106 mm of
/// height: 532,544 mm³. A cube of 450 mm has 450 · 450 · 425 = 86,062,500 mm³, of which 60 % are 96 mugs and 75 % are 121.
/// </summary>
public sealed class LoadRoomTests
{
    private static readonly Interior Cube = new(Loads.Number("450"), Loads.Number("450"), Loads.Number("450"));

    [Theory]
    [InlineData(96, "glaze", "bisqued", Verdict.Accept)]
    [InlineData(97, "glaze", "bisqued", Verdict.Review)]
    [InlineData(121, "glaze", "bisqued", Verdict.Review)]
    [InlineData(122, "glaze", "bisqued", Verdict.Refuse)]
    [InlineData(2000, "glaze", "bisqued", Verdict.Refuse)]
    // Bisque stands in and on one another, and needs no shelf above each: 0.6 · 2 · 86,062,500 / 502,400 = 205.
    [InlineData(205, "bisque", "bone-dry", Verdict.Accept)]
    [InlineData(206, "bisque", "bone-dry", Verdict.Review)]
    [InlineData(2000, "bisque", "bone-dry", Verdict.Refuse)]
    public void More_than_a_kiln_holds_is_not_accepted(int mugs, string kind, string state, Verdict expected)
    {
        var answer = Check(Cube, kind, state, mugs);

        Assert.Equal(expected, answer.Verdict);
        Assert.All(answer.Load.Reasons, r => Assert.Equal((ReasonCode.LoadTooLarge, "load-within-room"), (r.Code, r.Rule)));
    }

    [Fact]
    public void The_sentence_says_how_many_loads_it_takes()
    {
        // 2000 · 532,544 / (0.75 · 86,062,500) = 16.5.
        Assert.Equal(
            "The 2000 pieces do not go into the kiln at once: with shelves and gaps they need at least 17 loads.",
            Assert.Single(Check(Cube, "glaze", "bisqued", 2000).Load.Reasons).Message.ToString());
    }

    [Fact]
    public void A_round_kiln_holds_less_and_without_sizes_nothing_is_said()
    {
        // 0.785 of the cube: 75 % are 95 mugs.
        var round = new Interior(Loads.Number("450"), DiameterMillimetres: Loads.Number("450"));

        Assert.Equal(Verdict.Review, Check(round, "glaze", "bisqued", 95).Verdict);
        Assert.Equal(Verdict.Refuse, Check(round, "glaze", "bisqued", 96).Verdict);
        Assert.Empty(Check(null, "glaze", "bisqued", 2000).Load.Reasons);
    }

    [Fact]
    public void A_suggestion_says_how_full_the_kiln_is()
    {
        // 60 · 532,544 / (0.75 · 86,062,500) = 49.5 %.
        var piece = Mugs("bisqued", 60);
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln("electric", "8", "oxidation", Cube), Loads.Firing("glaze", "04", "oxidation"), piece));
        var several = Loads.Check.Check(Loads.Load(
            Loads.Kiln("electric", "8", "oxidation", Cube), Loads.Firing("glaze", "04", "oxidation"), Mugs("bisqued", 2000)));

        Assert.Equal((50m, 1), (answer.SuggestedFirings[0].PercentFull, answer.SuggestedFirings[0].LoadsNeeded));
        Assert.Equal(17, several.SuggestedFirings[0].LoadsNeeded);
    }

    private static PieceRequest Mugs(string state, int count) =>
        Loads.Piece("mug", "mid-range-stoneware-light", state == "bisqued" ? "mid-range-gloss" : "", state, "decorative") with
        {
            Count = count,
            Size = new SizeRequest(Loads.Number("100"), Loads.Number("80")),
        };

    private static LoadAnswer Check(Interior? room, string kind, string state, int mugs) => Loads.Check.Check(Loads.Load(
        Loads.Kiln("electric", "8", "oxidation", room), Loads.Firing(kind, kind == "bisque" ? "06" : "6", "oxidation"), Mugs(state, mugs)));
}
