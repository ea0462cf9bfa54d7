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
        // By layers of shelves, as its firings are counted: 2000 / 57 = 35.1. By volume 2000 · 532,544 / (0.75 · 86,062,500) = 16.5.
        Assert.Equal(36, Check(Cube, "glaze", "bisqued", 2000).TotalFirings);
        Assert.Equal(
            "The 2000 pieces do not go into the kiln at once: with shelves and gaps they need at least 36 loads.",
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
        // No shelves were told: three layers of 106 + 20 mm in 425 mm, over 400 by 400 mm. A disc of 86 mm is 5,809 mm², of 0.72 · 160,000
        // go 19 to a layer and 57 into a load. 50 of them: 50 / 19 · 126 / 425 = 78 %.
        var piece = Mugs("bisqued", 50);
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln("electric", "8", "oxidation", Cube), Loads.Firing("glaze", "04", "oxidation"), piece));
        var several = Loads.Check.Check(Loads.Load(
            Loads.Kiln("electric", "8", "oxidation", Cube), Loads.Firing("glaze", "04", "oxidation"), Mugs("bisqued", 2000)));

        Assert.Equal((78m, 1), (answer.SuggestedFirings[0].PercentFull, answer.SuggestedFirings[0].LoadsNeeded));
        // 2000 / 57 = 35.1.
        Assert.Equal((36, 36), (several.SuggestedFirings[0].LoadsNeeded, several.TotalFirings));
        Assert.InRange(several.SuggestedFirings[0].PercentFull!.Value, 3501, 3600);
        Assert.Contains(answer.Assumed, a => a is { Field: "/kiln/shelves", Value: "the floor" });
    }

    [Fact]
    public void What_is_accepted_and_does_not_go_in_at_once_takes_several_firings()
    {
        // By volume 96 mugs are accepted; by layers two loads of 57.
        var answer = Check(Cube, "glaze", "bisqued", 96);

        Assert.Equal(Verdict.Accept, answer.Verdict);
        Assert.Equal((2, true), (answer.TotalFirings, answer.KeepsBooked));
        Assert.Equal(1, Check(Cube, "glaze", "bisqued", 57).TotalFirings);
    }

    [Fact]
    public void Shelves_that_were_told_count()
    {
        // Two layers only, of 19 mugs each.
        var shelves = new KilnShelves(
            Layers: Loads.Number("2"), ThicknessMillimetres: Loads.Number("20"), WidthMillimetres: Loads.Number("400"));
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln("electric", "8", "oxidation", Cube) with { Shelves = shelves }, Loads.Firing("glaze", "6", "oxidation"),
                Mugs("bisqued", 57)));

        Assert.Equal(2, answer.TotalFirings);
        Assert.DoesNotContain(answer.Assumed, a => a.Field == "/kiln/shelves");
    }

    [Fact]
    public void Of_the_kilns_of_the_studio_the_one_that_takes_fewest_loads_is_named()
    {
        var large = new Interior(Loads.Number("900"), Loads.Number("800"), Loads.Number("800"));
        var load = Loads.Load(
            Loads.Kiln("electric", "8", "oxidation", Cube) with { Id = "small" }, Loads.Firing("glaze", "04", "oxidation"),
                Mugs("bisqued", 100));
        var answer = Loads.Check.Check(load with { Kilns = [Loads.Kiln("electric", "8", "oxidation", large) with { Id = "large" }] });
        var few = Loads.Check.Check(load with
        {
            Kilns = [Loads.Kiln("electric", "8", "oxidation", large) with { Id = "large" }],
            Pieces = [Mugs("bisqued", 50)],
        });

        Assert.Equal(("large", 1, true),
            (answer.SuggestedFirings[0].KilnId, answer.SuggestedFirings[0].LoadsNeeded, answer.SuggestedFirings[0].InThisKiln));
        Assert.Equal(("small", 1), (few.SuggestedFirings[0].KilnId, few.SuggestedFirings[0].LoadsNeeded));
    }

    [Fact]
    public void Without_the_size_of_each_piece_a_firing_is_taken_to_hold_all_and_that_is_said()
    {
        var bowl = Loads.Piece("bowl", "mid-range-stoneware-light", "mid-range-gloss", "bisqued", "decorative");
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln("electric", "8", "oxidation", Cube), Loads.Firing("glaze", "04", "oxidation"), Mugs("bisqued", 60), bowl));

        Assert.Equal((null, 1), (answer.SuggestedFirings[0].PercentFull, answer.SuggestedFirings[0].LoadsNeeded));
        Assert.Equal(1, answer.TotalFirings);
        Assert.Contains(answer.Assumed, a => a is { Field: "/pieces/1/size", Value: "goes into one load" });
    }

    [Fact]
    public void A_bisque_is_counted_by_volume_since_nobody_told_how_it_is_stacked()
    {
        // 256 go in by volume: 0.75 · 2 · 86,062,500 / 502,400.
        Assert.Equal(1, Check(Cube, "bisque", "bone-dry", 205).TotalFirings);
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
