using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads.Rules;

/// <summary>Nothing damp goes in: steam bursts the ware and spoils its neighbours. Thick greenware needs longer candling.</summary>
internal sealed class DrynessRule : IPieceRule
{
    /// <summary>Above this, mm, a wall counts as thick; candle-thick-walls-longer names it in words.</summary>
    private const decimal Thick = 12;

    /// <summary>Of candle-thick-walls-longer: an hour for each such step of thickness, mm.</summary>
    private const decimal StepMillimetres = 3;

    public IReadOnlyList<string> RestsOn { get; } =
    [
        LoadRuleIds.NothingRawWithOverglaze, LoadRuleIds.BoneDry,
        LoadRuleIds.VeryThick, LoadRuleIds.ThickWall,
    ];

    public void Judge(PieceCase c, Judgement judgement)
    {
        if (c.Piece.State < PieceState.BoneDry) Damp(c, judgement);
        else if (c.Piece.State == PieceState.BoneDry && c.Piece.Thickness > Thick && c.Firing.Needs.Takes.Has(PieceState.BoneDry))
            ThickWall(c, c.Piece.Thickness.Value, judgement);
    }

    private static void Damp(PieceCase c, Judgement judgement)
    {
        var overglaze = c.Firing.Kind == FiringKind.Overglaze;
        var state = EnumWords.Word(c.Piece.State);
        judgement.Find(ReasonCode.NotDry, ReasonSeverity.Refuse)?.Because(
            overglaze ? LoadRuleIds.NothingRawWithOverglaze : LoadRuleIds.BoneDry, null,
            overglaze
                ? Message.Of("loads.damp-with-overglaze", ("state", state))
                : Message.Of("loads.damp", ("state", state)),
            c.Firing.Needs.Takes.Has(PieceState.BoneDry)
                ? Message.Of("loads.dry-and-book-again")
                : Message.Of("loads.dry-and-book-bisque"));
    }

    private static void ThickWall(PieceCase c, decimal thickness, Judgement judgement)
    {
        var very = thickness > c.Tables.Figure(LoadRuleIds.VeryThick);
        var hours = decimal.Ceiling((thickness - Thick) / StepMillimetres) * c.Tables.Figure(LoadRuleIds.ThickWall);
        judgement.Find(ReasonCode.NotDry, very ? ReasonSeverity.Review : ReasonSeverity.Note)?.Because(
            very ? LoadRuleIds.VeryThick : LoadRuleIds.ThickWall, null,
            Message.Of("loads.thick-wall", ("thickness", thickness)),
            very ? Message.Of("loads.candle-very-thick", ("hours", hours)) : Message.Of("loads.candle-thick", ("hours", hours)));
    }
}
