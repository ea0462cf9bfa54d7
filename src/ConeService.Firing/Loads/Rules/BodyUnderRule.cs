using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// A body below its range stays porous, weak and leaky and crazes later. It harms nobody in the kiln, so whoever fires
/// decides; for food it is refused. A body that its own bisque has matured is not made worse by a cooler glaze fire.
/// </summary>
internal sealed class BodyUnderRule : IPieceRule
{
    private const int WellBelowBest = 1;

    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.BodyBelowRange, LoadRuleIds.BodyBelowBest];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Piece.Body is not { Mature: { } mature } body || c.Piece.State == PieceState.GlazeFired) return;
        if (c.Firing.Kind is FiringKind.Bisque or FiringKind.Overglaze or FiringKind.Raku or FiringKind.Pit or FiringKind.Saggar) return;
        if (body.MaturesInBisque && c.Piece.State == PieceState.Bisqued) return;
        // What has been at its maturity once is not made immature by a cooler fire.
        if (c.Piece.History.Hottest is { } had && !had.IsBelow(mature.Min)) return;
        var (cone, food) = (c.Firing.Cone, c.Piece.Use == PieceUse.Food);
        if (cone.IsBelow(mature.Min))
        {
            var severity = food ? ReasonSeverity.Refuse : ReasonSeverity.Review;
            judgement.Find(ReasonCode.BodyUnderfired, severity)?.Because(LoadRuleIds.BodyBelowRange, body,
                Message.Of(
                    "loads.body-underfired",
                    ("body", body.NameFirst), ("cone", cone.Text), ("range", mature.Spoken), ("steps", cone.StepsTo(mature.Min)),
                    ("underfired", body.Underfired)),
                Message.Of("loads.fire-body-hotter", ("range", mature.Spoken), ("best", mature.Best.Text), ("cone", cone.Text)));
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
}
