using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// What the ware must not be used for. Where the caller says food it weighs; where nothing is said it is a note. No verdict
/// calls ware fit for food: only a leach test tells, and every piece for food says so.
/// </summary>
internal sealed class FoodRule : IPieceRule
{
    private static readonly Message OnlyLeachTest = Message.Of("loads.only-leach-test");
    private static readonly Message OnlyLeachTestOfBare = Message.Of("loads.only-leach-test-of-bare");

    public IReadOnlyList<string> RestsOn { get; } =
    [
        LoadRuleIds.SmokedNotForFood, LoadRuleIds.FoodNeedsDenseWare,
        LoadRuleIds.OverglazeAndFood, LoadRuleIds.LeadNotForFood,
    ];

    public void Judge(PieceCase c, Judgement judgement)
    {
        var food = c.Piece.Use == PieceUse.Food;
        if (c.Firing.Kind != FiringKind.Bisque) Firing(c, food, judgement);
        if (c.Firing.Kind != FiringKind.Bisque && food) Body(c, judgement);
        foreach (var item in c.Piece.Coats) Coat(c, item, food, judgement);
        if (food)
        {
            judgement.Find(ReasonCode.LeachTestTells, ReasonSeverity.Note)?.Because(
                LoadRuleIds.FoodNeedsDenseWare, null, HasGlaze(c) ? OnlyLeachTest : OnlyLeachTestOfBare);
        }
    }

    // Vapour, ash and what nobody knows count as glaze.
    private static bool HasGlaze(PieceCase c) =>
        c.IsGlazed || c.Firing.Kind is FiringKind.Salt or FiringKind.Soda or FiringKind.Wood
        || c.Piece.State == PieceState.GlazeFired
        || c.Piece.Unknown.Any(u => u.What == UnknownAs.Coat)
        || c.Piece.Coats.Any(x => x.Coat.Kind is not (CoatKind.Underglaze or CoatKind.Slip or CoatKind.TerraSigillata));

    private static void Firing(PieceCase c, bool food, Judgement judgement)
    {
        var needs = c.Firing.Needs;
        if (needs.Row.Food == WareFood.NotForFood)
        {
            judgement.Find(ReasonCode.NotForFood, food ? ReasonSeverity.Refuse : ReasonSeverity.Note)?.Because(
                LoadRuleIds.SmokedNotForFood, null,
                Message.Of("loads.smoked-not-for-food", ("kind", needs.Kind), ("firing", needs.Name)),
                food ? Message.Of("loads.book-glaze-firing-for-food") : null);
        }
        else if (needs.Row.Food == WareFood.WithLinerGlaze && food && !c.IsGlazedInside)
        {
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Review)?.Because(LoadRuleIds.FoodNeedsDenseWare, null,
                Message.Of("loads.vapour-without-liner"), Message.Of("loads.glaze-inside"));
        }
    }

    private static void Body(PieceCase c, Judgement judgement)
    {
        if (c.Firing.Needs.Row.Food == WareFood.NotForFood) return;
        if (c.Piece.Body is { HoldsWater: HoldsWater.Porous } porous)
        {
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Refuse)?.Because(LoadRuleIds.FoodNeedsDenseWare, porous,
                Message.Of("loads.body-porous", ("body", porous.NameFirst)), Message.Of("loads.dense-clay-or-decoration"));
        }
        else if (c.Piece.Body is { HoldsWater: HoldsWater.WhenGlazed } body && !c.IsGlazedInside
            && c.Firing.Kind != FiringKind.Overglaze)
        {
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Review)?.Because(LoadRuleIds.FoodNeedsDenseWare, body,
                Message.Of("loads.body-porous-unglazed", ("body", body.NameFirst)), Message.Of("loads.glaze-food-surface"));
        }

        // Dense by itself, and yet its glazes are known to craze.
        if (c.IsGlazedInside && c.Piece.Body is { HoldsWater: HoldsWater.WhenMature } dense
            && dense.Cautions.Contains(LoadCautionIds.Crazed))
        {
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Review)?.Because(LoadRuleIds.FoodNeedsDenseWare, dense,
                Message.Of("loads.glazes-craze-on-body", ("body", dense.Name)), Message.Of("loads.glaze-made-for-body"));
        }

        if (c.IsGlazedInside || c.Firing.Kind is FiringKind.Overglaze or FiringKind.Salt or FiringKind.Soda) return;
        foreach (var item in c.Piece.Coats)
        {
            if (item.Where == CoatWhere.Outside) continue;
            if (item.Coat.Kind is not (CoatKind.Underglaze or CoatKind.Slip or CoatKind.TerraSigillata)) continue;
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Review)?.Because(LoadRuleIds.FoodNeedsDenseWare, item.Coat,
                Message.Of("loads.coat-alone-rough", ("coat", item.Coat.NameFirst)), Message.Of("loads.glaze-over-it"));
        }
    }

    private static void Coat(PieceCase c, CoatOnPiece item, bool food, Judgement judgement)
    {
        var coat = item.Coat;
        // On the outside it is where it belongs, as far as food goes.
        var touches = food && item.Where != CoatWhere.Outside;
        if (coat.IsMetallic && coat.IsOverglaze && c.Firing.Kind == FiringKind.Overglaze)
        {
            judgement.Find(ReasonCode.NotForFood, touches ? ReasonSeverity.Review : ReasonSeverity.Note)?.Because(
                LoadRuleIds.OverglazeAndFood, coat,
                Message.Of("loads.metal-film", ("coat", coat.NameFirst)),
                food ? Message.Of("loads.lustre-outside") : null);
        }
        else if (item.GivesOff.Has(Fume.Lead))
        {
            judgement.Find(ReasonCode.NotForFood, food ? ReasonSeverity.Refuse : ReasonSeverity.Review)?.Because(
                LoadRuleIds.LeadNotForFood, coat,
                Message.Of("loads.coat-holds-lead", ("coat", coat.NameFirst)), Message.Of("loads.lead-free-glaze"));
        }
        else if (food && c.Concerns(coat) && coat.Food == CoatFood.NotForFood && c.Firing.Needs.Row.Food != WareFood.NotForFood)
        {
            judgement.Find(ReasonCode.NotForFood, touches ? ReasonSeverity.Refuse : ReasonSeverity.Note)?.Because(
                LoadRuleIds.FoodNeedsDenseWare, coat,
                Message.Of("loads.coat-not-for-food", ("coat", coat.NameFirst)), Message.Of("loads.another-coat-for-food"));
        }
        else if (food && c.Concerns(coat) && coat.Food == CoatFood.NotOnFoodSurface)
        {
            judgement.Find(ReasonCode.NotForFood, touches ? ReasonSeverity.Review : ReasonSeverity.Note)?.Because(
                LoadRuleIds.OverglazeAndFood, coat,
                Message.Of("loads.coat-not-on-food-surface", ("coat", coat.NameFirst)), Message.Of("loads.coat-outside"));
        }
    }
}
