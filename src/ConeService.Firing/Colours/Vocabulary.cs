using System.Collections.Frozen;
using ConeService.Contract.Answers;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Colours;

/// <summary>A closed vocabulary with the other names that callers use, and what to say when a name is not in it.</summary>
/// <typeparam name="T">What a name stands for.</typeparam>
internal sealed class Vocabulary<T>
    where T : notnull
{
    private readonly FrozenDictionary<string, T> byName;
    private readonly IReadOnlyList<string> ids;
    private readonly string code;
    private readonly Func<string, Message> unknown;

    /// <summary>Joins ids and other names; an id wins over another's other name.</summary>
    /// <param name="code">Code of the problem of a name that is not in it.</param>
    /// <param name="unknown">What is said of such a name.</param>
    /// <param name="entries">The names.</param>
    public Vocabulary(string code, Func<string, Message> unknown, IEnumerable<(string Id, T Value, IEnumerable<string> Others)> entries)
    {
        (this.code, this.unknown) = (code, unknown);
        var all = entries.ToList();
        ids = [.. all.Select(e => e.Id)];
        byName = all.Select(e => (Key: Key(e.Id), e.Value))
            .Concat(all.SelectMany(e => e.Others.Select(o => (Key: Key(o), e.Value))))
            .DistinctBy(e => e.Key)
            .ToFrozenDictionary(e => e.Key, e => e.Value, StringComparer.Ordinal);
    }

    /// <summary>The ids of the vocabulary.</summary>
    public IReadOnlyList<string> Ids => ids;

    /// <summary>Reads a name.</summary>
    /// <param name="text">The name as sent.</param>
    /// <param name="field">The parameter or JSON pointer, for the finding.</param>
    /// <param name="value">What it stands for.</param>
    /// <param name="finding">What is wrong, with near matches; null on success.</param>
    public bool TryRead(string text, string field, out T value, out Finding? finding)
    {
        finding = null;
        if (byName.TryGetValue(Key(text), out value!)) return true;
        var near = NearMatches.Find(Key(text), byName.Keys);
        finding = new(
            code, field, text, unknown(text), Message.Verbatim(near.Count > 0 ? near : ids),
            near.Count > 0 ? Message.Of("answers.near-match", ("near", near[0])) : null);
        return false;
    }

    // “High Calcium”, “high-calcium” and “high_calcium” are one name.
    private static string Key(string text) =>
        string.Join('-', text.ToLowerInvariant().Split([' ', '-', '_', '\t'], StringSplitOptions.RemoveEmptyEntries));
}
