using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// A bisque below the range of the body leaves it soft and full of carbon, above it too tight to take glaze. One or two cones
/// outside, and far from maturity, is a word of warning: studios bisque all their bodies together.
/// </summary>
internal sealed class BisqueRangeRule : IPieceRule
{
    /// <summary>Whole cones outside the range that matter little; bisque-within-body-range names them in words.</summary>
    internal const int Slightly = 2;

    // Far from maturity is at least so many whole cones below it; too near is this few, or so far above the bisque and no longer far.
    private const int Far = 4;
    private const int TooNear = 1;
    private const int TooFarAbove = 6;

    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.BisqueRange, LoadRuleIds.BisqueBelowMaturity];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Firing.Kind != FiringKind.Bisque || c.Piece.Body is not { } body || c.Piece.State >= PieceState.Bisqued) return;
        var cone = c.Firing.Cone;
        if (cone.IsBelow(body.BisqueMin))
        {
            var severity = cone.StepsTo(body.BisqueMin) <= Slightly ? ReasonSeverity.Note : ReasonSeverity.Review;
            judgement.Find(ReasonCode.BodyUnderfired, severity)?.Because(LoadRuleIds.BisqueRange, body,
                Message.Of(
                    "loads.bisque-cool",
                    ("cone", cone.Text), ("body", body.Name), ("min", body.BisqueMin.Text), ("max", body.BisqueMax.Text)),
                BisqueAt(body));
        }
        else if (cone.Order > body.BisqueMax.Order && (body.Mature is null || cone.Order <= body.Mature.Max.Order))
        {
            // Above the range of the body altogether is the business of BodyOverRule.
            Hot(c, body, judgement);
        }
    }

    /// <summary>True when a bisque to this cone leaves the body as good as mature, so that it takes no glaze.</summary>
    internal static bool IsTooTight(LoadTables tables, Body body, PotterCone cone)
    {
        if (body.Mature is not { } mature || cone.Order <= body.BisqueMax.Order) return false;
        if (cone.StepsTo(mature.Best) < (int)tables.Figure(LoadRuleIds.BisqueBelowMaturity)) return true;
        // Of bodies whose bisque lies clear of their maturity, as that of all stoneware and porcelain does.
        return body.BisqueMax.IsBelow(mature.Min)
            && (cone.StepsTo(mature.Min) <= TooNear || (IsFarAbove(body, cone) && cone.StepsTo(mature.Min) <= Far));
    }

    /// <summary>True when a bisque to this cone lies so far above the range of the body that it takes glaze badly.</summary>
    internal static bool IsFarAbove(Body body, PotterCone cone) => body.BisqueMax.StepsTo(cone) > TooFarAbove;

    /// <summary>The bisque that the body wants.</summary>
    internal static Message BisqueAt(Body body) =>
        Message.Of("loads.bisque-at", ("min", body.BisqueMin.Text), ("max", body.BisqueMax.Text));

    private static void Hot(PieceCase c, Body body, Judgement judgement)
    {
        var cone = c.Firing.Cone;
        if (IsTooTight(c.Tables, body, cone))
        {
            judgement.Find(ReasonCode.BodyOverfired, ReasonSeverity.Refuse)?.Because(LoadRuleIds.BisqueBelowMaturity, body,
                Message.Of(
                    "loads.bisque-too-tight",
                    ("cone", cone.Text), ("body", body.Name), ("min", body.BisqueMin.Text), ("max", body.BisqueMax.Text)),
                BisqueAt(body));
        }
        else
        {
            var slightly = body.BisqueMax.StepsTo(cone) <= Slightly && body.Mature is { } mature && cone.StepsTo(mature.Min) >= Far;
            judgement.Find(ReasonCode.BodyOverfired, slightly ? ReasonSeverity.Note : ReasonSeverity.Review)?.Because(
                LoadRuleIds.BisqueRange, body,
                Message.Of(
                    "loads.bisque-hot",
                    ("cone", cone.Text), ("body", body.Name), ("min", body.BisqueMin.Text), ("max", body.BisqueMax.Text)),
                BisqueAt(body));
        }
    }
}
