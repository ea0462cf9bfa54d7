using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>A salt or soda skin forms in its own firing only.</summary>
internal sealed class VapourCoatRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into)
    {
        foreach (var item in c.Piece.Coats)
        {
            var coat = item.Coat;
            if (coat.Kind != CoatKind.Vapour || coat.FiredIn.Has(c.Firing.Kind)) continue;
            var near = c.Firing.Kind is FiringKind.Salt or FiringKind.Soda;
            into.Add(ReasonCode.VapourKilnOnly, near ? ReasonSeverity.Review : ReasonSeverity.Refuse, LoadRuleIds.VapourKiln, coat,
                $"{coat.Capital} forms from the vapour in a {coat.FiredIn} firing; this is {c.Firing.Needs.AName}.", $"Book a {coat.FiredIn} firing in a vapour kiln at {coat.Range}.");
        }
    }
}
