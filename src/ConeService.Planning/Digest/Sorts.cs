using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Texts;
using ConeService.Firing;

namespace ConeService.Planning.Digest;

/// <summary>Finds for each sort of piece the firings of its chain and where each of them is accepted.</summary>
internal sealed class Sorts(Acceptance acceptance, Wanted wanted, IReadOnlyList<ReadKiln> kilns)
{
    // A later firing is judged after each of so many earlier ones.
    private const int MostHistories = 4;
    private int refused;

    /// <summary>The chains of sorts, each once.</summary>
    public Dictionary<string, Sort> Of(IEnumerable<ReadPiece> pieces)
    {
        var sorts = new Dictionary<string, Sort>(StringComparer.Ordinal);
        foreach (var piece in pieces) sorts.TryAdd(piece.SortKey, new(piece.Ware, piece.Then));
        for (var number = 0; ; number++)
        {
            var going = sorts.Values.Where(s => s.Refused is null && number <= s.Then.Count).ToList();
            if (going.Count == 0) return sorts;
            foreach (var sort in going.Patiently()) Step(sort, number);
        }
    }

    private void Step(Sort sort, int number)
    {
        var verdicts = kilns.Select(k => k.Menu.Select(m => sort.Variants
            .Max(v => acceptance.Of(k.Sent.Kiln!, m.Sent, v))).ToArray()).ToList();
        var best = verdicts.SelectMany(v => v).DefaultIfEmpty(Verdict.Refuse).Min();
        if (best == Verdict.Refuse)
        {
            sort.Refused = number;
            DigestBounds.Refused(++refused);
            sort.TooBig = WithoutSize(sort.Variants[0]);
            if (sort.TooBig is not null) return;
            sort.Reasons = wanted.Nearest(sort.Variants[0]);
            (sort.Needed, sort.Needs) = (wanted.Firings(sort.Variants[0]), wanted.Sentence(sort.Variants[0]));
            return;
        }

        var accepted = verdicts.Select(v => Array.ConvertAll(v, one => one == best)).ToList();
        // Bare ware goes on as bisque, wherever a bisque takes it.
        var bisque = Any(accepted, m => m.FiringKind.Text == Ware.Bisque);
        if (bisque) Keep(accepted, m => m.FiringKind.Text == Ware.Bisque);
        sort.Stages.Add(new(accepted, bisque, sort.Variants[0], best == Verdict.Review));
        if (number >= sort.Then.Count) return;
        sort.Variants =
        [
            .. Entries(accepted).Select(m => (m.FiringKind.Text!, m.Cone.Text!)).Distinct().Take(MostHistories)
                .Select(m => sort.Variants[0].After(m.Item1, m.Item2, sort.Then[number])),
        ];
    }

    // The firing that it would be in, were it small enough; null where more than the room stands against it.
    private SortStage? WithoutSize(Ware ware)
    {
        var small = Ware.Of(ware.Piece with { Size = null });
        var accepted = kilns.Select(k => k.Menu.Select(m => acceptance.Judge(k.Sent.Kiln!, m.Sent, small) < Verdict.Refuse).ToArray())
            .ToList();
        return accepted.Exists(a => a.Contains(true))
            ? new(accepted, Any(accepted, m => m.FiringKind.Text == Ware.Bisque), ware, false)
            : null;
    }

    private IEnumerable<MenuFiring> Entries(List<bool[]> accepted) =>
        kilns.SelectMany((k, i) => k.Menu.Where((_, m) => accepted[i][m]).Select(m => m.Sent));

    private bool Any(List<bool[]> accepted, Func<MenuFiring, bool> holds) => Entries(accepted).Any(holds);

    private void Keep(List<bool[]> accepted, Func<MenuFiring, bool> holds)
    {
        for (var k = 0; k < kilns.Count; k++)
        {
            for (var m = 0; m < accepted[k].Length; m++) accepted[k][m] &= holds(kilns[k].Menu[m].Sent);
        }
    }
}

/// <summary>A sort of piece.</summary>
internal sealed class Sort(Ware ware, IReadOnlyList<IReadOnlyList<CoatRequest?>> then)
{
    /// <summary>Coats of its later firings.</summary>
    public IReadOnlyList<IReadOnlyList<CoatRequest?>> Then { get; } = then;

    /// <summary>It before its next firing, by what it may have had before.</summary>
    public IReadOnlyList<Ware> Variants { get; set; } = [ware];

    /// <summary>The firings that are accepted.</summary>
    public List<SortStage> Stages { get; } = [];

    /// <summary>Place of the firing that none accepts; null when there is none.</summary>
    public int? Refused { get; set; }

    /// <summary>What the load check says of it.</summary>
    public IReadOnlyList<Reason> Reasons { get; set; } = [];

    /// <summary>That firing, where nothing but the room stands against it; else null.</summary>
    public SortStage? TooBig { get; set; }

    /// <summary>What would accept it.</summary>
    public IReadOnlyList<NeededFiring> Needed { get; set; } = [];

    /// <summary>The same in a sentence; null where each firing is accepted.</summary>
    public Message? Needs { get; set; }
}

/// <summary>A firing of a sort.</summary>
/// <param name="Accepted">By kiln and entry of its menu.</param>
/// <param name="IsBisque">True in a bisque.</param>
/// <param name="Ware">It before that firing.</param>
/// <param name="ToLookAt">True where it is not accepted, but would have to be looked at.</param>
internal sealed record SortStage(IReadOnlyList<bool[]> Accepted, bool IsBisque, Ware Ware, bool ToLookAt);
