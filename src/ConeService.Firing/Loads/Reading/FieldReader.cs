using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads single members of a load and collects everything that is wrong with them.</summary>
internal sealed class FieldReader(LoadTables tables)
{
    private readonly Dictionary<(string, bool), PotterCone> known = [];

    public List<Finding> Findings { get; } = [];

    public List<Assumption> Assumed { get; } = [];

    public void Add(string code, string field, string? value, Message message, IReadOnlyList<Message> allowed, Message? likely = null) =>
        Findings.Add(new(code, field, value, message, allowed, likely));

    /// <summary>A text that must be there.</summary>
    public string? Text(SentText sent, string field, string example)
    {
        if (sent is { Kind: SentKind.Text, IsAbsent: false }) return sent.Text!.Trim();
        if (sent.IsAbsent)
        {
            Missing(field, [Message.Verbatim($"\"{example}\"")]);
            return null;
        }

        Add(FindingCodes.TextExpected, field, sent.Text,
            Message.Of("loads.text-expected", ("member", Name(field))), [Message.Verbatim($"\"{example}\"")],
            sent.Kind == SentKind.Number ? Message.Of("loads.add-quotation-marks", ("sent", sent.Text)) : null);
        return null;
    }

    /// <summary>A word of a closed vocabulary that must be there.</summary>
    public T? Word<T>(SentText sent, string field, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        if (sent.IsAbsent)
        {
            Missing(field, Message.Verbatim(EnumWords.All(of)));
            return null;
        }

        return OptionalWord(sent, field, of);
    }

    /// <summary>A word of a closed vocabulary; null when left out.</summary>
    public T? OptionalWord<T>(SentText sent, string field, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        if (sent.IsAbsent) return null;
        if (sent.Kind == SentKind.Text && EnumWords.TryRead(sent.Text, of, out var value)) return value;
        Findings.Add(UnknownWord.Of(sent.Text, field, Name(field), of));
        return null;
    }

    /// <summary>A list of words, at least one.</summary>
    public EnumSet<T>? Words<T>(IReadOnlyList<SentText>? sent, string field, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        if (sent is null or [])
        {
            Missing(field, Message.Verbatim(EnumWords.All(of)));
            return null;
        }

        var before = Findings.Count;
        var read = new List<T>();
        for (var i = 0; i < sent.Count; i++)
        {
            if (Word(sent[i], Item(field, i), of) is { } word) read.Add(word);
        }

        return Findings.Count == before ? new EnumSet<T>(read) : null;
    }

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

    /// <summary>Checks a whole number in a span, ends included; passes when left out.</summary>
    public void Count(SentText sent, string field, int least, int most) => Number(sent, field, least, most, whole: true);

    /// <summary>A length above 0, mm; null when left out.</summary>
    public decimal? Millimetres(SentText sent, string field, int most) => Number(sent, field, 0, most, whole: false);

    public void Missing(string field, IReadOnlyList<Message> allowed)
    {
        // An entry of a list has a number for a name.
        var message = char.IsAsciiDigit(field[^1])
            ? Message.Of("loads.entry-null", ("member", Name(field)))
            : Message.Of("loads.member-missing", ("member", Name(field)));
        Add(FindingCodes.MemberMissing, field, null, message, allowed);
    }

    public static string Item(string field, int index) => string.Create(CultureInfo.InvariantCulture, $"{field}/{index}");

    // /pieces/3/coats/0/glaze is “glaze” in a sentence.
    private static string Name(string field)
    {
        var parts = field.Split('/');
        return char.IsAsciiDigit(parts[^1][0]) ? parts[^2] : parts[^1];
    }

    private decimal? Number(SentText sent, string field, int least, int most, bool whole)
    {
        if (sent.IsAbsent) return null;
        if (sent.Kind != SentKind.Number
            || !decimal.TryParse(sent.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
        {
            Add(FindingCodes.NumberExpected, field, sent.Text,
                Message.Of("loads.number-expected", ("member", Name(field))), [Allowed(least, most, whole)],
                sent.Kind == SentKind.Text ? Message.Of("loads.drop-quotation-marks") : null);
            return null;
        }

        if (value <= most && (whole ? value >= least && value == Math.Truncate(value) : value > least)) return value;
        Add(FindingCodes.NumberOutOfRange, field, sent.Text,
            Message.Of("loads.number-out-of-range", ("member", Name(field)), ("sent", sent.Text)), [Allowed(least, most, whole)]);
        return null;
    }

    private static Message Allowed(int least, int most, bool whole) => whole
        ? Message.Of("loads.whole-number-allowed", ("least", least), ("most", most))
        : Message.Of("loads.millimetres-allowed", ("least", least), ("most", most));
}
