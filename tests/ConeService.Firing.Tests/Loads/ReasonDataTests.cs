using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Tests.Support;
using CsCheck;

namespace ConeService.Firing.Tests.Loads;

/// <summary>Reasons as data: where they lie, what they speak of, what they say to two readers, and once in a table.</summary>
public sealed class ReasonDataTests
{
    // red-earthenware matures from 06 to 02, majolica from 05 to 02 (data clay-bodies and glazes); 02 to 6 is seven whole cones.
    [Fact]
    public void A_reason_names_its_place_and_what_it_speaks_of()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "6", "oxidation"),
            Loads.Piece("a", "mid-range-stoneware-light", "mid-range-gloss"),
            Loads.Piece("b", "red-earthenware", "underglaze;majolica")));
        var reasons = answer.Pieces[1].Reasons;
        var body = reasons.Single(r => r.Code == ReasonCode.BodyOverfired);
        var coat = reasons.Single(r => r.Code == ReasonCode.GlazeOverfired && r.Parameters.Material == "majolica");

        Assert.Equal(("/pieces/1/body", "red-earthenware", "6", 7), Told(body));
        Assert.Equal(new("06", "04", "02"), body.Parameters.Cones);
        Assert.Equal(("/pieces/1/coats/1", "majolica", "6", 7), Told(coat));
    }

    // mid-range-gloss goes from 5 to 7: seven whole cones from 03 up to 5.
    [Fact]
    public void Below_a_range_steps_are_negative_and_marks_of_ones_own_have_no_id()
    {
        var piece = Loads.Piece("a", "mid-range-stoneware-light") with
        {
            Coats = [new(Loads.T("no-such-glaze")), new(OwnGlaze: new("our blue", new("5", "6", "7")))],
        };
        var answer = Loads.Check.Check(Loads.Load(Loads.Electric, Loads.Firing("glaze", "03", "oxidation"), piece));
        var own = answer.Pieces[0].Reasons.Single(r => r.Code == ReasonCode.GlazeUnderfired);

        Assert.Equal(("/pieces/0/coats/1", null, "03", -7), Told(own));
        Assert.Equal("our blue", own.Parameters.MaterialName);
        Assert.Equal("/pieces/0/coats/0", answer.Pieces[0].Reasons.Single(r => r.Code == ReasonCode.UnknownMaterial).Pointer);
    }

    [Fact]
    public void A_reason_of_neighbours_names_them_and_one_of_the_load_its_part()
    {
        var chrome = Loads.Piece("green", "white-earthenware") with
        {
            Coats = [new(Loads.T("low-fire-boron-clear"), Contains: [Loads.T("chrome")])],
        };
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "04", "oxidation"), chrome, Loads.Piece("white", "red-earthenware", "majolica")));

        Assert.Equal(["green"], answer.Pieces[1].Reasons.Single(r => r.Code == ReasonCode.FumesOnNeighbours).Parameters.OtherPieces);
        Assert.Equal("/pieces", Assert.Single(answer.Load.Reasons).Pointer);
    }

    [Fact]
    public void A_reason_says_one_thing_to_a_student_and_another_to_a_technician()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "6", "oxidation"), Loads.Piece("b", "red-earthenware", "majolica")));
        var reason = answer.Pieces[0].Reasons.First(r => r.Code == ReasonCode.BodyOverfired);

        Assert.Equal($"{reason.Message} {reason.Instead}", reason.Texts.Student.ToString());
        Assert.StartsWith(
            "Body over its range: red earthenware, cone 06 to 02; firing to cone 6, 7 whole cones above. Rule ",
            reason.Texts.Technician.ToString(), StringComparison.Ordinal);
        Assert.All(reason.Sources, s => Assert.Contains(s, reason.Texts.Technician.ToString(), StringComparison.Ordinal));
    }

    // An underglaze from 06 to 6 and a clear from 5 to 7 on a body from 4 to 7: only 5 and 6 suit all three.
    [Fact]
    public void Body_and_coats_of_a_piece_are_advised_one_firing_together()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "10", "oxidation"),
            Loads.Piece("a", "mid-range-stoneware-light", "underglaze;mid-range-gloss")));
        var piece = answer.Pieces[0];
        var advice = piece.Reasons.Where(r => r.Code is ReasonCode.BodyOverfired or ReasonCode.GlazeOverfired).Select(r => r.Instead);

        Assert.Equal(
            "Book it in a glaze firing to cone 6 in oxidation: that suits body and coats together.", piece.Instead!.ToString());
        Assert.Equal(1, piece.SuggestedFiring);
        Assert.Equal([piece.Instead.ToString()], advice.Select(a => a!.ToString()).Distinct());
    }

    [Fact]
    public void Of_verdicts_alone_the_table_holds_each_reason_once_and_the_pieces_refer_to_it() =>
        LoadGen.Load.Sample(load =>
        {
            var (full, light) = (Loads.Check.Check(load), Loads.Check.Check(load, LoadDetail.Verdicts));
            Assert.Equal(Enumerable.Range(1, light.ReasonTable.Count), light.ReasonTable.Select(r => r.Number));
            foreach (var (told, referring) in full.Pieces.Zip(light.Pieces))
            {
                Assert.Empty(referring.Reasons);
                Assert.Equal((told.Id, told.Verdict, told.SuggestedFiring), (referring.Id, referring.Verdict, referring.SuggestedFiring));
                Assert.Equal(
                    told.Reasons.Select(r => (r.Code, r.Severity, r.Rule, r.Message.ToString())),
                    referring.ReasonNumbers.Select(n => light.ReasonTable[n - 1].Reason)
                        .Select(r => (r.Code, r.Severity, r.Rule, r.Message.ToString())));
            }
        }, iter: 300);

    [Fact]
    public void The_callers_references_come_back()
    {
        var load = Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "6", "oxidation"),
            Loads.Piece("a", "mid-range-stoneware-light", "mid-range-gloss") with { Ref = "booking-7" },
            Loads.Piece("b", "mid-range-stoneware-light", "mid-range-gloss"));
        var answer = Loads.Check.Check(load with { Ref = "saturday" });

        Assert.Equal("saturday", answer.Ref);
        Assert.Equal(["booking-7", null], answer.Pieces.Select(p => p.Ref));
    }

    [Fact]
    public void Every_code_is_described_and_rests_on_a_rule()
    {
        var codes = FiringReference.Open(Reference.Dataset).Loads.ReasonCodes().Items;

        Assert.Equal(EnumWords.All<ReasonCode>(), codes.Select(c => EnumWords.Word(c.Id)));
        Assert.All(codes, c =>
        {
            Assert.NotEqual(EnumWords.Word(c.Id), c.Name.ToString());
            Assert.NotEqual(EnumWords.Word(c.Id), c.Meaning.ToString());
            Assert.NotEmpty(c.LoadRules);
        });
    }

    [Fact]
    public void An_electric_kiln_that_names_no_atmosphere_holds_oxidation_and_the_answer_says_so()
    {
        var load = Loads.Load(
            Loads.Electric with { Atmospheres = null }, Loads.Firing("glaze", "6", "oxidation"),
            Loads.Piece("a", "mid-range-stoneware-light", "mid-range-gloss"));

        Assert.Equal(Verdict.Accept, Loads.Check.Check(load).Verdict);
        Assert.Contains(Loads.Check.Check(load).Assumed, a => a is { Field: "/kiln/atmospheres", Value: "oxidation" });
        var refused = Assert.Throws<RefusedException>(() => Loads.Check.Check(load with { Kiln = Loads.Gas with { Atmospheres = null } }));
        Assert.Equal("/kiln/atmospheres", Assert.Single(refused.Findings).Field);
    }

    // Words of the trade, common practice: greenware is any ware not fired yet; biscuit is bisque; glost is the glaze firing.
    [Theory]
    [InlineData("greenware", "“greenware” may be bone-dry or leather-hard here.")]
    [InlineData("Greenwear", "“Greenwear” may be bone-dry or leather-hard here.")]
    [InlineData("unfired", "“unfired” may be bone-dry or leather-hard here.")]
    [InlineData("biscuit", "“biscuit” is bisqued here.")]
    public void A_word_of_the_trade_is_told_by_what_it_means(string state, string likely)
    {
        var refused = Assert.Throws<RefusedException>(() => Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing("glaze", "6", "oxidation"), Loads.Piece("a", "mid-range-stoneware-light", "", state))));

        Assert.Equal(likely, Assert.Single(refused.Findings).LikelyMistake!.ToString());
    }

    [Theory]
    [InlineData("glost", "“glost” is glaze here.")]
    [InlineData("smoke", "“smoke” may be pit or saggar here.")]
    public void A_firing_in_words_of_the_trade_is_told_by_what_it_means(string kind, string likely)
    {
        var refused = Assert.Throws<RefusedException>(() => Loads.Check.Check(Loads.Load(
            Loads.Electric, Loads.Firing(kind, "6", "oxidation"), Loads.Piece("a", "mid-range-stoneware-light"))));

        Assert.Equal(likely, Assert.Single(refused.Findings).LikelyMistake!.ToString());
    }

    [Fact]
    public void Words_of_the_trade_mean_words_of_the_contract()
    {
        Assert.All(Reference.Dataset.TradeWords, w => Assert.All(w.Means, m => Assert.Contains(m, w.Vocabulary switch
        {
            "state" => EnumWords.All<PieceState>(),
            "firing-kind" => EnumWords.All<FiringKind>(),
            _ => [.. Atmospheres.OfFirings.Select(EnumWords.Word)],
        })));
        Assert.DoesNotContain(Reference.Dataset.TradeWords, w => w.Means.Contains(w.Word));
    }

    private static (string Pointer, string? Material, string FiringCone, int? StepsOver) Told(Reason reason) =>
        (reason.Pointer, reason.Parameters.Material, reason.Parameters.FiringCone, reason.Parameters.StepsOver);
}
