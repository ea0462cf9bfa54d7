using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Tests.Support;
using CsCheck;

namespace ConeService.Firing.Tests.Loads;

/// <summary>Suggested firings: few, such as studios run, and with their reasons.</summary>
public sealed class SuggestionTests
{
    private const int Samples = 3_000;

    // In a kiln that suits every firing, so that brute force and check speak of the same kiln; the firing booked is on offer too.
    [Fact]
    public void The_firings_of_a_whole_load_are_the_fewest_that_brute_force_finds() =>
        Gen.Select(LoadGen.Load, LoadGen.Firing.List[1, 4]).Sample((drawn, others) =>
        {
            var load = drawn with
            {
                Pieces = [.. drawn.Pieces!.Take(6)],
                Offered = [.. others.Prepend(drawn.Firing!).Select(f => new OfferedFiringRequest(f.FiringKind, f.Cone, f.Atmosphere))],
            };
            var answer = Loads.Check.Check(load);
            var unplaced = answer.Unplaced.SelectMany(u => u.PieceIds).ToHashSet();
            var fitting = load.Pieces!.OfType<PieceRequest>().Where(p => !unplaced.Contains(p.Id.Text!)).ToList();
            Assert.Equal(SuggestionBasis.Exact, answer.SuggestionBasis);
            var fewest = BruteForce.Fewest(load, fitting);
            Assert.True(
                fewest == answer.TotalFirings,
                $"fewest {fewest}, answered {answer.TotalFirings}, unplaced {string.Join(' ', unplaced)}\n{LoadGen.Told(load)}");
        }, iter: Samples);

    [Fact]
    public void The_loads_drawn_need_one_two_and_more_firings()
    {
        var counts = new System.Collections.Concurrent.ConcurrentBag<(int Firings, bool Kept)>();
        LoadGen.Load.Sample(load =>
        {
            var answer = Loads.Check.Check(load);
            counts.Add((answer.TotalFirings, answer.KeepsBooked));
        }, iter: Samples);

        Assert.Contains(counts, c => c is { Firings: 1, Kept: false });
        Assert.Contains(counts, c => c is { Firings: 2, Kept: true });
        Assert.Contains(counts, c => c.Firings > 2);
    }

    // mid-range-gloss 5 to 7 and slip-glaze 5 to 10 share cone 6, which takes the iron red of 6 to 10 too: one firing for all.
    [Fact]
    public void One_firing_for_all_is_better_than_the_one_booked_and_another()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "5", "oxidation"),
            Loads.Piece("a", "ovenware-stoneware", "mid-range-gloss"),
            Loads.Piece("b", "ovenware-stoneware", "iron-red")));

        Assert.Equal([Verdict.Accept, Verdict.Review], answer.Pieces.Select(p => p.Verdict));
        Assert.Equal((1, false), (answer.TotalFirings, answer.KeepsBooked));
        Assert.Equal(["a", "b"], Assert.Single(answer.SuggestedFirings).PieceIds);
        Assert.Equal("6", answer.SuggestedFirings[0].Cone);
    }

    [Fact]
    public void What_is_booked_stays_where_the_rest_needs_a_firing_of_its_own()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "6", "oxidation"),
            Loads.Piece("a", "mid-range-stoneware-light", "mid-range-gloss"),
            Loads.Piece("b", "red-earthenware", "majolica")));

        Assert.Equal((2, true), (answer.TotalFirings, answer.KeepsBooked));
        Assert.Equal(["b"], Assert.Single(answer.SuggestedFirings).PieceIds);
    }

    // Best cone of the resinate lustre: 018 (data glazes, published); the glaze below it was fired at 6.
    [Theory]
    [InlineData("glaze", "6")]
    [InlineData("overglaze", "06")]
    [InlineData("overglaze", "022")]
    public void Lustre_is_suggested_at_its_own_best_cone(string kind, string cone)
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing(kind, cone, "oxidation"),
            Loads.Piece("cup", "mid-range-porcelain", "mid-range-gloss;lustre-resinate", "glaze-fired", "decorative")));

        Assert.Equal((FiringKind.Overglaze, "018"), (answer.SuggestedFirings[0].FiringKind, answer.SuggestedFirings[0].Cone));
    }

    [Fact]
    public void Every_suggestion_is_a_firing_that_studios_run_as_long_as_one_will_do() =>
        LoadGen.Load.Sample(load => Assert.All(Loads.Check.Check(load).SuggestedFirings.Where(f => f.IsUsual), f => Assert.Contains(
            Reference.Dataset.UsualFirings,
            u => u.FiringKind == f.FiringKind && u.Cone == f.Cone && u.Atmospheres.Contains(f.Atmosphere))), iter: Samples);

    // Of one's own marks alone an unusual firing may be needed: each glaze of the package has a usual one on some body.
    [Fact]
    public void Every_glaze_of_the_package_has_a_usual_firing_on_some_body()
    {
        foreach (var glaze in Reference.Dataset.Glazes.Where(g => g.Kind is CoatKind.Glaze or CoatKind.RakuGlaze or CoatKind.Vapour))
        {
            // Lead is for review wherever it goes.
            if (glaze.GivesOff.Contains(Fume.Lead)) continue;
            var state = EnumWords.Word(glaze.AppliedOn[^1]);
            var pieces = Reference.Dataset.ClayBodies.Select(b => Loads.Piece(b.Id, b.Id, glaze.Id, state, "decorative")).ToArray();
            var answer = Loads.Check.Check(Loads.Load(Loads.Gas, Loads.Firing(EnumWords.Word(glaze.FiredIn[0]), "022", "neutral"), pieces));
            Assert.Contains(answer.SuggestedFirings, f => f.IsUsual);
        }
    }

    [Fact]
    public void Only_what_is_offered_is_suggested_and_the_rest_is_told_where_it_could_go()
    {
        var load = Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "04", "oxidation"),
            Loads.Piece("a", "mid-range-stoneware-light", "mid-range-gloss"), Loads.Piece("b", "high-fire-porcelain", "celadon"));
        var answer = Loads.Check.Check(load with { Offered = [new("glaze", "5", "oxidation"), new("bisque", "06", "oxidation")] });

        Assert.Equal(("5", true), (Assert.Single(answer.SuggestedFirings).Cone, answer.SuggestedFirings[0].IsUsual));
        var left = Assert.Single(answer.Unplaced);
        Assert.Equal(["b"], left.PieceIds);
        Assert.Equal(
            "No firing that is offered accepts it; a glaze firing to cone 10 in reduction would.", left.Message.ToString());
    }

    // What a studio offers it fires, also where the kind of firing usually goes to other cones; what was booked is what is wanted.
    [Fact]
    public void What_is_offered_is_suggested_also_beyond_the_usual_cones_of_its_kind()
    {
        var load = Loads.Load(
            Loads.Kiln("vapour", "020", "neutral"), Loads.Firing("salt", "03", "neutral"),
            Loads.Piece("a", "terracotta", "", "bisqued", "decorative"), Loads.Piece("b", "bone-china", "", "bisqued", "food"));
        var answer = Loads.Check.Check(load with { Offered = [new("salt", "03", "neutral"), new("glaze", "03", "oxidation")] });

        Assert.Equal(2, answer.TotalFirings);
        Assert.Equal(
            [(FiringKind.Salt, "a"), (FiringKind.Glaze, "b")],
            answer.SuggestedFirings.Select(f => (f.FiringKind, Assert.Single(f.PieceIds))).OrderBy(f => f.Item2));
    }

    // A light glaze with copper blushes and is blushed upon, in reduction; bare clay beside it does neither, and one firing takes both.
    // A bare bisqued pot goes into a once firing as it would into any glaze firing.
    [Theory]
    [InlineData("soda", "06", "reduction", "glaze-fired", "majolica;own=06/06/05+copper")]
    [InlineData("single", "05", "oxidation", "bone-dry", "")]
    public void What_harms_nobody_goes_along(string kind, string cone, string atmosphere, string state, string coats)
    {
        var load = Loads.Load(
            Loads.Kiln("gas", "015", "oxidation;neutral;reduction"), Loads.Firing(kind, cone, atmosphere),
            Loads.Piece("a", "terracotta", "", "bisqued", "decorative"),
            PieceText.Piece("b", "terracotta", coats, state, "decorative"));
        var answer = Loads.Check.Check(load with { Offered = [new(kind, cone, atmosphere), new("glaze", "019", "reduction")] });

        Assert.Equal(1, answer.TotalFirings);
        Assert.Equal(["a", "b"], Assert.Single(answer.SuggestedFirings).PieceIds);
    }

    [Fact]
    public void Of_the_kilns_named_the_one_that_can_is_named()
    {
        var gas = Loads.Kiln("gas", "12", "oxidation;neutral;reduction") with { Id = "big gas" };
        var small = Loads.Kiln("electric", "04", "oxidation") with { Id = "small" };
        var load = Loads.Load(
            Loads.Electric with { Id = "top loader" }, Loads.Firing("glaze", "6", "oxidation"),
            Loads.Piece("a", "high-fire-porcelain", "celadon"), Loads.Piece("b", "red-earthenware", "majolica"));
        var answer = Loads.Check.Check(load with { Kilns = [small, gas] });

        Assert.Equal(
            ["10 big gas False", "04 top loader True"],
            answer.SuggestedFirings.OrderByDescending(f => f.PieceIds[0] == "a").Select(f => $"{f.Cone} {f.KilnId} {f.InThisKiln}"));
    }

    [Fact]
    public void Each_suggestion_says_why_and_which_notes_remain()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "06", "oxidation"),
            Loads.Piece("a", "mid-range-stoneware-light", "mid-range-gloss", use: "food")));
        var firing = Assert.Single(answer.SuggestedFirings);

        Assert.Equal(
            "A usual firing: cone 6 in oxidation is within the ranges of body and coats of the piece; best at cone 6.",
            firing.Why.ToString());
        var note = Assert.Single(firing.Remaining);
        Assert.Equal(ReasonCode.LeachTestTells, note.Code);
        Assert.Equal(["a"], note.PieceIds);
    }

    // A lustre is fired where it belongs: that a glaze would be over-fired is no answer to it.
    [Fact]
    public void What_is_booked_rightly_and_still_not_accepted_hears_of_the_firing_booked()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("overglaze", "018", "oxidation"),
            Loads.Piece("cup", "mid-range-porcelain", "mid-range-gloss;lustre-resinate", "glaze-fired", "food")));

        Assert.Equal(Verdict.Review, answer.Verdict);
        Assert.All(Assert.Single(answer.Unplaced).Reasons, r => Assert.Equal(ReasonCode.NotForFood, r.Code));
    }
}
