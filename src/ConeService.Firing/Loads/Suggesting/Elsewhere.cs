using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Loads.Rules;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>
/// What a suggested firing has that the one booked lacks, beside its cone and atmosphere: another kiln, and what it must be able to
/// do, or a load without the vapours that spoil the piece.
/// </summary>
internal sealed class Elsewhere(LoadTables tables, PieceJudge judge, Load load, IReadOnlyList<PieceClass> classes)
{
    /// <summary>What differs, for the middle of a sentence; null where kind, cone and atmosphere are all that does.</summary>
    /// <param name="pieces">The pieces.</param>
    /// <param name="item">The firing that is suggested.</param>
    /// <param name="kiln">In which kiln of the studio; null for any that suits.</param>
    public Message? Of(PieceClass pieces, MenuItem item, Kiln? kiln) => (Kiln(pieces.First, item, kiln), Load(pieces, item.Firing)) switch
    {
        ({ } where, { } without) => Message.Of("loads.where-and-without", ("where", where), ("without", without)),
        var (where, without) => where ?? without,
    };

    private Message? Kiln(Piece piece, MenuItem item, Kiln? kiln)
    {
        if (ReferenceEquals(kiln, load.Kiln)) return null;
        if (kiln is { Id: { } id }) return Message.Of("loads.in-kiln-named", ("id", id));
        var (firing, here) = (item.Firing, load.Kiln);
        if (kiln is null && judge.Accepts(piece, here, firing)) return null;
        var heat = firing.Needs.Heats.Has(here.Heat) && !KilnRule.HarmsElements(firing.Kind, here.Heat);
        var holds = here.Atmospheres.Has(firing.Atmosphere)
            && !(firing.IsReduction && tables.Heat(here.Heat).Reduction == KilnReduction.HarmsElements);
        var reaches = firing.Cone.Order <= here.MaxOrder && KilnSuitability.IsHotEnough(tables, here, firing.Cone);
        // Asked in the kiln that suits, with the room of this one.
        var fits = judge.Accepts(
            piece, item.Kiln with { Interior = here.Interior, IsRound = here.IsRound, Shelves = here.Shelves }, firing);
        return Message.Of(
            "loads.in-another-kiln",
            ("larger", fits ? "no" : "yes"),
            ("kept", heat ? "no" : firing.Kind is FiringKind.Salt or FiringKind.Soda ? "vapour"
                : here.Heat == KilnHeat.Vapour ? "plain" : "heats"),
            ("heats", new EnumSet<KilnHeat>(KilnSuitability.Heats(tables, firing.Needs, firing.Atmosphere)).Spoken),
            ("cone", reaches ? "none" : firing.Cone.Text),
            ("atmosphere", holds ? "any" : EnumWords.Word(firing.Atmosphere)));
    }

    private Message? Load(PieceClass pieces, PlannedFiring firing)
    {
        var booked = load.Firing;
        if (firing.Kind != booked.Kind || firing.Cone != booked.Cone || firing.Atmosphere != booked.Atmosphere) return null;
        var given = default(EnumSet<Fume>);
        foreach (var other in classes)
        {
            if (other != pieces && other.Verdict != Contract.Loads.Verdict.Refuse)
                given = given.With(Neighbours.GivenOff(other.First, booked));
        }

        var spoils = Neighbours.SpoiledBy(pieces.First, booked).Common(given);
        return spoils.IsEmpty ? null : Message.Of("loads.in-load-without", ("fumes", spoils.Spoken));
    }
}
