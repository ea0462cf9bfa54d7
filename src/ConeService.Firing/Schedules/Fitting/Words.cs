using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Findings on words of closed lists.</summary>
internal static class Words
{
    /// <summary>A word that is missing or not of the list.</summary>
    public static Finding Unknown<T>(string field, string? sent, string what)
        where T : struct, Enum
    {
        var words = EnumWords.All<T>();
        return new("word-unknown", field, sent, sent is null ? $"The request does not say {what}." : $"“{sent}” is not {what}.", [.. words],
            sent is not null && NearMatches.Find(sent, words) is [var near, ..] ? $"Probably {near}." : null);
    }
}
