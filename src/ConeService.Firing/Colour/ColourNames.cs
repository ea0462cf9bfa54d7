using System.Collections.Frozen;
using ConeService.Contract.Answers;

namespace ConeService.Firing.Colour;

/// <summary>A closed vocabulary with the other names that callers use, and what to say when a name is not in it.</summary>
/// <typeparam name="T">What a name stands for.</typeparam>
internal sealed class ColourNames<T>
    where T : notnull
{
    private readonly FrozenDictionary<string, T> byName;
    private readonly IReadOnlyList<string> ids;
    private readonly string code;
    private readonly string noun;

    /// <summary>Joins ids and other names; an id wins over another's other name.</summary>
    public ColourNames(string code, string noun, IEnumerable<(string Id, T Value, IEnumerable<string> Others)> entries)
    {
        (this.code, this.noun) = (code, noun);
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
        finding = new(code, field, text, $"“{text}” is no {noun} of this data package.", [.. (near.Count > 0 ? near : ids)], near.Count > 0 ? $"Probably {near[0]}." : null);
        return false;
    }

    // “High Calcium”, “high-calcium” and “high_calcium” are one name.
    private static string Key(string text) => string.Join('-', text.ToLowerInvariant().Split([' ', '-', '_', '\t'], StringSplitOptions.RemoveEmptyEntries));
}
