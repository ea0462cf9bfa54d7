using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>Lustre, enamel and decals: on glaze-fired ware only, in their own firing, the hottest first.</summary>
internal sealed class OverglazeRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into)
    {
        Coat? lustre = null, hotter = null;
        foreach (var item in c.Piece.Coats)
        {
            var coat = item.Coat;
            if (!coat.IsOverglaze) continue;
            if (coat.Kind == CoatKind.Lustre) lustre ??= coat;
            else hotter ??= coat;
            if (c.Firing.Kind != FiringKind.Overglaze)
            {
                into.Add(ReasonCode.WrongOrder, ReasonSeverity.Refuse, LoadRuleIds.OverglazeOnGlaze, coat,
                    $"{coat.Capital} burns off in {c.Firing.Needs.AName}: it goes on fired glaze, into a firing of its own.", $"Finish the {(c.Piece.State == PieceState.Bisqued ? "glaze firing" : "firings")} without it, then book an overglaze firing at {coat.Range}.");
            }
        }

        if (c.Firing.Kind == FiringKind.Overglaze && lustre is not null && hotter is not null)
        {
            into.Add(ReasonCode.WrongOrder, ReasonSeverity.Review, LoadRuleIds.HottestFirst, hotter,
                $"The piece carries {hotter.Name} and {lustre.Name}: the hotter goes first, and lustre and gold come last, in a firing of their own.", $"Fire {hotter.Name} at {hotter.Range}, then put the lustre on and fire it at {lustre.Range}.");
        }
    }
}
