using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Reading;

/// <summary>Refuses a word that a closed vocabulary has not.</summary>
internal static class UnknownWord
{
    /// <summary>The finding; names the words there are, and the nearest.</summary>
    /// <typeparam name="T">The vocabulary.</typeparam>
    /// <param name="sent">What was sent.</param>
    /// <param name="field">The parameter, or a JSON pointer.</param>
    /// <param name="member">What the words are for, in a sentence.</param>
    /// <param name="of">The words that may stand there; null: all.</param>
    /// <param name="meant">Words that what was sent stands for in the trade; none: the nearest by letters is offered.</param>
    public static Finding Of<T>(
        string? sent, string field, string member, IReadOnlyList<T>? of = null, IReadOnlyList<string>? meant = null)
        where T : struct, Enum
    {
        var words = EnumWords.All(of);
        if (meant is { Count: > 0 })
        {
            return new(
                FindingCodes.WordUnknown, field, sent,
                Message.Of("members.word-unknown", ("sent", sent), ("member", member)), Message.Verbatim(words),
                Message.Of("members.trade-word", ("sent", sent), ("first", meant[0]), ("other", meant.Count > 1 ? meant[1] : "none")));
        }

        var near = sent is null ? [] : NearMatches.Find(sent, words);
        return new(
            FindingCodes.WordUnknown, field, sent,
            Message.Of("members.word-unknown", ("sent", sent), ("member", member)), Message.Verbatim(words),
            near.Count > 0 ? Message.Of("answers.near-match", ("near", near[0])) : null);
    }
}
