using ConeService.Data;
using ConeService.Firing.Loads.Rules;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>The whole cones at which a piece could be accepted: outside the ranges of body and coats none is tried.</summary>
internal static class FiringSpan
{
    /// <summary>The steps, ends included; none where the first lies above the last.</summary>
    public static (int From, int To) Of(Piece piece, FiringNeeds needs)
    {
        // The cones of a kind of firing bound the menu, where nobody says what is fired; what a studio offers it fires.
        var (from, to) = (int.MinValue, int.MaxValue);
        if (piece.Body is { } body && needs.Row.Id == FiringKind.Bisque)
        {
            from = Math.Max(from, body.BisqueMin.Step - BisqueRangeRule.Slightly);
            to = Math.Min(to, body.BisqueMax.Step + BisqueRangeRule.Slightly);
        }

        if (piece.Body is { Mature: { } mature }) to = Math.Min(to, mature.Max.Step);
        foreach (var item in piece.Coats)
        {
            if (!item.Coat.Melts && !item.Coat.IsOverglaze) continue;
            // In an overglaze firing the glaze below was fired before.
            if (needs.Row.Id == FiringKind.Overglaze && !item.Coat.IsOverglaze) continue;
            // What was fired before may stay below its range.
            if (!item.IsFired || item.WasUnderfired) from = Math.Max(from, item.Coat.Min.Step);
            if (item.Coat.Max is { } max) to = Math.Min(to, max.Step);
        }

        return (from, to);
    }
}
