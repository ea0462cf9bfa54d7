using ConeService.Contract.Loads;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads what a piece has been through: its state follows from its firings, or is told, or is what this firing takes.</summary>
internal sealed class HistoryReader(LoadTables tables, FieldReader fields)
{
    /// <summary>
    /// The last of the states that a firing takes, but for a glaze fire, which is the first of bisqued ware before a refire.
    /// </summary>
    internal static PieceState StateTaken(PlannedFiring firing) =>
        firing.Needs.Takes.Has(PieceState.Bisqued) ? PieceState.Bisqued : firing.Needs.Row.Takes[0];

    /// <summary>The state of a piece and what is known of its firings.</summary>
    /// <param name="sent">The piece.</param>
    /// <param name="planned">The firing; null where that can't be read, so that all is refused anyway.</param>
    /// <param name="at">Pointer of the piece.</param>
    /// <param name="unknown">Takes a state that nobody told.</param>
    public (PieceState State, PieceHistory History) Read(
        PieceRequest sent, PlannedFiring? planned, string at, List<UnknownMaterial> unknown)
    {
        var said = fields.OptionalWord<PieceState>(sent.State, fields.At(at, "/state"));
        if (sent.EarlierFirings is null or [])
        {
            if (!sent.State.IsAbsent || planned is null) return (said ?? PieceState.Bisqued, PieceHistory.None);
            var taken = StateTaken(planned);
            unknown.Add(new(
                UnknownAs.State, "", [], Message.Of("loads.state-not-told", ("state", EnumWords.Word(taken)))));
            fields.Assumed.Add(new(fields.At(at, "/state"), EnumWords.Word(taken), Message.Of("loads.piece-state-assumed")));
            return (taken, PieceHistory.None);
        }

        if (sent.EarlierFirings.Count > LoadLimits.MostEarlierFirings)
        {
            fields.Add(FindingCodes.NumberOutOfRange, fields.At(at, "/earlierFirings"), null,
                Message.Of("loads.too-many-firings", ("firings", sent.EarlierFirings.Count)),
                [Message.Of("loads.firings-allowed", ("most", LoadLimits.MostEarlierFirings))]);
        }

        var kinds = new List<FiringKind>();
        PotterCone? hottest = null, bisque = null;
        var (first, whole) = (false, true);
        for (var i = 0; i < Math.Min(sent.EarlierFirings.Count, LoadLimits.MostEarlierFirings); i++)
        {
            var field = FieldReader.Item(fields.At(at, "/earlierFirings"), i);
            if (sent.EarlierFirings[i] is not { } earlier)
            {
                fields.Missing(field, [Message.Of("loads.earlier-firing-object")]);
                continue;
            }

            var kind = fields.Word<FiringKind>(earlier.FiringKind, fields.At(field, "/firingKind"));
            var cone = earlier.Cone.IsAbsent ? null : fields.Cone(earlier.Cone, fields.At(field, "/cone"));
            if (kind is null) continue;
            first |= tables.Kind(kind.Value).Row.FirstFire == YesNo.Yes;
            whole &= cone is not null;
            kinds.Add(kind.Value);
            hottest = Hotter(hottest, cone);
            if (kind == FiringKind.Bisque) bisque = Hotter(bisque, cone);
        }

        var state = PieceHistory.StateAfter(kinds) ?? said ?? PieceState.Bisqued;
        if (sent.State.IsAbsent)
            fields.Assumed.Add(new(fields.At(at, "/state"), EnumWords.Word(state), Message.Of("loads.state-from-firings")));
        return (state, new(hottest, bisque, said == state ? null : said) { IsWhole = first && whole });
    }

    private static PotterCone? Hotter(PotterCone? one, PotterCone? other) =>
        one is null || (other is not null && one.IsBelow(other)) ? other : one;
}
