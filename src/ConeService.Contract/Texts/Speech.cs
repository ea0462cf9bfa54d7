using ConeService.Data;

namespace ConeService.Contract.Texts;

/// <summary>How sentences are said now: from which book, in which language, to whom. Flows with the request.</summary>
/// <param name="Book">The sentences.</param>
/// <param name="Language">The language, BCP 47.</param>
/// <param name="Audience">The reader.</param>
public sealed record Speech(MessageBook Book, string Language = MessageBook.English, MessageAudience Audience = MessageAudience.Anyone)
{
    private static readonly AsyncLocal<Speech?> Ambient = new();
    private static readonly Lazy<Speech> English = new(() => new(MessageBook.Embedded));

    /// <summary>What stands before the paths of this service where the reader reaches it: empty, or a path such as <c>/cones</c>.</summary>
    public string Root { get; init; } = "";

    /// <summary>How sentences are said in this flow; English from the embedded package unless <see cref="Use"/> said otherwise.</summary>
    public static Speech Current => Ambient.Value ?? English.Value;

    /// <summary>Says sentences so from here on in this flow.</summary>
    public static void Use(Speech speech) => Ambient.Value = speech;

    /// <summary>Puts a message into words.</summary>
    public string Say(Message message) => Book.Say(message, Language, Audience);
}
