using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// What the ware must not be used for. Where the caller says food it weighs; where nothing is said it is a note. No verdict
/// calls ware fit for food: only a leach test tells.
/// </summary>
internal sealed class FoodRule : IPieceRule
{
    public IReadOnlyList<string> RestsOn { get; } =
    [
        LoadRuleIds.SmokedNotForFood, LoadRuleIds.FoodNeedsDenseWare,
        LoadRuleIds.OverglazeAndFood, LoadRuleIds.LeadNotForFood,
    ];

    public void Judge(PieceCase c, Judgement judgement)
    {
        var food = c.Piece.Use == PieceUse.Food;
        if (c.Firing.Kind != FiringKind.Bisque && c.Piece.Use != PieceUse.Decorative) Firing(c, food, judgement);
        if (c.Firing.Kind != FiringKind.Bisque && food) Body(c, judgement);
        foreach (var item in c.Piece.Coats) Coat(c, item, food, judgement);
    }

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
        else if (needs.Row.Food == WareFood.WithLinerGlaze && food && !c.IsGlazed)
        {
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Review)?.Because(LoadRuleIds.FoodNeedsDenseWare, null,
                Message.Of("loads.vapour-without-liner"), Message.Of("loads.glaze-inside"));
        }
    }

    private static void Body(PieceCase c, Judgement judgement)
    {
        if (c.Piece.Body is not { } body || c.Firing.Needs.Row.Food == WareFood.NotForFood) return;
        if (body.HoldsWater == HoldsWater.Porous)
        {
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Refuse)?.Because(LoadRuleIds.FoodNeedsDenseWare, body,
                Message.Of("loads.body-porous", ("body", body.NameFirst)), Message.Of("loads.dense-clay-or-decoration"));
        }
        else if (body.HoldsWater == HoldsWater.WhenGlazed && !c.IsGlazed && c.Firing.Kind != FiringKind.Overglaze)
        {
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Review)?.Because(LoadRuleIds.FoodNeedsDenseWare, body,
                Message.Of("loads.body-porous-unglazed", ("body", body.NameFirst)), Message.Of("loads.glaze-food-surface"));
        }
    }

    private static void Coat(PieceCase c, CoatOnPiece item, bool food, Judgement judgement)
    {
        var coat = item.Coat;
        if (coat.IsMetallic && coat.IsOverglaze && c.Firing.Kind == FiringKind.Overglaze)
        {
            judgement.Find(ReasonCode.NotForFood, food ? ReasonSeverity.Review : ReasonSeverity.Note)?.Because(
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
        else if (food && c.Judges(coat) && coat.Food == CoatFood.NotForFood && c.Firing.Needs.Row.Food != WareFood.NotForFood)
        {
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Refuse)?.Because(LoadRuleIds.FoodNeedsDenseWare, coat,
                Message.Of("loads.coat-not-for-food", ("coat", coat.NameFirst)), Message.Of("loads.another-coat-for-food"));
        }
        else if (food && c.Judges(coat) && coat.Food == CoatFood.NotOnFoodSurface)
        {
            judgement.Find(ReasonCode.NotForFood, ReasonSeverity.Review)?.Because(LoadRuleIds.OverglazeAndFood, coat,
                Message.Of("loads.coat-not-on-food-surface", ("coat", coat.NameFirst)), Message.Of("loads.coat-outside"));
        }
    }
}
