using System.Text.Json.Serialization;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Answers;

/// <summary>One thing wrong with what a caller sent: names the place, the value, what is allowed and the likely mistake.</summary>
/// <param name="Code">Stable kebab-case name of the kind of problem; the host serves a help page of this name.</param>
/// <param name="Field">The place: a parameter, a JSON pointer into the body, or “line 3, cone” of an upload.</param>
/// <param name="Value">What was sent, as text, its first 200 characters; null where nothing was sent.</param>
/// <param name="Message">One sentence that says what is wrong.</param>
/// <param name="Allowed">What would be accepted: examples, a range, or near matches.</param>
/// <param name="LikelyMistake">What the caller probably meant; null where there is no good guess.</param>
public sealed record Finding(
    string Code,
    string Field,
    string? Value,
    Message Message,
    IReadOnlyList<Message> Allowed,
    Message? LikelyMistake = null)
{
    /// <summary>The place.</summary>
    [JsonIgnore]
    public string Field { get; init; } = Told.Pointer(Field);

    /// <summary>What was sent, as text, its first 200 characters; null where nothing was sent.</summary>
    public string? Value { get; init; } = Told.Cut(Value);

    /// <summary>One sentence that says what is wrong.</summary>
    public Message Message { get; init; } = Told.Cut(Message);

    /// <summary>What would be accepted: examples, a range, or near matches.</summary>
    public IReadOnlyList<Message> Allowed { get; init; } = [.. Allowed.Select(Told.Cut)];

    /// <summary>What the caller probably meant; null where there is no good guess.</summary>
    public Message? LikelyMistake { get; init; } = LikelyMistake is null ? null : Told.Cut(LikelyMistake);

    /// <summary>Where in the JSON body (RFC 6901); the whole body is the empty text. Not there for what is no JSON.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Pointer => SentPlace.Of(Field).Pointer;

    /// <summary>The parameter of the path or the query, or the header. Not there for a body.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Parameter => SentPlace.Of(Field).Parameter;

    /// <summary>The line of an upload, from 1. Not there elsewhere.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public int? Line => SentPlace.Of(Field).Line;

    /// <summary>The column of that line. Not there where the whole line is meant.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Column => SentPlace.Of(Field).Column;
}
