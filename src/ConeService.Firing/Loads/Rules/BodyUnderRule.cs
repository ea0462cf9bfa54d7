using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// A body below its range stays porous, weak and leaky and crazes later. It harms nobody in the kiln, so whoever fires
/// decides; for food it is refused. A body that its own bisque has matured is not made worse by a cooler glaze fire; where all its
/// firings are told, that is known and not taken for granted.
/// </summary>
internal sealed class BodyUnderRule : IPieceRule
{
    private const int WellBelowBest = 1;

    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.BodyBelowRange, LoadRuleIds.BodyBelowBest];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Piece.Body is not { Mature: { } mature } body || c.Piece.WasMatured) return;
        // Of ware that was glaze fired its body was judged then, unless its firings tell that it never got its cone.
        var (history, fired) = (c.Piece.History, c.Piece.State == PieceState.GlazeFired);
        if (fired && !history.IsWhole) return;
        if (c.Firing.Kind is FiringKind.Bisque or FiringKind.Raku or FiringKind.Pit or FiringKind.Saggar) return;
        var (cone, food) = (c.Firing.Cone, c.Piece.Use == PieceUse.Food);
        if (c.Firing.Kind == FiringKind.Overglaze && !(fired && food)) return;
        if (cone.IsBelow(mature.Min))
        {
            var severity = food ? ReasonSeverity.Refuse : ReasonSeverity.Review;
            var found = judgement.Find(ReasonCode.BodyUnderfired, severity);
            if (history.IsWhole && history.Hottest is { } had && (fired || body.MaturesInBisque)) WasTooCool(c, body, mature, had, found);
            else
            {
                found?.Because(LoadRuleIds.BodyBelowRange, body,
                    Message.Of(
                        "loads.body-underfired",
                        ("body", body.NameFirst), ("cone", cone.Text), ("range", mature.Spoken), ("steps", cone.StepsTo(mature.Min)),
                        ("underfired", body.Underfired)),
                    Message.Of("loads.fire-body-hotter", ("range", mature.Spoken), ("best", mature.Best.Text), ("cone", cone.Text)));
            }
        }
        else if (cone.StepsTo(mature.Best) > WellBelowBest)
        {
            var severity = food ? ReasonSeverity.Review : ReasonSeverity.Note;
            judgement.Find(ReasonCode.BodyUnderfired, severity, withinRange: true)?.Because(LoadRuleIds.BodyBelowBest, body,
                Message.Of(
                    "loads.body-below-best",
                    ("cone", cone.Text), ("body", body.Name), ("steps", cone.StepsTo(mature.Best)), ("best", mature.Best.Text)),
                Message.Of("loads.fire-body-nearer-best", ("best", mature.Best.Text)));
        }
    }

    private static void WasTooCool(PieceCase c, Body body, ConeRange mature, PotterCone had, Judgement.Found? found) =>
        found?.Because(LoadRuleIds.BodyBelowRange, body,
            Message.Of(
                "loads.body-never-matured",
                ("body", body.NameFirst), ("was", had.Text), ("range", mature.Spoken), ("cone", c.Firing.Cone.Text),
                ("underfired", body.Underfired)),
            c.Piece.State == PieceState.Bisqued
                ? Message.Of("loads.wash-off-and-bisque-at", ("min", body.BisqueMin.Text), ("max", body.BisqueMax.Text))
                : Message.Of("loads.body-for-glaze-cone"));
}
