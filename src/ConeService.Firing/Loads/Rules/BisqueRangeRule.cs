using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>A bisque below the range of the body leaves it soft and full of carbon, above it too tight to take glaze.</summary>
internal sealed class BisqueRangeRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into)
    {
        if (c.Firing.Kind != FiringKind.Bisque || c.Piece.Body is not { } body || c.Piece.State >= PieceState.Bisqued) return;
        var cone = c.Firing.Cone;
        if (cone.IsBelow(body.BisqueMin))
        {
            into.Add(ReasonCode.BodyUnderfired, ReasonSeverity.Review, LoadRuleIds.BisqueRange, body,
                $"Cone {cone} is a cool bisque for {body.Name}, which wants cone {body.BisqueMin} to {body.BisqueMax}: the ware stays soft, and carbon left in the clay comes out through the glaze as pinholes.",
                $"Bisque it at cone {body.BisqueMin} to {body.BisqueMax}.");
        }
        else if (cone.Order > body.BisqueMax.Order && (body.Mature is null || cone.Order <= body.Mature.Max.Order))
        {
            // Above the range of the body altogether is the business of BodyOverRule.
            var tight = body.Mature is { } mature && cone.StepsTo(mature.Best) < (int)c.Book.Figure(LoadRuleIds.BisqueBelowMaturity);
            into.Add(ReasonCode.BodyOverfired, tight ? ReasonSeverity.Refuse : ReasonSeverity.Review, tight ? LoadRuleIds.BisqueBelowMaturity : LoadRuleIds.BisqueRange, body,
                $"Cone {cone} is a hot bisque for {body.Name}, which wants cone {body.BisqueMin} to {body.BisqueMax}: {(tight ? "it is as good as glaze fired there and will not take glaze" : "it takes up little glaze afterwards")}.",
                $"Bisque it at cone {body.BisqueMin} to {body.BisqueMax}.");
        }
    }
}
