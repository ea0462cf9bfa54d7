using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Judges what vapours of one piece do to others: to those that are spoiled, and to the load.</summary>
internal static class FumeJudge
{
    internal const int NamesInASentence = 3;

    /// <summary>Adds what one vapour does in this load.</summary>
    public static void Judge(
        LoadTables tables, Load load, IReadOnlyList<PieceClass> going, Fume fume, string rule, Judgement judgement)
    {
        var givers = going.Where(c => Neighbours.GivenOff(c.First, load.Firing).Has(fume)).ToList();
        var spoiled = going
            .Where(c => Neighbours.SpoiledBy(c.First, load.Firing).Has(fume))
            .Where(c => givers.Exists(g => g != c))
            .ToList();
        if (spoiled.Count == 0) return;
        foreach (var c in spoiled)
        {
            var others = givers.Where(g => g != c).ToList();
            c.Add(ReasonMaker.Make(
                tables, load.Firing, c.First, ReasonCode.FumesOnNeighbours, ReasonSeverity.Review, rule, Spoiled(c.First, fume),
                OnPiece(fume, Names(others), Number(others)),
                Message.Of("loads.fire-apart-from-fume", ("fume", EnumWords.Word(fume))),
                others: [.. Ids(others).Take(NamesInASentence)]));
        }

        judgement.Find(ReasonCode.FumesOnNeighbours, ReasonSeverity.Review)?.Because(rule, null,
            OnLoad(fume, Names(givers), Number(givers), Number(spoiled)), Message.Of("loads.split-load"));
    }

    private static Message OnPiece(Fume fume, Message pieces, int number) => fume == Fume.Chrome
        ? Message.Of("loads.chrome-on-piece", ("pieces", pieces), ("number", number))
        : Message.Of("loads.copper-on-piece", ("pieces", pieces), ("number", number));

    private static Message OnLoad(Fume fume, Message pieces, int number, int spoiled) => fume == Fume.Chrome
        ? Message.Of("loads.chrome-in-load", ("pieces", pieces), ("number", number), ("spoiled", spoiled))
        : Message.Of("loads.copper-in-load", ("pieces", pieces), ("number", number), ("spoiled", spoiled));

    private static Coat? Spoiled(Piece piece, Fume fume) => piece.Coats.FirstOrDefault(x => x.SpoiledBy.Has(fume))?.Coat;

    internal static Message Names(List<PieceClass> classes)
    {
        var ids = Ids(classes).ToList();
        return ids.Count <= NamesInASentence
            ? Message.Verbatim(string.Join(", ", ids))
            : Message.Of("loads.pieces-and-more", ("ids", ids[..NamesInASentence]), ("more", ids.Count - NamesInASentence));
    }

    internal static IEnumerable<string> Ids(List<PieceClass> classes) =>
        classes.SelectMany(c => c.Members).Select(m => m.Piece.Id).Order(StringComparer.Ordinal);

    internal static int Number(List<PieceClass> classes) => classes.Sum(c => c.Members.Count);
}
