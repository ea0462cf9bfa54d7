using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>
/// What the ware must not be used for. Where the caller says food it weighs; where nothing is said it is a note. No verdict
/// calls ware fit for food: only a leach test tells.
/// </summary>
internal sealed class FoodRule : IPieceRule
{
    public void Judge(PieceCase c, ReasonSink into)
    {
        var food = c.Piece.Use == PieceUse.Food;
        if (c.Firing.Kind != FiringKind.Bisque && c.Piece.Use != PieceUse.Decorative) Firing(c, food, into);
        if (c.Firing.Kind != FiringKind.Bisque && food) Body(c, into);
        foreach (var item in c.Piece.Coats) Coat(c, item, food, into);
    }

    private static void Firing(PieceCase c, bool food, ReasonSink into)
    {
        if (c.Firing.Needs.Row.Food == WareFood.NotForFood)
        {
            into.Add(ReasonCode.NotForFood, food ? ReasonSeverity.Refuse : ReasonSeverity.Note, LoadRuleIds.SmokedNotForFood, null,
                $"Ware from {c.Firing.Needs.AName} stays porous, is not watertight, and is not for food or drink.", $"{(food ? "For food book a glaze firing, with a clay and a glaze for it." : "")}");
        }
        else if (c.Firing.Needs.Row.Food == WareFood.WithLinerGlaze && food && !c.IsGlazed)
        {
            into.Add(ReasonCode.NotForFood, ReasonSeverity.Review, LoadRuleIds.FoodNeedsDenseWare, null,
                $"Vapour hardly reaches the inside of a pot: for food it needs a liner glaze.", $"Glaze the inside with a liner for this cone.");
        }
    }

    private static void Body(PieceCase c, ReasonSink into)
    {
        if (c.Piece.Body is not { } body || c.Firing.Needs.Row.Food == WareFood.NotForFood) return;
        if (body.HoldsWater == HoldsWater.Porous)
        {
            into.Add(ReasonCode.NotForFood, ReasonSeverity.Refuse, LoadRuleIds.FoodNeedsDenseWare, body,
                $"{body.Capital} is porous and not to be relied on to hold food or drink, even glazed.", $"Make it of a clay that becomes dense, or use it for decoration.");
        }
        else if (body.HoldsWater == HoldsWater.WhenGlazed && !c.IsGlazed && c.Firing.Kind != FiringKind.Overglaze)
        {
            into.Add(ReasonCode.NotForFood, ReasonSeverity.Review, LoadRuleIds.FoodNeedsDenseWare, body,
                $"{body.Capital} stays porous and this piece has no glaze: it sweats and takes up what is in it.", $"Glaze all that touches food.");
        }
    }

    private static void Coat(PieceCase c, CoatOnPiece item, bool food, ReasonSink into)
    {
        var coat = item.Coat;
        if (coat.IsMetallic && coat.IsOverglaze && c.Firing.Kind == FiringKind.Overglaze)
        {
            into.Add(ReasonCode.NotForFood, food ? ReasonSeverity.Review : ReasonSeverity.Note, LoadRuleIds.OverglazeAndFood, coat,
                $"{coat.Capital} leaves a metal film: the piece is not for the microwave, and the film not where food touches unless certified.", $"{(food ? "Keep the lustre to the outside, away from the rim." : "")}");
        }
        else if (item.GivesOff.Has(Fume.Lead))
        {
            into.Add(ReasonCode.NotForFood, food ? ReasonSeverity.Refuse : ReasonSeverity.Review, LoadRuleIds.LeadNotForFood, coat,
                $"{coat.Capital} holds lead: it is not for food ware and not for schools.", $"Use a lead-free glaze for the same cone.");
        }
        else if (food && c.Judges(coat) && coat.Food == CoatFood.NotForFood && c.Firing.Needs.Row.Food != WareFood.NotForFood)
        {
            into.Add(ReasonCode.NotForFood, ReasonSeverity.Refuse, LoadRuleIds.FoodNeedsDenseWare, coat,
                $"{coat.Capital} is not for ware that touches food.", $"Use another coat where food touches, and have it leach tested.");
        }
        else if (food && c.Judges(coat) && coat.Food == CoatFood.NotOnFoodSurface)
        {
            into.Add(ReasonCode.NotForFood, ReasonSeverity.Review, LoadRuleIds.OverglazeAndFood, coat,
                $"{coat.Capital} does not go where food touches unless it is certified for it.", $"Keep it to the outside, away from the rim.");
        }
    }
}
