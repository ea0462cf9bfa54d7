using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// Lustre, enamel and decals: on glaze-fired ware only, in their own firing, the hottest first, and below the cone at which the
/// glaze under them melts again.
/// </summary>
internal sealed class OverglazeRule : IPieceRule
{
    // Of glazes lustre-resinate: on earthenware 640 to 740 °C, which cone 018 just reaches.
    private const string HottestOnLowFire = "018";

    // Below cone 1 ware is low-fire.
    private const string NotLowFire = "1";

    public IReadOnlyList<string> RestsOn { get; } =
        [LoadRuleIds.OverglazeOnGlaze, LoadRuleIds.HottestFirst, LoadRuleIds.Refire, LoadRuleIds.GlazeAboveRange];

    public void Judge(PieceCase c, Judgement judgement)
    {
        CoatOnPiece? lustre = null, hotter = null;
        foreach (var item in c.Piece.Coats)
        {
            var coat = item.Coat;
            if (!coat.IsOverglaze) continue;
            if (coat.Kind == CoatKind.Lustre) lustre ??= item;
            else hotter ??= item;
            if (!coat.FiredIn.Has(c.Firing.Kind)) BurnsOff(c, coat, judgement);
            else if (!item.IsFired) OnGlaze(c, coat, judgement);
        }

        if (c.Firing.Kind != FiringKind.Overglaze || lustre is null || hotter is null || hotter.IsFired) return;
        if (lustre.IsFired) LustreFirst(hotter.Coat, lustre.Coat, judgement);
        else HottestFirst(hotter.Coat, lustre.Coat, judgement);
    }

    private static void HottestFirst(Coat hotter, Coat lustre, Judgement judgement) =>
        judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Review)?.Because(LoadRuleIds.HottestFirst, hotter,
            Message.Of("loads.hottest-overglaze-first", ("hotter", hotter.Name), ("lustre", lustre.Name)),
            Message.Of(
                "loads.overglaze-then-lustre",
                ("hotter", hotter.Name), ("range", hotter.Range), ("lustreRange", lustre.Range)));

    private static void LustreFirst(Coat hotter, Coat lustre, Judgement judgement) =>
        judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Review)?.Because(LoadRuleIds.HottestFirst, hotter,
            Message.Of("loads.lustre-fired-first", ("hotter", hotter.Name), ("lustre", lustre.Name)),
            Message.Of("loads.try-on-a-tile"));

    private static void OnGlaze(PieceCase c, Coat coat, Judgement judgement)
    {
        if (c.Piece.State != PieceState.GlazeFired) return;
        CoatOnPiece? glaze = null;
        foreach (var item in c.Piece.Coats)
        {
            if (item.IsFired && item.Coat.Melts && (glaze is null || item.Coat.Min.IsBelow(glaze.Coat.Min))) glaze = item;
        }

        if (glaze is not null && glaze.MeltsAt(c.Firing.Cone))
        {
            judgement.Find(ReasonCode.WrongOrder, ReasonSeverity.Review)?.Because(LoadRuleIds.Refire, glaze.Coat,
                Message.Of(
                    "loads.glaze-melts-again",
                    ("glaze", glaze.Coat.NameFirst), ("cone", c.Firing.Cone.Text), ("coat", coat.Name)),
                Message.Of("loads.below-the-glaze", ("range", coat.Range)));
        }
        else if (coat is { Kind: CoatKind.Lustre, IsMetallic: true } && !coat.Atmospheres.Has(Atmosphere.Reduction)
            && c.Tables.PotterScale.Of(HottestOnLowFire).IsBelow(c.Firing.Cone) && c.Firing.Cone.Order <= coat.Max?.Order
            && IsLowFire(c, glaze?.Coat))
        {
            judgement.Find(ReasonCode.GlazeOverfired, ReasonSeverity.Review)?.Because(LoadRuleIds.GlazeAboveRange, coat,
                Message.Of("loads.lustre-on-low-fire", ("cone", c.Firing.Cone.Text), ("coat", coat.Name)),
                Message.Of("loads.lustre-low-fire-at", ("min", coat.Min.Text), ("limit", HottestOnLowFire)));
        }
    }

    // The glaze tells, or where none is named the body.
    private static bool IsLowFire(PieceCase c, Coat? glaze) =>
        (glaze?.Best ?? c.Piece.Body?.Mature?.Best)?.IsBelow(c.Tables.PotterScale.Of(NotLowFire)) ?? false;

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
