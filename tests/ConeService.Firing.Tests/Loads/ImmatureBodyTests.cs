using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Loads;

/// <summary>
/// A body that is not mature. Load rule body-below-lowest-cone: it stays porous and leaks, a matter for whoever fires, and no ware
/// for food; body-underfired-at-glaze-cone: more than one cone below the best is a word of warning, and for food a matter for
/// whoever fires. Light mid-range stoneware is mature at cone 4 to 7, best at 6.
/// </summary>
public sealed class ImmatureBodyTests
{
    [Theory]
    [InlineData("2", "food", ReasonSeverity.Refuse, "body-below-lowest-cone")]
    [InlineData("2", "decorative", ReasonSeverity.Review, "body-below-lowest-cone")]
    [InlineData("2", null, ReasonSeverity.Review, "body-below-lowest-cone")]
    [InlineData("4", "food", ReasonSeverity.Review, "body-underfired-at-glaze-cone")]
    [InlineData("4", "decorative", ReasonSeverity.Note, "body-underfired-at-glaze-cone")]
    [InlineData("4", null, ReasonSeverity.Note, "body-underfired-at-glaze-cone")]
    public void It_weighs_more_for_food(string cone, string? use, ReasonSeverity expected, string rule)
    {
        var reason = Assert.Single(Check(cone, use).Reasons, r => r.Code == ReasonCode.BodyUnderfired);

        Assert.Equal((expected, rule), (reason.Severity, reason.Rule));
    }

    [Fact]
    public void One_cone_below_its_best_it_is_as_good() =>
        Assert.DoesNotContain(Check("5", "food").Reasons, r => r.Code == ReasonCode.BodyUnderfired);

    private static PieceAnswer Check(string cone, string? use) => Loads.Check.Check(Loads.Load(
        Loads.Electric, Loads.Firing("glaze", cone, "oxidation"), Loads.Piece("p", "mid-range-stoneware-light", use: use))).Pieces[0];

    [Fact]
    public void No_body_is_said_to_stand_the_cone_at_which_it_slumps()
    {
        // Past warping and bloating a maker may fire it all the same; no range reaches to where it lies down, but that of bone china, which
        // is bedded in powder (clay-bodies bone-china).
        var scale = new ConeService.Firing.Materials.PotterScale(Reference.Charts.Scale);
        Assert.All(
            Reference.Dataset.ClayBodies.Where(b => b.Id != "bone-china"
                && b.MatureConeBest is not null && b.SlumpConesOverBest is not null),
            b => Assert.True(
                scale.Of(b.MatureConeBest!).StepsTo(scale.Of(b.MatureConeMax!)) < b.SlumpConesOverBest,
                $"{b.Id}: best {b.MatureConeBest}, to {b.MatureConeMax}, slumps {b.SlumpConesOverBest} over its best"));
    }
}
