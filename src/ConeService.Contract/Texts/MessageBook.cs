using System.Collections.Frozen;
using System.Text;
using ConeService.Data;

namespace ConeService.Contract.Texts;

/// <summary>The sentences of a data package, ready to be said. What an older package lacks is said as the embedded one does.</summary>
public sealed class MessageBook
{
    /// <summary>The language that every sentence has.</summary>
    public const string English = "en";

    private static readonly Lazy<MessageBook> Own = new(() => new(Embed()));

    private readonly FrozenDictionary<(string Code, MessageAudience Audience, string Language), MessageTemplate> templates;

    /// <summary>The sentences of a package; <see cref="Embedded"/> itself where the package says nothing of its own.</summary>
    public static MessageBook For(Dataset dataset)
    {
        var embedded = Embed();
        List<MessageRow> said = [.. dataset.Messages, .. dataset.Texts.Select(Of)];
        return said.TrueForAll(embedded.ToHashSet().Contains)
            ? Embedded
            : new(embedded.Concat(said).GroupBy(r => (r.Code, r.Audience, r.Language)).Select(g => g.Last()));
    }

    /// <summary>The code under which a text on a row is said; no code of the table messages has its slash.</summary>
    internal static string CodeOf(string table, string row) => $"{table}/{row}";

    private static List<MessageRow> Embed() => [.. EmbeddedMessages.Read(), .. EmbeddedMessages.ReadTexts().Select(Of)];

    private static MessageRow Of(TextRow text) => new(CodeOf(text.Table, text.Row), text.Audience, text.Language, text.Text);

    private MessageBook(IEnumerable<MessageRow> rows)
    {
        var read = rows.ToList();
        templates = read.ToFrozenDictionary(r => (r.Code, r.Audience, r.Language), r => MessageTemplate.Parse(r.Text));
        Languages = [English, .. read.Select(r => r.Language).Distinct().Where(l => l != English).Order(StringComparer.Ordinal)];
    }

    /// <summary>The sentences of the embedded package.</summary>
    public static MessageBook Embedded => Own.Value;

    /// <summary>The languages in which something is told, English first.</summary>
    public IReadOnlyList<string> Languages { get; }

    /// <summary>Puts a message into words.</summary>
    /// <param name="message">The message.</param>
    /// <param name="language">The language; where a sentence lacks it, English.</param>
    /// <param name="audience">The reader; where a sentence says nothing of its own to them, what it says to anyone.</param>
    public string Say(Message message, string language = English, MessageAudience audience = MessageAudience.Anyone)
    {
        if (message.Audience != MessageAudience.Anyone) audience = message.Audience;
        if (message.Code is null) return Text(message.Values[0].Value, language, audience, ", ");
        if (message.Code == "list.sentences") return Text(message["items"], language, audience, " ");
        var into = new StringBuilder(128);
        Find(message.Code, language, audience).Write(into, name => Value(message[name], language, audience));
        return into.ToString();
    }

    private MessageTemplate Find(string code, string language, MessageAudience audience) =>
        templates.GetValueOrDefault((code, audience, language))
        ?? templates.GetValueOrDefault((code, MessageAudience.Anyone, language))
        ?? templates.GetValueOrDefault((code, audience, English))
        ?? templates.GetValueOrDefault((code, MessageAudience.Anyone, English))
        ?? throw new KeyNotFoundException($"The table messages has no sentence {code}.");

    private object? Value(object? value, string language, MessageAudience audience) =>
        value is IFormattable ? value : Text(value, language, audience, ", ");

    private string Text(object? value, string language, MessageAudience audience, string separator) => value switch
    {
        null => "",
        string text => text,
        Message message => Say(message, language, audience),
        IEnumerable<object> many => string.Join(separator, many.Select(m => Text(m, language, audience, separator))),
        _ => value.ToString() ?? "",
    };
}
