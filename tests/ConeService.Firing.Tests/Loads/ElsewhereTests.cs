using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Tests.Loads;

/// <summary>Whom a firing fails is not sent back to it: what to book instead says what the other firing has that this one lacks.</summary>
public sealed class ElsewhereTests
{
    private static readonly Interior Small = new(Loads.Number("500"), Loads.Number("450"), Loads.Number("450"));

    [Fact]
    public void A_kiln_that_does_not_reach_the_cone_is_told_from_one_that_does()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln("electric", "6", "oxidation"), Loads.Firing("glaze", "10", "oxidation"),
            Loads.Piece("p", "high-fire-stoneware-light", "tenmoku")));

        Assert.Equal(
            "Book it in a glaze firing to cone 10 in oxidation, in another kiln, one that reaches cone 10: "
            + "that suits body and coats together.",
            Instead(answer));
        Assert.Contains(
            "in einem anderen Ofen, der Kegel 10 erreicht", German(answer), StringComparison.Ordinal);
    }

    [Fact]
    public void Salt_goes_into_a_kiln_that_is_kept_for_it_at_the_cone_it_is_best_at()
    {
        // glazes salt-vapour and clay-bodies salt-soda-body: both best at 9.
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln("gas", "13", "oxidation;neutral;reduction"), Loads.Firing("salt", "9", "reduction"),
            Loads.Piece("p", "salt-soda-body", "salt-vapour", "bone-dry")));

        Assert.Contains(
            "a salt firing to cone 9 in reduction, in another kiln, one kept for salt or soda:", Instead(answer), StringComparison.Ordinal);
        Assert.Contains("best at cone 9", answer.SuggestedFirings[0].Why.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    // wood-fire-body is best at 10; slip-glaze at 9, whatever the bisque of the body.
    [InlineData("wood", "10", "electric", "wood-fire-body", "", "10")]
    [InlineData("single", "9", "raku", "high-fire-stoneware-light", "slip-glaze", "9")]
    [InlineData("bisque", "06", "raku", "mid-range-stoneware-light", "", "06")]
    public void Raw_ware_is_suggested_by_what_the_firing_is_to_do_for_it(
        string kind, string cone, string heat, string body, string coats, string best)
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln(heat, "13", "oxidation;neutral;reduction"), Loads.Firing(kind, cone, "oxidation"),
            Loads.Piece("p", body, coats, "bone-dry")));
        var suggested = Assert.Single(answer.SuggestedFirings);

        Assert.Equal((kind, best), (EnumWords.Word(suggested.FiringKind), suggested.Cone));
        Assert.Contains($"best at cone {best}", suggested.Why.ToString(), StringComparison.Ordinal);
        Assert.Contains("in another kiln, one for", Instead(answer), StringComparison.Ordinal);
    }

    [Fact]
    public void A_pot_that_is_too_tall_goes_into_a_larger_kiln()
    {
        var pot = Loads.Piece("p", "mid-range-stoneware-light", "", "bone-dry") with
        {
            Size = new SizeRequest(Loads.Number("520"), Loads.Number("200")),
        };
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln("electric", "10", "oxidation", Small), Loads.Firing("bisque", "06", "oxidation"), pot));

        Assert.Contains("to cone 06 in oxidation, in a larger kiln:", Instead(answer), StringComparison.Ordinal);
    }

    [Fact]
    public void A_vapour_kiln_is_not_for_other_ware_and_reduction_needs_a_kiln_that_holds_it()
    {
        var vapour = Loads.Check.Check(Loads.Load(
            Loads.Kiln("vapour", "10", "oxidation;neutral;reduction"), Loads.Firing("glaze", "6", "oxidation"),
            Loads.Piece("p", "mid-range-stoneware-light", "mid-range-gloss")));
        var electric = Loads.Check.Check(Loads.Load(
            Loads.Kiln("electric", "10", "oxidation"), Loads.Firing("glaze", "9", "reduction"),
            Loads.Piece("p", "high-fire-porcelain", "copper-red")));

        Assert.Contains("one not kept for salt or soda", Instead(vapour), StringComparison.Ordinal);
        Assert.Contains("in another kiln, one that holds reduction", Instead(electric), StringComparison.Ordinal);
    }

    [Fact]
    public void What_neighbours_spoil_goes_into_another_load_without_them()
    {
        var chrome = Loads.Piece("green", "white-earthenware") with
        {
            Coats = [new(Loads.T("low-fire-boron-clear"), Contains: ["chrome"])],
        };
        var white = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "04", "oxidation"), Loads.Piece("white", "red-earthenware", "majolica"), chrome));
        var pale = Loads.Check.Check(Loads.Load(
            Loads.Gas, Loads.Firing("glaze", "10", "reduction"), Loads.Piece("pale", "high-fire-porcelain", "celadon"),
            Loads.Piece("red", "high-fire-porcelain", "copper-red")));
        var plate = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "04", "oxidation"), Loads.Piece("plate", "red-earthenware", "majolica", use: "food"),
            Loads.Piece("jar", "red-earthenware", "low-fire-lead-historic", use: "decorative")));

        Assert.Contains("but in another load, without chrome", Instead(white), StringComparison.Ordinal);
        Assert.Contains("but in another load, without copper", Instead(pale), StringComparison.Ordinal);
        Assert.Contains("but in another load, without lead", Instead(plate), StringComparison.Ordinal);
        Assert.Contains("ohne Blei", German(plate), StringComparison.Ordinal);
        Assert.Contains(plate.Load.Reasons, r => r.Rule == "food-ware-away-from-lead" && r.Severity == ReasonSeverity.Review);
    }

    [Fact]
    public void Lead_is_noted_of_the_kiln_where_no_ware_for_food_stands_beside_it()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "04", "oxidation"),
            Loads.Piece("jar", "red-earthenware", "low-fire-lead-historic", use: "decorative")));

        var reason = Assert.Single(answer.Load.Reasons);
        Assert.Equal((ReasonSeverity.Note, "food-ware-away-from-lead"), (reason.Severity, reason.Rule));
        Assert.Contains("shelves", reason.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void Cadmium_and_ware_for_food_are_suggested_apart_above_low_fire()
    {
        // Both were booked too cool; at 6 cadmium burns out.
        var red = Loads.Piece("red", "mid-range-stoneware-light", use: "decorative") with
        {
            Coats = [new(Loads.T("mid-range-gloss"), Contains: ["cadmium"])],
        };
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "04", "oxidation"), red,
            Loads.Piece("cup", "mid-range-stoneware-light", "mid-range-gloss", use: "food")));

        Assert.Equal(2, answer.SuggestedFirings.Count);
        Assert.All(answer.SuggestedFirings, s => Assert.Equal("6", s.Cone));
    }

    [Fact]
    public void Of_the_kilns_of_the_studio_the_one_is_named_or_none()
    {
        var load = Loads.Load(
            Loads.Kiln("electric", "6", "oxidation") with { Id = "mid" }, Loads.Firing("glaze", "10", "oxidation"),
            Loads.Piece("p", "high-fire-stoneware-light", "tenmoku"));
        var one = Loads.Check.Check(load with { Kilns = [Loads.Kiln("electric", "10", "oxidation") with { Id = "front-loader" }] });
        var none = Loads.Check.Check(load with { Kilns = [Loads.Kiln("electric", "8", "oxidation") with { Id = "other" }] });
        var small = Loads.Check.Check(load with { Kilns = [Loads.Kiln("electric", "6", "oxidation") with { Id = "other" }] });

        Assert.Contains("in the kiln front-loader", Instead(one), StringComparison.Ordinal);
        Assert.Contains("cone 8 in oxidation, in the kiln other", Instead(none), StringComparison.Ordinal);
        Assert.Contains("No kiln that was named can fire it", Instead(small), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("06", false)]
    [InlineData(null, true)]
    public void A_bisque_that_was_told_is_not_taken_to_be_the_one_it_needs(string? bisque, bool assumed)
    {
        var cup = Loads.Piece("cup", "bone-china", "low-fire-boron-clear", "", "food") with
        {
            State = default,
            EarlierFirings = [new(Loads.T("bisque"), bisque is null ? default : Loads.T(bisque))],
        };
        var answer = Loads.Check.Check(Loads.Load(Loads.Electric, Loads.Firing("glaze", "04", "oxidation"), cup));

        Assert.Equal(assumed ? Verdict.Accept : Verdict.Refuse, answer.Verdict);
        Assert.Equal(assumed, answer.Assumed.Any(a => a.Value == "bisqued within the range of its body"));
        if (!assumed) Assert.Contains("bisque it at cone 8 to 10", Instead(answer), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("mid-range-stoneware-light", "mid-range-gloss", "6", "oxidation")]
    [InlineData("high-fire-stoneware-light", "tenmoku", "10", "reduction")]
    public void Ware_with_nothing_left_to_fire_is_sent_to_no_other_firing(string body, string glaze, string cone, string atmosphere)
    {
        var piece = Loads.Piece("p", body, state: "glaze-fired") with { Coats = [new(Loads.T(glaze), FiredCone: Loads.T(cone))] };
        var answer = Loads.Check.Check(Loads.Load(Loads.Gas, Loads.Firing("glaze", cone, atmosphere), piece));

        Assert.Equal(Verdict.Review, answer.Verdict);
        Assert.Empty(answer.SuggestedFirings);
        Assert.Contains("Whoever fires decides", Instead(answer), StringComparison.Ordinal);
        Assert.Equal(["p"], Assert.Single(answer.Unplaced).PieceIds);
    }

    [Fact]
    public void No_sentence_sends_a_drawn_load_back_to_the_firing_that_failed_it()
    {
        var sent = 0;
        foreach (var row in DecisionTableTests.Cases)
        {
            var request = DecisionTableTests.Request(row);
            var answer = Loads.Check.Check(request);
            if (answer.Pieces[0].Verdict == Verdict.Accept || answer.SuggestedFirings.Count == 0) continue;
            var (booked, suggested) = (request.Firing!, answer.SuggestedFirings[0]);
            if (EnumWords.Word(suggested.FiringKind) != booked.FiringKind.Text || suggested.Cone != booked.Cone.Text
                || EnumWords.Word(suggested.Atmosphere) != booked.Atmosphere.Text) continue;
            sent++;
            Assert.Matches("in (another|a larger) kiln|in another load", Instead(answer));
        }

        Assert.True(sent > 0);
    }

    private static string German(LoadAnswer answer) => new Speech(MessageBook.Embedded, "de").Say(answer.Pieces[0].Instead!);

    private static string Instead(LoadAnswer answer) => answer.Pieces[0].Instead!.ToString();
}
