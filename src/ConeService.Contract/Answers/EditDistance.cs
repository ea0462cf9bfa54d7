namespace ConeService.Contract.Answers;

/// <summary>How many letters two words are apart.</summary>
internal static class EditDistance
{
    /// <summary>True when at most a third of the letters sent are wrong.</summary>
    public static bool Near(string sent, string word) => ToNear(sent, word) is not null;

    /// <summary>How many letters are wrong; null when more than a third of those sent. Words of other lengths cost nothing.</summary>
    public static int? ToNear(string sent, string word) =>
        Math.Abs(sent.Length - word.Length) * 3 <= sent.Length && Between(sent, word) is var wrong && wrong * 3 <= sent.Length
            ? wrong
            : null;

    /// <summary>Optimal string alignment: a letter more, less or another, or two neighbours swapped, counts one.</summary>
    public static int Between(string a, string b)
    {
        var (before, previous, current) = (new int[b.Length + 1], Enumerable.Range(0, b.Length + 1).ToArray(), new int[b.Length + 1]);
        for (var i = 1; i <= a.Length; i++)
        {
            current[0] = i;
            for (var j = 1; j <= b.Length; j++)
            {
                var least = Math.Min(previous[j - 1] + (a[i - 1] == b[j - 1] ? 0 : 1), Math.Min(previous[j], current[j - 1]) + 1);
                var swapped = i > 1 && j > 1 && a[i - 1] == b[j - 2] && a[i - 2] == b[j - 1];
                current[j] = swapped ? Math.Min(least, before[j - 2] + 1) : least;
            }

            (before, previous, current) = (previous, current, before);
        }

        return previous[b.Length];
    }
}
