using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Firing.Tests.Loads;

/// <summary>
/// What pieces do to each other, by nothing-damp-with-overglaze, harder-glazes-in-hotter-zone, tin-white-away-from-chrome and
/// light-glazes-away-from-copper.
/// </summary>
public sealed class NeighbourTests
{
    private static readonly FiringRequest Reduction = Loads.Firing("glaze", "10", "reduction");

    [Fact]
    public void Glazes_best_one_cone_apart_go_together()
    {
        // celadon is best at 10, high-fire-matte at 9.
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Gas,
            Reduction,
            Loads.Piece("a", "high-fire-porcelain", "celadon"),
            Loads.Piece("b", "high-fire-porcelain", "high-fire-matte")));

        Assert.Equal(Verdict.Accept, answer.Verdict);
    }

    [Fact]
    public void Glazes_whose_ranges_hold_the_cone_go_together_however_far_apart_they_are_best()
    {
        // iron-red goes from 6 to 10 and is best at 6, four cones below the others: harder glazes go into the hotter places.
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Gas,
            Reduction,
            Loads.Piece("a", "high-fire-stoneware-light", "celadon"),
            Loads.Piece("b", "high-fire-stoneware-light", "tenmoku"),
            Loads.Piece("c", "high-fire-stoneware-light", "iron-red")));

        Assert.Equal((Verdict.Accept, 0), (answer.Verdict, answer.SuggestedFirings.Count));
        var reason = Assert.Single(answer.Load.Reasons);
        Assert.Equal(
            (ReasonCode.GlazeConesApart, ReasonSeverity.Note, "harder-glazes-in-hotter-zone"),
            (reason.Code, reason.Severity, reason.Rule));
        Assert.Contains("from 6 to 10; each holds cone 10", reason.Message.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mid-range-gloss", Verdict.Refuse)]
    [InlineData("iron-red", Verdict.Accept)]
    public void Many_of_one_kind_never_outvote_another(string glaze, Verdict expected)
    {
        // mid-range-gloss goes from 5 to 7: whatever stands beside it, and however many, it runs at 10.
        var many = Enumerable.Range(0, 30).Select(i => Loads.Piece($"m{i}", "high-fire-stoneware-light", glaze));
        var one = Loads.Piece("one", "high-fire-stoneware-light", "tenmoku");
        var answer = Loads.Check.Check(Loads.Load(Loads.Gas, Reduction, [.. many, one]));

        Assert.Equal(Verdict.Accept, answer.VerdictOf("one"));
        Assert.Equal(expected, answer.VerdictOf("m7"));
    }

    [Fact]
    public void Suggestions_never_offer_the_same_firing_twice_where_no_vapour_parts_it()
    {
        // All of these hold cone 6 in oxidation: mid-range 5 to 7, slip glaze 5 to 10, iron red 6 to 10.
        string[] glazes = ["mid-range-gloss", "slip-glaze", "iron-red", "mid-range-matte"];
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "06", "oxidation"),
            [.. glazes.Select((g, i) => Loads.Piece($"p{i}", "mid-range-stoneware-light", g))]));

        Assert.Equal("6", Assert.Single(answer.SuggestedFirings).Cone);
    }

    [Fact]
    public void Chrome_near_tin_white_is_for_review_and_split()
    {
        var chrome = Loads.Piece("green", "white-earthenware", "low-fire-boron-clear") with
        {
            Coats = [new(Loads.T("low-fire-boron-clear"), Contains: [Loads.T("chrome")])],
        };
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric,
            Loads.Firing("glaze", "04", "oxidation"),
            chrome,
            Loads.Piece("white", "red-earthenware", "majolica")));

        Assert.Equal(Verdict.Accept, answer.VerdictOf("green"));
        var reason = Assert.Single(answer.Pieces.Single(p => p.Id == "white").Reasons);
        Assert.Equal((ReasonCode.FumesOnNeighbours, "tin-white-away-from-chrome"), (reason.Code, reason.Rule));
        Assert.Contains("green", reason.Message.ToString(), StringComparison.Ordinal);
        Assert.Equal(["white"], Assert.Single(answer.SuggestedFirings).PieceIds);
        Assert.Contains(answer.Cautions, c => c.Id == "chromium-dust-and-fume");
    }

    [Theory]
    [InlineData("reduction", Verdict.Review)]
    [InlineData("oxidation", Verdict.Accept)]
    public void Copper_reaches_light_glazes_in_reduction_only(string atmosphere, Verdict expected)
    {
        var copper = Loads.Piece("red", "high-fire-porcelain") with { Coats = [new(Loads.T("tenmoku"), Contains: [Loads.T("copper")])] };
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Gas,
            Loads.Firing("glaze", "10", atmosphere),
            copper,
            Loads.Piece("pale", "high-fire-porcelain", "high-fire-clear")));

        Assert.Equal(expected, answer.VerdictOf("pale"));
    }

    [Fact]
    public void A_bone_dry_bowl_in_a_lustre_firing_is_refused_alone()
    {
        var answer = Loads.Check.Check(Loads.Load(Loads.Electric, Loads.Firing("overglaze", "018", "oxidation"),
            Loads.Piece("cup", "white-earthenware", "low-fire-boron-clear;lustre-resinate", "glaze-fired"),
            Loads.Piece("plate", "high-fire-porcelain", "lustre-resinate", "glaze-fired"),
            Loads.Piece("bowl", "red-earthenware", "", "bone-dry")));

        Assert.Equal([Verdict.Accept, Verdict.Accept, Verdict.Refuse], answer.Pieces.Select(p => p.Verdict));
        Assert.Equal(FiringKind.Bisque, Assert.Single(answer.SuggestedFirings).FiringKind);
        Assert.Single(answer.Cautions, c => c.Id == "lustre-in-microwave");
    }

    [Fact]
    public void An_unknown_body_is_for_review_and_the_others_get_their_verdicts()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric,
            Loads.Firing("glaze", "6", "oxidation"),
            Loads.Piece("x", "mystery-mud", "mid-range-gloss"),
            Loads.Piece("y", "mid-range-stoneware-light", "mid-range-gloss"),
            Loads.Piece("z", "red-earthenware", "majolica")));

        Assert.Equal([Verdict.Review, Verdict.Accept, Verdict.Refuse], answer.Pieces.Select(p => p.Verdict));
        Assert.Equal(ReasonCode.UnknownMaterial, answer.Pieces[0].Reasons[0].Code);
        Assert.Contains("ownBody", answer.Pieces[0].Reasons[0].Instead!.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_mid_range_glaze_of_ones_own_marked_06_is_caught_as_a_mix_up()
    {
        var own = new OwnGlazeRequest(Loads.T("our teal"), new(Loads.T("07"), Loads.T("06"), Loads.T("05")), [Loads.T("oxidation")]);
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric,
            Loads.Firing("glaze", "6", "oxidation"),
            Loads.Piece("mug", "mid-range-stoneware-light") with { Coats = [new(OwnGlaze: own)] }));

        Assert.Equal(Verdict.Refuse, answer.Verdict);
        Assert.Equal(ReasonCode.ConeZeroMixUp, answer.Pieces[0].Reasons[0].Code);
        Assert.Contains("cone 5 to 7", answer.Pieces[0].Reasons[0].Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void The_load_says_so_when_the_whole_firing_lost_its_zero()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric,
            Loads.Firing("bisque", "6", "oxidation"),
            Loads.Piece("a", "red-earthenware", "", "bone-dry"),
            Loads.Piece("b", "mid-range-stoneware-light", "", "bone-dry")));

        Assert.Equal(ReasonCode.ConeZeroMixUp, answer.Load.Reasons[0].Code);
        Assert.Equal(("06", 2), (answer.SuggestedFirings[0].Cone, answer.SuggestedFirings[0].PieceIds.Count));
    }

    [Fact]
    public void Body_and_glaze_that_no_cone_suits_are_named()
    {
        var answer = Loads.Check.Check(Loads.Load(Loads.Gas, Reduction, Loads.Piece("a", "red-earthenware", "celadon")));

        var unplaced = Assert.Single(answer.Unplaced);
        Assert.Equal(["a"], unplaced.PieceIds);
        Assert.Contains("red earthenware and celadon", unplaced.Message.ToString(), StringComparison.Ordinal);
        Assert.Empty(answer.SuggestedFirings);
    }
}
