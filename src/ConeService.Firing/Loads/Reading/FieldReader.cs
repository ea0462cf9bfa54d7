using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Materials;
using ConeService.Firing.Reading;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads single members of a load, cones above all, and collects everything that is wrong with them.</summary>
internal sealed class FieldReader : MemberReader
{
    private readonly LoadTables tables;
    private readonly Dictionary<(string, bool), PotterCone> known = [];
    private readonly Dictionary<(string Owner, string Member), string> pointers = [];

    public FieldReader(LoadTables tables)
        : this(tables, [])
    {
    }

    private FieldReader(LoadTables tables, List<Finding> findings)
        : base(findings)
    {
        this.tables = tables;
        Findings = findings;
    }

    public List<Finding> Findings { get; }

    public List<Assumption> Assumed { get; } = [];

    public void Add(string code, string field, string? value, Message message, IReadOnlyList<Message> allowed, Message? likely = null) =>
        Findings.Add(new(code, field, value, message, allowed, likely));

    /// <summary>
    /// The pointer of a member. Pointers within a piece are the same for all pieces, and nearly none is ever told: each is put together
    /// once.
    /// </summary>
    public string At(string owner, string member)
    {
        if (pointers.TryGetValue((owner, member), out var pointer)) return pointer;
        return pointers[(owner, member)] = owner + member;
    }

    /// <summary>Puts the pointer of a piece before what was found in it.</summary>
    /// <param name="piece">The pointer of the piece.</param>
    /// <param name="findings">How many findings there were before.</param>
    /// <param name="assumed">How many assumptions there were before.</param>
    public void Locate(string piece, int findings, int assumed)
    {
        if (piece.Length == 0) return;
        for (var i = findings; i < Findings.Count; i++) Findings[i] = Findings[i] with { Field = piece + Findings[i].Field };
        for (var i = assumed; i < Assumed.Count; i++) Assumed[i] = Assumed[i] with { Field = piece + Assumed[i].Field };
    }

    /// <summary>A set of words, at least one.</summary>
    public EnumSet<T>? Set<T>(IReadOnlyList<SentText>? sent, string field, IReadOnlyList<T>? of = null)
        where T : struct, Enum =>
        Words(sent, field, of) is { } words ? new EnumSet<T>(words) : null;

    /// <inheritdoc/>
    private protected override IReadOnlyList<string> Meant<T>(string sent) => tables.TradeWords.Meant(
        typeof(T) == typeof(PieceState) ? "state"
        : typeof(T) == typeof(FiringKind) ? "firing-kind"
        : typeof(T) == typeof(Atmosphere) ? "atmosphere" : "", sent);

    /// <summary>A cone that must be there.</summary>
    /// <param name="sent">The member.</param>
    /// <param name="field">Its pointer.</param>
    /// <param name="beyond">True when a cone above 14 will do, as for the highest cone of a kiln.</param>
    public PotterCone? Cone(SentText sent, string field, bool beyond = false)
    {
        if (sent.IsAbsent)
        {
            Missing(field, [Message.Verbatim("\"06\""), Message.Verbatim("\"6\"")]);
            return null;
        }

        if (sent.Kind == SentKind.Text && known.TryGetValue((sent.Text!, beyond), out var before)) return before;
        if (!ConeInput.TryRead(tables.Cones, sent, field, out var cone, out var finding))
        {
            Findings.Add(finding!);
            return null;
        }

        var counted = tables.PotterScale.Find(cone);
        if (counted is null && beyond && cone.Position > 14) counted = new(cone.ToString(), int.MaxValue, int.MaxValue);
        if (counted is not null) return known[(sent.Text!, beyond)] = counted;
        Add(FindingCodes.ConeOutsideLoadCheck, field, sent.Text,
            Message.Of("loads.cone-outside-scale", ("cone", cone.ToString())),
            [Message.Verbatim("022 … 01"), Message.Verbatim("1 … 14")],
            cone.HasLetter ? Message.Of("loads.cone-without-letter", ("cone", cone.WithLetter(false).ToString())) : null);
        return null;
    }

    /// <summary>A whole number in a span, ends included; null when left out.</summary>
    public int? Count(SentText sent, string field, int least, int most)
    {
        var allowed = Message.Of("loads.whole-number-allowed", ("least", least), ("most", most));
        if (Digits(sent, field, allowed) is not { } number) return null;
        if (number >= least && number <= most && number == Math.Truncate(number)) return (int)number;
        OutOfRange(sent, field, allowed);
        return null;
    }
}
