using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>Lustre, enamel and decals: on glaze-fired ware only, in their own firing, the hottest first.</summary>
internal sealed class OverglazeRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } = [LoadRuleIds.OverglazeOnGlaze, LoadRuleIds.HottestFirst];

    public void Judge(PieceCase c, Judgement judgement)
    {
        Coat? lustre = null, hotter = null;
        foreach (var item in c.Piece.Coats)
        {
            var coat = item.Coat;
            if (!coat.IsOverglaze) continue;
            if (coat.Kind == CoatKind.Lustre) lustre ??= coat;
            else hotter ??= coat;
            if (c.Firing.Kind != FiringKind.Overglaze) BurnsOff(c, coat, judgement);
        }

        if (c.Firing.Kind == FiringKind.Overglaze && lustre is not null && hotter is not null)
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Review)?.Because(LoadRuleIds.HottestFirst, hotter,
                Message.Of("loads.hottest-overglaze-first", ("hotter", hotter.Name), ("lustre", lustre.Name)),
                Message.Of(
                    "loads.overglaze-then-lustre",
                    ("hotter", hotter.Name), ("range", hotter.Range), ("lustreRange", lustre.Range)));
        }
    }

    private static void BurnsOff(PieceCase c, Coat coat, Judgement judgement)
    {
        var needs = c.Firing.Needs;
        judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Refuse)?.Because(LoadRuleIds.OverglazeOnGlaze, coat,
            Message.Of("loads.overglaze-burns-off", ("coat", coat.NameFirst), ("kind", needs.Kind), ("firing", needs.Name)),
            c.Piece.State == PieceState.Bisqued
                ? Message.Of("loads.glaze-then-overglaze", ("range", coat.Range))
                : Message.Of("loads.finish-then-overglaze", ("range", coat.Range)));
    }
}
