using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Reading;

/// <summary>Reads single members of a request as they were sent, and collects everything that is wrong with them.</summary>
/// <param name="findings">Where findings go.</param>
internal class MemberReader(ICollection<Finding> findings)
{
    /// <summary>A name of the caller's; null when left out.</summary>
    public string? Text(SentText sent, string field, string example)
    {
        if (sent.IsAbsent) return null;
        if (sent.Kind == SentKind.Text) return Named(sent.Text!.Trim(), field);
        findings.Add(new(
            FindingCodes.TextExpected, field, sent.Text, Message.Of("members.text-expected", ("member", Name(field))),
            [Message.Verbatim($"\"{example}\"")],
            sent.Kind == SentKind.Number ? Message.Of("members.quotation-marks-needed", ("sent", sent.Text)) : null));
        return null;
    }

    private string? Named(string text, string field)
    {
        if (Naming.Check(field, Name(field), text) is not { } wrong) return text;
        findings.Add(wrong);
        return null;
    }

    /// <summary>A text that must be there.</summary>
    public string? RequiredText(SentText sent, string field, string example)
    {
        if (!sent.IsAbsent) return Text(sent, field, example);
        Missing(field, [Message.Verbatim($"\"{example}\"")]);
        return null;
    }

    /// <summary>A word of a closed vocabulary that must be there.</summary>
    public T? Word<T>(SentText sent, string field, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        if (!sent.IsAbsent) return OptionalWord(sent, field, of);
        Missing(field, Message.Verbatim(EnumWords.All(of)));
        return null;
    }

    /// <summary>A word of a closed vocabulary; null when left out.</summary>
    public T? OptionalWord<T>(SentText sent, string field, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        if (sent.IsAbsent) return null;
        if (sent.Kind == SentKind.Text && EnumWords.TryRead(sent.Text, of, out var value)) return value;
        Add(UnknownWord.Of(sent.Text, field, Name(field), of, sent.Text is null ? [] : Meant<T>(sent.Text)));
        return null;
    }

    /// <summary>Words of the contract for which a word of the trade stands; none where nothing is known of it.</summary>
    private protected virtual IReadOnlyList<string> Meant<T>(string sent)
        where T : struct, Enum => [];

    /// <summary>A list of words, at least one; null when anything is wrong with it.</summary>
    public IReadOnlyList<T>? Words<T>(IReadOnlyList<SentText>? sent, string field, IReadOnlyList<T>? of = null)
        where T : struct, Enum
    {
        if (sent is null or [])
        {
            Missing(field, Message.Verbatim(EnumWords.All(of)));
            return null;
        }

        var read = new List<T>();
        var (at, wrong) = (0, 0);
        for (; at < sent.Count && wrong < Told.MostFindings; at++)
        {
            if (Word(sent[at], Item(field, at), of) is { } word) read.Add(word);
            else wrong++;
        }

        return wrong == 0 ? read : null;
    }

    /// <summary>A number; null when left out. What it may be is for the reader's caller to judge.</summary>
    public double? Number(SentText sent, string field) =>
        Digits(sent, field, Message.Of("members.any-number")) is null
            ? null
            : double.Parse(sent.Text!, NumberStyles.Float, CultureInfo.InvariantCulture);

    /// <summary>A whole number; null when left out.</summary>
    public int? Whole(SentText sent, string field)
    {
        var allowed = Message.Of("members.any-whole-number");
        if (Digits(sent, field, allowed) is not { } number) return null;
        if (number == Math.Truncate(number) && number is >= int.MinValue and <= int.MaxValue) return (int)number;
        OutOfRange(sent, field, allowed);
        return null;
    }

    /// <summary>A length above 0; null when left out.</summary>
    /// <param name="sent">The member.</param>
    /// <param name="field">Its pointer.</param>
    /// <param name="most">The most that is accepted, mm.</param>
    public decimal? Millimetres(SentText sent, string field, decimal most)
    {
        var allowed = Message.Of("members.millimetres-allowed", ("most", most));
        if (Digits(sent, field, allowed) is not { } number) return null;
        if (number > 0 && number <= most) return number;
        OutOfRange(sent, field, allowed);
        return null;
    }

    /// <summary>A member that must be there and is not.</summary>
    public void Missing(string field, IReadOnlyList<Message> allowed) => findings.Add(new(
        FindingCodes.MemberMissing, field, null,
        char.IsAsciiDigit(field[^1])
            ? Message.Of("members.entry-missing", ("member", Name(field)))
            : Message.Of("members.member-missing", ("member", Name(field))),
        allowed));

    /// <summary>Takes a finding.</summary>
    public void Add(Finding finding) => findings.Add(finding);

    /// <summary>The pointer of an entry of a list.</summary>
    public static string Item(string field, int index) => string.Create(CultureInfo.InvariantCulture, $"{field}/{index}");

    /// <summary>What a member is called in a sentence: /pieces/3/coats/0/glaze is “glaze”, /kiln/atmospheres/0 “atmospheres”.</summary>
    protected static string Name(string field)
    {
        var parts = field.Split('/');
        return char.IsAsciiDigit(parts[^1][0]) ? parts[^2] : parts[^1];
    }

    private protected decimal? Digits(SentText sent, string field, Message allowed)
    {
        if (sent.IsAbsent) return null;
        var isNumber = decimal.TryParse(sent.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var value);
        if (isNumber && sent.Kind == SentKind.Number) return value;
        findings.Add(new(
            FindingCodes.NumberExpected, field, sent.Text, Message.Of("members.number-expected", ("member", Name(field))), [allowed],
            sent.Kind != SentKind.Text ? null
            : isNumber ? Message.Of("members.number-in-quotation-marks", ("number", sent.Text!.Trim()))
            : Message.Of("members.quotation-marks-needless")));
        // What was surely meant, so that it is judged too and nothing is called missing that is there.
        return isNumber ? value : null;
    }

    private protected void OutOfRange(SentText sent, string field, Message allowed) => findings.Add(new(
        FindingCodes.NumberOutOfRange, field, sent.Text,
        Message.Of("members.number-out-of-range", ("member", Name(field)), ("sent", sent.Text)), [allowed]));
}
