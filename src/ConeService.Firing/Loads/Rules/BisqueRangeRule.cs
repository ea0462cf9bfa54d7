using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>A bisque below the range of the body leaves it soft and full of carbon, above it too tight to take glaze.</summary>
internal sealed class BisqueRangeRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.BisqueRange, LoadRuleIds.BisqueBelowMaturity];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Firing.Kind != FiringKind.Bisque || c.Piece.Body is not { } body || c.Piece.State >= PieceState.Bisqued) return;
        var cone = c.Firing.Cone;
        if (cone.IsBelow(body.BisqueMin))
        {
            judgement.Find(ReasonCode.BodyUnderfired, ReasonSeverity.Review)?.Because(LoadRuleIds.BisqueRange, body,
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

    /// <summary>The bisque that the body wants.</summary>
    internal static Message BisqueAt(Body body) =>
        Message.Of("loads.bisque-at", ("min", body.BisqueMin.Text), ("max", body.BisqueMax.Text));

    private static void Hot(PieceCase c, Body body, Judgement judgement)
    {
        var cone = c.Firing.Cone;
        if (body.Mature is { } mature && cone.StepsTo(mature.Best) < (int)c.Tables.Figure(LoadRuleIds.BisqueBelowMaturity))
        {
            judgement.Find(ReasonCode.BodyOverfired, ReasonSeverity.Refuse)?.Because(LoadRuleIds.BisqueBelowMaturity, body,
                Message.Of(
                    "loads.bisque-too-tight",
                    ("cone", cone.Text), ("body", body.Name), ("min", body.BisqueMin.Text), ("max", body.BisqueMax.Text)),
                BisqueAt(body));
        }
        else
        {
            judgement.Find(ReasonCode.BodyOverfired, ReasonSeverity.Review)?.Because(LoadRuleIds.BisqueRange, body,
                Message.Of(
                    "loads.bisque-hot",
                    ("cone", cone.Text), ("body", body.Name), ("min", body.BisqueMin.Text), ("max", body.BisqueMax.Text)),
                BisqueAt(body));
        }
    }
}
