using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Schedules;
using ConeService.Data;

namespace ConeService.Firing.Tests.Schedules;

/// <summary>No schedule is fitted hotter than the ware stands without a word.</summary>
public class FitLoadCheckTests
{
    // Red earthenware is mature at cones 06 to 02 and melts far below cone 6 (clay-bodies).
    [Fact]
    public void Earthenware_in_a_stoneware_firing_is_refused_before_all_else()
    {
        var fit = Fit("mid-range-glaze", "6", new PieceRequest("mug", Body: "red-earthenware", State: "bisqued"));
        Assert.Equal((Verdict.Refuse, "6"), (fit.Load!.Verdict, fit.Load.Cone));
        Assert.Contains(fit.Load.Pieces.Single().Reasons, r => r is { Code: ReasonCode.BodyOverfired, Severity: ReasonSeverity.Refuse });
        Assert.Contains("do not fire it", fit.Warnings[0].ToString(), StringComparison.Ordinal);
        Assert.StartsWith("mug:", fit.Warnings[1].ToString(), StringComparison.Ordinal);
    }

    // A glaze of cones 05 to 03 runs at cone 6, whatever it sits on.
    [Fact]
    public void A_glaze_that_runs_is_named()
    {
        var coat = new CoatRequest(OwnGlaze: new("our clear", new("05", "04", "03")));
        var body = new OwnBodyRequest("our stoneware", new("08", "04"), new("5", "6", "7"));
        var fit = Fit("mid-range-glaze", "6", new PieceRequest("bowl", OwnBody: body, Coats: [coat], State: "bisqued"));
        Assert.Equal(Verdict.Refuse, fit.Load!.Verdict);
        Assert.Contains(fit.Load.Pieces[0].Reasons, r => r.Code == ReasonCode.GlazeOverfired);
    }

    [Fact]
    public void Ware_that_suits_the_cone_is_accepted_without_a_warning()
    {
        var body = new OwnBodyRequest("our stoneware", new("08", "04"), new("5", "6", "7"));
        var coat = new CoatRequest(OwnGlaze: new("our clear", new("5", "6", "7")));
        var fit = Fit("mid-range-glaze", "6", new PieceRequest("bowl", OwnBody: body, Coats: [coat], State: "bisqued"));
        Assert.NotEqual(Verdict.Refuse, fit.Load!.Verdict);
        Assert.DoesNotContain(fit.Warnings, w => w.ToString().Contains("do not fire it", StringComparison.Ordinal));
    }

    [Fact]
    public void Without_pieces_nothing_is_judged() => Assert.Null(Fits.Fit("mid-range-glaze", "6").Answer.Load);

    // Raku has no target; the programme to 980 °C puts cones of earthenware down, and a body that melts there can't go in.
    [Fact]
    public void A_firing_without_a_target_is_judged_at_the_cone_that_it_reaches()
    {
        var fit = Fit("raku-western", null, new PieceRequest("pot", Body: "red-earthenware", State: "bisqued"));
        Assert.Equal(fit.HeatWork.Reached, fit.Load!.Cone);
    }

    [Fact]
    public void What_is_wrong_with_a_piece_is_told_with_its_place_in_this_body()
    {
        var refused = Assert.Throws<RefusedException>(() =>
            Fit("mid-range-glaze", "6", new PieceRequest("mug", Body: "red-earthenware", State: "bisked")));
        Assert.Equal("/load/pieces/0/state", Assert.Single(refused.Findings).Field);
    }

    // The wettest piece bursts first: a load that is dry but for one piece is wet.
    [Theory]
    [InlineData(null)]
    [InlineData("bone-dry")]
    public void The_wettest_and_the_thickest_piece_decide(string? dryness)
    {
        PieceRequest Pot(string id, string state, double thickness) =>
            new(id, Body: "red-earthenware", State: state, ThickestMillimetres: thickness);
        var load = new FitLoad(Dryness: dryness, Pieces: [Pot("dry", "bone-dry", 6), Pot("wet", "wet", 8)]);
        var fit = Fits.Fit("bisque-mixed-ware", "06", load: load).Answer;
        // schedule-defaults: overnight, 480 min, for wet ware.
        Assert.Equal(480, fit.Segments[0].HoldMinutes);
        Assert.Contains(fit.Assumed, a => (a.Pointer, a.Value) == ("/load/dryness", "wet"));
        Assert.Contains(fit.Assumed, a => (a.Pointer, a.Value) == ("/load/thickestMillimetres", "8"));
    }

    private static ScheduleFit Fit(string schedule, string? cone, params PieceRequest[] pieces) =>
        Fits.Fit(schedule, cone, load: new(Pieces: pieces)).Answer;
}
