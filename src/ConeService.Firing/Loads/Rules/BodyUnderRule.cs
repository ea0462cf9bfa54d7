using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// A body below its range stays porous, weak and leaky and crazes later. It harms nobody in the kiln, so whoever fires
/// decides; for food it is refused. A body that its own bisque has matured is not made worse by a cooler glaze fire.
/// </summary>
internal sealed class BodyUnderRule : IPieceRule
{
    private const int WellBelowBest = 1;

    public void Judge(PieceCase c, ReasonSink into)
    {
        if (c.Piece.Body is not { Mature: { } mature } body || c.Piece.State == PieceState.GlazeFired) return;
        if (c.Firing.Kind is FiringKind.Bisque or FiringKind.Overglaze or FiringKind.Raku or FiringKind.Pit or FiringKind.Saggar) return;
        if (body.MaturesInBisque && c.Piece.State == PieceState.Bisqued) return;
        var (cone, food) = (c.Firing.Cone, c.Piece.Use == PieceUse.Food);
        if (cone.IsBelow(mature.Min))
        {
            into.Add(ReasonCode.BodyUnderfired, food ? ReasonSeverity.Refuse : ReasonSeverity.Review, LoadRuleIds.BodyBelowRange, body,
                $"{body.Capital} is not mature at cone {cone}: it needs {mature}, {BodyOverRule.Cones(cone.StepsTo(mature.Min))} hotter at least. It stays porous and weak, leaks, and its glaze crazes later. {body.Underfired}",
                $"Fire it at {mature}, best at {mature.Best}; at cone {cone} use a clay made for it.");
        }
        else if (cone.StepsTo(mature.Best) > WellBelowBest)
        {
            into.Add(ReasonCode.BodyUnderfired, food ? ReasonSeverity.Review : ReasonSeverity.Note, LoadRuleIds.BodyBelowBest, body,
                $"Cone {cone} is within the range of {body.Name}, but {BodyOverRule.Cones(cone.StepsTo(mature.Best))} below its best, {mature.Best}: it takes up more water there, and the glaze may craze later.",
                $"Fire it nearer to cone {mature.Best}, or try a glass of water in it for a night before it is used.", withinRange: true);
        }
    }
}
