using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>Nothing damp goes in: steam bursts the ware and spoils its neighbours. Thick greenware needs longer candling.</summary>
internal sealed class DrynessRule : IPieceRule
{
    /// <summary>Above this, mm, a wall counts as thick; candle-thick-walls-longer names it in words.</summary>
    private const decimal Thick = 12;

    /// <summary>Of candle-thick-walls-longer: an hour for each such step of thickness, mm.</summary>
    private const decimal StepMillimetres = 3;

    public void Judge(PieceCase c, ReasonSink into)
    {
        if (c.Piece.State < PieceState.BoneDry)
        {
            var overglaze = c.Firing.Kind == FiringKind.Overglaze;
            into.Add(ReasonCode.NotDry, ReasonSeverity.Refuse, overglaze ? LoadRuleIds.NothingRawWithOverglaze : LoadRuleIds.BoneDry, null,
                $"The piece is {(c.Piece.State == PieceState.Wet ? "wet" : "leather-hard")}: its water turns to steam and bursts it{(overglaze ? ", and the damp spoils the overglaze around it" : ", and the pieces go through the load")}.",
                $"Dry it until it no longer feels cold to the cheek, then book {(c.Firing.Needs.Takes.Has(PieceState.BoneDry) ? "this firing again" : "a bisque")}.");
        }
        else if (c.Piece.State == PieceState.BoneDry && c.Piece.Thickness > Thick && c.Firing.Needs.Takes.Has(PieceState.BoneDry))
        {
            ThickWall(c, c.Piece.Thickness.Value, into);
        }
    }

    private static void ThickWall(PieceCase c, decimal thickness, ReasonSink into)
    {
        var very = thickness > c.Book.Figure(LoadRuleIds.VeryThick);
        var hours = decimal.Ceiling((thickness - Thick) / StepMillimetres) * c.Book.Figure(LoadRuleIds.ThickWall);
        into.Add(ReasonCode.NotDry, very ? ReasonSeverity.Review : ReasonSeverity.Note, very ? LoadRuleIds.VeryThick : LoadRuleIds.ThickWall, null,
            $"A wall of {thickness} mm dries slowly: its heart may be damp when its skin is dry.",
            $"Candle at 80 to 95 °C, {hours} h longer for the thickness{(very ? "; whoever fires looks at it first" : "")}.");
    }
}
