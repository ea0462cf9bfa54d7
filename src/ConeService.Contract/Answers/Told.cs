using ConeService.Contract.Texts;

namespace ConeService.Contract.Answers;

/// <summary>How much an answer says back of what was sent, however much that was.</summary>
public static class Told
{
    /// <summary>Most findings that are listed in one answer; of the others the number is told.</summary>
    public const int MostFindings = 50;

    /// <summary>Most findings that are put into sentences in the detail of a problem.</summary>
    public const int MostSentences = 10;

    /// <summary>Most characters of a value that was sent.</summary>
    public const int MostCharacters = 200;

    // A pointer is made of names that are mostly ours; cut, it points nowhere.
    private const int MostOfPointer = 1000;

    /// <summary>A text, cut with an ellipsis where it is too long.</summary>
    public static string? Cut(string? text) => Cut(text, MostCharacters);

    /// <summary>A message with what was sent cut.</summary>
    public static Message Cut(Message message) => message.Code is null && message[""] is string { Length: <= MostCharacters }
        ? message
        : message.With(Cut);

    internal static string Pointer(string field) => Cut(field, MostOfPointer)!;

    private static object? Cut(object? value) => value switch
    {
        string text => Cut(text),
        Message message => Cut(message),
        _ => value,
    };

    private static string? Cut(string? text, int most)
    {
        if (text is null || text.Length <= most) return text;
        // Half a character is none.
        var end = char.IsHighSurrogate(text[most - 2]) ? most - 2 : most - 1;
        return string.Concat(text.AsSpan(0, end), "…");
    }
}
