using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Firing.Tests.Loads;

/// <summary>When the lost zero is suspected, and when it is not. Load rule suspect-the-zero-first.</summary>
public sealed class LostZeroTests
{
    // Best at cone 6: fired at 06 it fails, and fits cone 6.
    private static readonly PieceRequest Mug = Loads.Piece("mug", "mid-range-stoneware-light", "mid-range-gloss");

    [Fact]
    public void A_load_of_ware_for_cone_6_fired_at_06_has_lost_its_zero()
    {
        var answer = Check(Loads.Electric, "06", Mug);

        Assert.Equal(ReasonCode.ConeZeroMixUp, answer.Pieces[0].Reasons[0].Code);
        Assert.Equal(ReasonCode.ConeZeroMixUp, Assert.Single(answer.Load.Reasons).Code);
    }

    [Fact]
    public void Ware_that_is_right_at_the_cone_speaks_against_a_slip_of_the_whole_firing()
    {
        // Earthenware with a boron clear glaze belongs at 06 to 03, and at cone 6 it would melt.
        var answer = Check(Loads.Electric, "06", Mug, Loads.Piece("bowl", "red-earthenware", "low-fire-boron-clear"));

        Assert.Equal(ReasonCode.ConeZeroMixUp, answer.Pieces[0].Reasons[0].Code);
        Assert.Equal(Verdict.Accept, answer.VerdictOf("bowl"));
        Assert.Empty(answer.Load.Reasons);
    }

    [Fact]
    public void A_kiln_that_cannot_reach_the_other_cone_makes_the_slip_unlikely()
    {
        var answer = Check(Loads.Kiln("electric", "1", "oxidation"), "06", Mug);

        Assert.Equal(Verdict.Refuse, answer.Verdict);
        Assert.DoesNotContain(answer.Pieces[0].Reasons.Concat(answer.Load.Reasons), r => r.Code == ReasonCode.ConeZeroMixUp);
    }

    [Fact]
    public void That_nothing_speaks_against_the_other_cone_is_not_enough()
    {
        // An engobe is fired from 010 up and lets the body decide; paper clay has the cones of a base clay that is not named.
        // At 012 the engobe is under-fired; nothing in the piece asks for cone 12.
        var piece = Check(Loads.Gas, "012", Loads.Piece("p", "paper-clay", "engobe-slip")).Pieces[0];

        Assert.Contains(piece.Reasons, r => r.Code == ReasonCode.GlazeUnderfired);
        Assert.DoesNotContain(piece.Reasons, r => r.Code == ReasonCode.ConeZeroMixUp);
    }

    [Fact]
    public void A_mere_note_does_not_make_the_zero_suspect()
    {
        // Cone 4 is two below the best of this body and within its range: a note. At 04 it would be nothing.
        var piece = Check(Loads.Electric, "4", Loads.Piece("p", "mid-range-stoneware-light", use: "decorative")).Pieces[0];

        Assert.Equal(ReasonCode.BodyUnderfired, Assert.Single(piece.Reasons).Code);
    }

    private static LoadAnswer Check(Kiln kiln, string cone, params PieceRequest[] pieces) =>
        Loads.Check.Check(Loads.Load(kiln, Loads.Firing("glaze", cone, "oxidation"), pieces));

    // Salt is thrown at its maturing cone, 6 to 10 (data firing-kinds, common practice): bare clay that 03 suits hears of it all the same,
    // and where the cone of the same number is a salt firing's, of that one.
    [Theory]
    [InlineData("salt", "03", "A salt firing usually goes to a cone from 6 to 10; this one says cone 03.", null)]
    [InlineData("salt", "06", "A salt firing usually goes to a cone from 6 to 10; this one says cone 06.",
        "If cone 6 was meant, correct the firing and check again.")]
    [InlineData("salt", "6", null, null)]
    [InlineData("soda", "10", null, null)]
    public void A_firing_outside_the_cones_of_its_kind_is_asked_about(string kind, string cone, string? message, string? instead)
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln("vapour", "12", "neutral"), Loads.Firing(kind, cone, "neutral"),
            Loads.Piece("a", "terracotta", "", "bisqued", "decorative"),
            Loads.Piece("b", "salt-soda-body", "salt-vapour", "bisqued", "decorative")));
        var reason = answer.Load.Reasons.SingleOrDefault(r => r.Rule == "firing-within-cones-of-its-kind");

        Assert.Equal((message, instead), (reason?.Message.ToString(), reason?.Instead?.ToString()));
        if (reason is null) return;
        Assert.Equal((ReasonCode.ConeZeroMixUp, ReasonSeverity.Note, "/firing"), (reason.Code, reason.Severity, reason.Pointer));
    }
}
