using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>A salt or soda skin forms in its own firing only.</summary>
internal sealed class VapourCoatRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.VapourKiln];

    public void Judge(PieceCase c, Judgement judgement)
    {
        foreach (var item in c.Piece.Coats)
        {
            var coat = item.Coat;
            if (coat.Kind != CoatKind.Vapour || coat.FiredIn.Has(c.Firing.Kind)) continue;
            var (needs, near) = (c.Firing.Needs, c.Firing.Kind is FiringKind.Salt or FiringKind.Soda);
            judgement.Find(ReasonCode.VapourKilnOnly, near ? ReasonSeverity.Review : ReasonSeverity.Refuse)?.Because(
                LoadRuleIds.VapourKiln, coat,
                Message.Of(
                    "loads.vapour-coat-elsewhere",
                    ("coat", coat.NameFirst), ("kinds", coat.FiredIn.Spoken), ("kind", needs.Kind), ("firing", needs.Name)),
                Message.Of("loads.book-vapour-firing", ("kinds", coat.FiredIn.Spoken), ("range", coat.Range)));
        }
    }
}
