using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>What pieces do to each other in one firing: vapours colour neighbours.</summary>
internal static class Neighbours
{
    /// <summary>Glazes best this many whole cones apart need no word about their places.</summary>
    public const int ConesApart = 1;

    /// <summary>The best cone of the piece's glaze, the most fluid where there are several; null for bare ware.</summary>
    public static int? BestStep(Piece piece)
    {
        int? best = null;
        foreach (var item in piece.Coats)
        {
            if (item is { IsFired: false, Coat: { Melts: true, Best: { } cone } } && (best is null || cone.Step < best)) best = cone.Step;
        }

        return best;
    }

    /// <summary>What the piece gives off in this firing that reaches others.</summary>
    public static EnumSet<Fume> GivenOff(Piece piece, PlannedFiring firing)
    {
        if (!firing.MeltsGlazes) return default;
        var all = default(EnumSet<Fume>);
        foreach (var item in piece.Coats) all = all.With(item.GivesOff);
        return all.Common(Travelling(firing));
    }

    /// <summary>What spoils the piece in this firing: its colour, or its use for food.</summary>
    public static EnumSet<Fume> SpoiledBy(Piece piece, PlannedFiring firing)
    {
        if (!firing.MeltsGlazes) return default;
        var all = piece.Use == PieceUse.Food ? Poisonous : default;
        foreach (var item in piece.Coats) all = all.With(item.SpoiledBy);
        return all.Common(Travelling(firing));
    }

    /// <summary>What must not settle on ware for food.</summary>
    public static EnumSet<Fume> Poisonous { get; } = new([Fume.Lead, Fume.Cadmium, Fume.Selenium]);

    // Copper travels in reduction; cadmium and selenium burn out above low fire, which ends at cone 01.
    private static EnumSet<Fume> Travelling(PlannedFiring firing) =>
        Always.With(firing.IsReduction ? InReduction : default).With(HasZero(firing.Cone) ? default : AboveLowFire);

    private static bool HasZero(PotterCone cone) => cone.Text[0] == '0';

    private static readonly EnumSet<Fume> Always = new([Fume.Chrome, Fume.Lead]);
    private static readonly EnumSet<Fume> InReduction = new([Fume.Copper]);
    private static readonly EnumSet<Fume> AboveLowFire = new([Fume.Cadmium, Fume.Selenium]);
}
