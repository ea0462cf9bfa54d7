using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads.Reading;

/// <summary>Reads single members of a load and collects everything that is wrong with them.</summary>
internal sealed class FieldReader(LoadBook book)
{
    private readonly Dictionary<(string, bool), ConeMark> known = [];

    public List<Finding> Findings { get; } = [];

    public List<Assumption> Assumed { get; } = [];

    public void Add(string code, string field, string? value, string message, IReadOnlyList<string> allowed, string? likely = null) =>
        Findings.Add(new(code, field, value, message, [.. allowed], likely));

    /// <summary>A text that must be there.</summary>
    public string? Text(SentText sent, string field, string example)
    {
        if (sent is { Kind: SentKind.Text, IsAbsent: false }) return sent.Text!.Trim();
        if (sent.IsAbsent) Missing(field, [$"\"{example}\""]);
        else Add("text-expected", field, sent.Text, $"{Name(field)} is text.", [$"\"{example}\""], sent.Kind == SentKind.Number ? $"Put it in quotation marks: \"{sent.Text}\"." : null);
        return null;
    }

    /// <summary>A word of a closed vocabulary that must be there.</summary>
    public T? Word<T>(SentText sent, string field, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        var words = EnumWords.All(of);
        if (sent.IsAbsent)
        {
            Missing(field, words);
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
        var words = EnumWords.All(of);
        var near = sent.Text is { } text ? NearMatches.Find(text, words) : [];
        Add("word-unknown", field, sent.Text, $"“{sent.Text}” is none of the words for {Name(field)}.", words, near.Count > 0 ? $"Probably {near[0]}." : null);
        return null;
    }

    /// <summary>A list of words, at least one.</summary>
    public WordSet<T>? Words<T>(IReadOnlyList<SentText>? sent, string field, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        if (sent is null or [])
        {
            Missing(field, EnumWords.All(of));
            return null;
        }

        var before = Findings.Count;
        var read = new List<T>();
        for (var i = 0; i < sent.Count; i++)
        {
            if (Word(sent[i], Item(field, i), of) is { } word) read.Add(word);
        }

        return Findings.Count == before ? new WordSet<T>(read) : null;
    }

    /// <summary>A cone that must be there.</summary>
    /// <param name="sent">The member.</param>
    /// <param name="field">Its pointer.</param>
    /// <param name="beyond">True when a cone above 14 will do, as for the highest cone of a kiln.</param>
    public ConeMark? Cone(SentText sent, string field, bool beyond = false)
    {
        if (sent.IsAbsent)
        {
            Missing(field, ["\"06\"", "\"6\""]);
            return null;
        }

        if (sent.Kind == SentKind.Text && known.TryGetValue((sent.Text!, beyond), out var mark)) return mark;
        if (!ConeInput.TryRead(book.Scale, sent, field, out var cone, out var finding))
        {
            Findings.Add(finding!);
            return null;
        }

        mark = book.Marks.Find(cone) ?? (beyond && cone.Position > 14 ? new ConeMark(cone.ToString(), int.MaxValue, int.MaxValue) : null);
        if (mark is not null) return known[(sent.Text!, beyond)] = mark;
        Add("cone-outside-load-check", field, sent.Text, $"Cone {cone} is not on the potter's scale, on which a load is judged.", ["022 … 01", "1 … 14"],
            cone.HasLetter ? $"Without the letter: {cone.WithLetter(false)}." : null);
        return null;
    }

    /// <summary>A number in a span; null when left out.</summary>
    public decimal? Number(SentText sent, string field, decimal least, decimal most, bool whole = false)
    {
        if (sent.IsAbsent) return null;
        string Allowed() => whole ? string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most:N0}") : string.Create(CultureInfo.InvariantCulture, $"a number of {Unit(field)} above {least} and up to {most:N0}");
        if (sent.Kind != SentKind.Number || !decimal.TryParse(sent.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value))
        {
            Add("number-expected", field, sent.Text, $"{Name(field)} is a number.", [Allowed()], sent.Kind == SentKind.Text ? "Leave the quotation marks out." : null);
            return null;
        }

        if (value <= most && (whole ? value >= least && value == Math.Truncate(value) : value > least)) return value;
        Add("number-out-of-range", field, sent.Text, $"{Name(field)} is {sent.Text}.", [Allowed()]);
        return null;
    }

    public void Missing(string field, IReadOnlyList<string> allowed) =>
        Add("member-missing", field, null, char.IsAsciiDigit(field[^1]) ? $"An entry of {Name(field)} is null." : $"{Name(field)} is missing.", allowed);

    public static string Item(string field, int index) => string.Create(CultureInfo.InvariantCulture, $"{field}/{index}");

    // /pieces/3/coats/0/glaze is “glaze” in a sentence.
    private static string Name(string field)
    {
        var parts = field.Split('/');
        return char.IsAsciiDigit(parts[^1][0]) ? parts[^2] : parts[^1];
    }

    private static string Unit(string field) => field.EndsWith("Millimetres", StringComparison.Ordinal) ? "millimetres" : "units";
}
