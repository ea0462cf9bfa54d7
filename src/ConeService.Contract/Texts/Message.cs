using System.Diagnostics.CodeAnalysis;
using ConeService.Data;

namespace ConeService.Contract.Texts;

/// <summary>
/// A sentence as data: its code in the table messages, and the values it speaks of. It is put into words where it is shown,
/// in the language of the reader. Immutable; two messages with the same code and values are equal.
/// </summary>
public sealed class Message : IEquatable<Message>
{
    private readonly (string Name, object? Value)[] values;

    private Message(string? code, (string Name, object? Value)[] values) => (Code, this.values) = (code, values);

    /// <summary>Code of the sentence; null for words that are not the service's own.</summary>
    public string? Code { get; }

    /// <summary>Whom it speaks to, whoever reads the answer; anyone: the reader of the answer.</summary>
    public MessageAudience Audience { get; private init; }

    /// <summary>The values by name: text, numbers, or messages.</summary>
    public IReadOnlyList<(string Name, object? Value)> Values => values;

    /// <summary>A sentence of the table messages.</summary>
    /// <param name="code">Its code, always a literal: a test holds every code against the table.</param>
    /// <param name="values">Its parameters.</param>
    public static Message Of(string code, params (string Name, object? Value)[] values) => new(code, values);

    /// <summary>A row of the data package in a student's words; null where the package has no text on it.</summary>
    /// <param name="dataset">The data package.</param>
    /// <param name="table">The table that the row stands in.</param>
    /// <param name="row">Id of the row.</param>
    public static Message? ToStudents(Dataset dataset, string table, string row) =>
        dataset.Tells(table, row, MessageAudience.Student)
            ? new(MessageBook.CodeOf(table, row), []) { Audience = MessageAudience.Student } : null;

    /// <summary>Words that are shown as they are: ids, texts of the data package, what a caller sent.</summary>
    [return: NotNullIfNotNull(nameof(text))]
    public static Message? Verbatim(string? text) => text is null ? null : new(null, [("", text)]);

    /// <summary>Several words shown as they are.</summary>
    public static IReadOnlyList<Message> Verbatim(IEnumerable<string> texts) => [.. texts.Select(t => Verbatim(t))];

    /// <summary>Several sentences after one another.</summary>
    public static Message Sentences(params IEnumerable<Message> sentences) => Of("list.sentences", ("items", sentences.ToArray()));

    /// <summary>The same sentence, said to one kind of reader.</summary>
    public Message To(MessageAudience audience) => new(Code, values) { Audience = audience };

    /// <summary>The same sentence with its values changed; itself when none is.</summary>
    /// <param name="change">Makes the new value of an old one.</param>
    public Message With(Func<object?, object?> change)
    {
        var changed = Array.ConvertAll(values, v => (v.Name, change(v.Value)));
        for (var i = 0; i < values.Length; i++)
        {
            if (!ReferenceEquals(changed[i].Item2, values[i].Value)) return new(Code, changed) { Audience = Audience };
        }

        return this;
    }

    /// <summary>The value of a parameter; null when there is none of that name.</summary>
    public object? this[string name]
    {
        get
        {
            foreach (var (key, value) in values)
            {
                if (key == name) return value;
            }

            return null;
        }
    }

    /// <summary>The sentence in the language of who is spoken to now; English unless something else was said.</summary>
    public override string ToString() => Speech.Current.Say(this);

    /// <inheritdoc/>
    public bool Equals(Message? other) => other is not null && Code == other.Code && Audience == other.Audience
        && values.AsSpan().SequenceEqual(other.values, Alike.Instance);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Message);

    /// <inheritdoc/>
    public override int GetHashCode() =>
        HashCode.Combine(Code, values.Length > 0 && values[0].Value is string or ValueType ? values[0].Value : null);

    // Lists are equal when what they hold is.
    private sealed class Alike : IEqualityComparer<(string Name, object? Value)>
    {
        public static Alike Instance { get; } = new();

        public bool Equals((string Name, object? Value) x, (string Name, object? Value) y) =>
            x.Name == y.Name && (Equals(x.Value, y.Value)
                || (x.Value is IEnumerable<object> one && y.Value is IEnumerable<object> other && one.SequenceEqual(other)));

        public int GetHashCode((string Name, object? Value) obj) => obj.Name.GetHashCode(StringComparison.Ordinal);
    }
}
