using System.Globalization;
using System.Text;

namespace ConeService.Data;

/// <summary>
/// A sentence with named parameters, in the part of the ICU MessageFormat syntax that the package uses: <c>{name}</c>,
/// <c>{name, number, 0.#}</c>, <c>{name, plural, one {…} other {…}}</c> with <c>#</c> for the number, and
/// <c>{name, select, word {…} other {…}}</c>. An apostrophe quotes a brace: <c>'{'</c>. Immutable.
/// </summary>
public sealed class MessageTemplate
{
    private readonly IReadOnlyList<Part> parts;

    private MessageTemplate(IReadOnlyList<Part> parts)
    {
        this.parts = parts;
        var names = new SortedSet<string>(StringComparer.Ordinal);
        foreach (var part in parts) part.Collect(names);
        Parameters = [.. names];
    }

    /// <summary>Names of the parameters, sorted.</summary>
    public IReadOnlyList<string> Parameters { get; }

    /// <summary>Reads a template.</summary>
    /// <exception cref="FormatException">The text is not of that syntax; says where.</exception>
    public static MessageTemplate Parse(string text)
    {
        var at = 0;
        var parts = Sequence(text, ref at, inside: false);
        return new(parts);
    }

    /// <summary>Writes the sentence.</summary>
    /// <param name="into">Where to.</param>
    /// <param name="value">The value of a parameter by its name: text, or a number.</param>
    public void Write(StringBuilder into, Func<string, object?> value)
    {
        foreach (var part in parts) part.Write(into, value, null);
    }

    private static List<Part> Sequence(string text, ref int at, bool inside)
    {
        var parts = new List<Part>();
        var literal = new StringBuilder();
        void Flush()
        {
            if (literal.Length > 0) parts.Add(new Literal(literal.ToString()));
            literal.Clear();
        }

        while (at < text.Length && text[at] != '}')
        {
            var c = text[at];
            if (c == '\'' && at + 1 < text.Length && text[at + 1] is '{' or '}' or '#')
            {
                var end = text.IndexOf('\'', at + 2);
                if (end < 0) throw Bad(text, at, "a quoted part is not closed");
                literal.Append(text, at + 1, end - at - 1);
                at = end + 1;
            }
            else if (c == '#' && inside)
            {
                Flush();
                parts.Add(new Count());
                at++;
            }
            else if (c == '{')
            {
                Flush();
                at++;
                parts.Add(Argument(text, ref at));
            }
            else
            {
                literal.Append(c);
                at++;
            }
        }

        if (!inside && at < text.Length) throw Bad(text, at, "a brace closes that none opened");
        Flush();
        return parts;
    }

    private static Part Argument(string text, ref int at)
    {
        var name = Word(text, ref at);
        if (name.Length == 0) throw Bad(text, at, "a parameter has no name");
        if (Take(text, ref at, '}')) return new Value(name, null);
        Need(text, ref at, ',');
        var kind = Word(text, ref at);
        Need(text, ref at, ',');
        if (kind == "number")
        {
            var end = text.IndexOf('}', at);
            if (end < 0) throw Bad(text, at, "a format is not closed");
            var format = text[at..end].Trim();
            at = end + 1;
            return new Value(name, format);
        }

        if (kind is not ("plural" or "select")) throw Bad(text, at, $"“{kind}” is none of number, plural and select");
        var branches = new Dictionary<string, IReadOnlyList<Part>>(StringComparer.Ordinal);
        while (!Take(text, ref at, '}'))
        {
            var key = Word(text, ref at);
            if (key.Length == 0) throw Bad(text, at, "a branch has no name");
            Need(text, ref at, '{');
            branches.Add(key, Sequence(text, ref at, inside: true));
            Need(text, ref at, '}');
        }

        return branches.ContainsKey("other")
            ? new Branch(name, kind == "plural", branches)
            : throw Bad(text, at, $"{name} has no branch other");
    }

    private static string Word(string text, ref int at)
    {
        Blanks(text, ref at);
        var start = at;
        while (at < text.Length && (char.IsAsciiLetterOrDigit(text[at]) || text[at] is '-' or '_' or '=')) at++;
        var word = text[start..at];
        Blanks(text, ref at);
        return word;
    }

    private static void Blanks(string text, ref int at)
    {
        while (at < text.Length && text[at] == ' ') at++;
    }

    private static bool Take(string text, ref int at, char c)
    {
        Blanks(text, ref at);
        if (at >= text.Length) throw Bad(text, at, $"“{c}” is missing");
        if (text[at] != c) return false;
        at++;
        return true;
    }

    private static void Need(string text, ref int at, char c)
    {
        if (!Take(text, ref at, c)) throw Bad(text, at, $"“{c}” is missing");
    }

    private static FormatException Bad(string text, int at, string what) =>
        new(string.Create(CultureInfo.InvariantCulture, $"{what}, at character {at + 1} of “{text}”"));

    private abstract record Part
    {
        public abstract void Write(StringBuilder into, Func<string, object?> value, object? count);

        public virtual void Collect(ISet<string> names)
        {
        }
    }

    private sealed record Literal(string Text) : Part
    {
        public override void Write(StringBuilder into, Func<string, object?> value, object? count) => into.Append(Text);
    }

    private sealed record Count : Part
    {
        public override void Write(StringBuilder into, Func<string, object?> value, object? count) => Say(into, count, null);
    }

    private sealed record Value(string Name, string? Format) : Part
    {
        public override void Write(StringBuilder into, Func<string, object?> value, object? count) => Say(into, value(Name), Format);

        public override void Collect(ISet<string> names) => names.Add(Name);
    }

    private sealed record Branch(string Name, bool Plural, IReadOnlyDictionary<string, IReadOnlyList<Part>> Branches) : Part
    {
        public override void Write(StringBuilder into, Func<string, object?> value, object? count)
        {
            var chosen = value(Name);
            foreach (var part in Choose(chosen)) part.Write(into, value, Plural ? chosen : count);
        }

        public override void Collect(ISet<string> names)
        {
            names.Add(Name);
            foreach (var part in Branches.Values.SelectMany(b => b)) part.Collect(names);
        }

        // English, German, Dutch, Spanish and Italian: one is 1 and nothing else. A language with more forms names numbers (=2).
        private IReadOnlyList<Part> Choose(object? chosen)
        {
            var word = chosen is IFormattable number ? number.ToString(null, CultureInfo.InvariantCulture) : chosen?.ToString() ?? "";
            if (!Plural) return Branches.GetValueOrDefault(word) ?? Branches["other"];
            return Branches.GetValueOrDefault("=" + word) ?? (word == "1" ? Branches.GetValueOrDefault("one") : null) ?? Branches["other"];
        }
    }

    private static void Say(StringBuilder into, object? value, string? format)
    {
        if (value is IFormattable number) into.Append(number.ToString(format, CultureInfo.InvariantCulture));
        else into.Append(value);
    }
}
