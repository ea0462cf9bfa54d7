using System.Runtime.CompilerServices;
using System.Text.Json;
using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Firing.Loads;
using Kiln = ConeService.Contract.Kilns.Kiln;

namespace ConeService.Planning.Digest;

/// <summary>
/// What the load check says, sort by sort, remembered: which ware a firing takes alone, and which ware may share it. One belongs to one
/// request and to what is asked about it; not for several threads.
/// </summary>
internal sealed class Acceptance(FiringReference reference)
{
    private readonly QuietCheck check = reference.Loads.Quiet();

    // Kilns and firings are asked about as often as there is ware: they are found again by being the same, and by their text once.
    private readonly Dictionary<(object Kiln, object Firing), Entry> asked = new(SamePair.Instance);
    private readonly Dictionary<string, Entry> entries = new(StringComparer.Ordinal);
    private readonly Dictionary<Ware, ReadWare> seen = new(ReferenceEqualityComparer.Instance);
    private readonly Dictionary<string, ReadWare> wares = new(StringComparer.Ordinal);

    /// <summary>How many times ware was judged in a firing.</summary>
    public long Judged => check.Judged;

    /// <summary>A firing as text: equal for equal ones.</summary>
    public static string Key(Kiln kiln, MenuFiring firing) =>
        JsonSerializer.Serialize(kiln with { Id = default }) + $"{firing.FiringKind.Text} {firing.Cone.Text} {firing.Atmosphere.Text}";

    /// <summary>What is judged of one ware alone.</summary>
    /// <exception cref="RefusedException">The ware, the kiln or the firing can't be read.</exception>
    public Verdict Of(Kiln kiln, MenuFiring firing, Ware ware)
    {
        var (entry, read) = (Found(kiln, firing), Found(ware));
        while (read.Verdicts.Count <= entry.Number) read.Verdicts.Add(null);
        return read.Verdicts[entry.Number] ??= check.Of(Piece(read, entry), entry.Firing);
    }

    /// <summary>What the load check says of a load of one ware in a firing that need be on no menu.</summary>
    public Verdict Judge(Kiln kiln, MenuFiring firing, Ware ware)
    {
        var (entry, read) = (Found(kiln, firing), Found(ware));
        return check.OfLoad(Piece(read, entry), entry.Firing);
    }

    /// <summary>Why a firing does not accept a ware.</summary>
    public IReadOnlyList<Reason> Reasons(Kiln kiln, MenuFiring firing, Ware ware) =>
        [.. reference.Loads.Check(Load(kiln, firing, [ware.Named(0)])).Pieces[0].Reasons.Where(r => r.Severity > ReasonSeverity.Note)];

    /// <summary>What decides with whom a ware may share a firing: wares of equal company may go with the same others.</summary>
    public Company CompanyOf(Kiln kiln, MenuFiring firing, Ware ware)
    {
        var entry = Found(kiln, firing);
        var fumes = check.Fumes(Piece(Found(ware), entry), entry.Firing);
        return new(fumes, fumes.Bear(fumes) ? null : ware.Coats);
    }

    private Entry Found(Kiln kiln, MenuFiring firing)
    {
        if (asked.TryGetValue((kiln, firing), out var entry)) return entry;
        var key = Key(kiln, firing);
        if (!entries.TryGetValue(key, out entry))
        {
            entries[key] = entry = new(
                entries.Count, check.Read(kiln, new FiringRequest(firing.FiringKind, firing.Cone, firing.Atmosphere)));
        }

        return asked[(kiln, firing)] = entry;
    }

    private ReadWare Found(Ware ware)
    {
        if (seen.TryGetValue(ware, out var read)) return read;
        if (!wares.TryGetValue(ware.Key, out read)) wares[ware.Key] = read = new(ware);
        return seen[ware] = read;
    }

    private Piece Piece(ReadWare ware, Entry entry)
    {
        var kind = entry.Firing.Planned.Kind;
        if (ware.Pieces.TryGetValue(kind, out var piece)) return piece;
        Patience.Check();
        return ware.Pieces[kind] = check.Read(ware.Ware.Named(0), entry.Firing);
    }

    // Only this firing is offered, so that nothing is spent on suggestions.
    private static LoadRequest Load(Kiln kiln, MenuFiring firing, IReadOnlyList<PieceRequest> pieces) => new(
        kiln, new FiringRequest(firing.FiringKind, firing.Cone, firing.Atmosphere), pieces,
        Offered: [new OfferedFiringRequest(firing.FiringKind, firing.Cone, firing.Atmosphere)]);

    private sealed record Entry(int Number, QuietFiring Firing);

    private sealed class ReadWare(Ware ware)
    {
        public Ware Ware => ware;

        public Dictionary<FiringKind, Piece> Pieces { get; } = [];

        public List<Verdict?> Verdicts { get; } = [];
    }

    private sealed class SamePair : IEqualityComparer<(object Kiln, object Firing)>
    {
        public static readonly SamePair Instance = new();

        public bool Equals((object Kiln, object Firing) x, (object Kiln, object Firing) y) =>
            ReferenceEquals(x.Kiln, y.Kiln) && ReferenceEquals(x.Firing, y.Firing);

        public int GetHashCode((object Kiln, object Firing) pair) =>
            HashCode.Combine(RuntimeHelpers.GetHashCode(pair.Kiln), RuntimeHelpers.GetHashCode(pair.Firing));
    }
}

/// <summary>What decides with whom ware may share a firing.</summary>
/// <param name="Fumes">What it gives off and what spoils it.</param>
/// <param name="Coats">Its coats where it would spoil its like; else null.</param>
internal sealed record Company(PieceFumes Fumes, string? Coats)
{
    /// <summary>Whether they may share a firing. Ware with the same coats may, whatever comes off them.</summary>
    public bool MayShare(Company other) => this == other || Fumes.Bear(other.Fumes);
}
