using System.Text.Json.Serialization;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Answers;

/// <summary>Something that the caller left out, and what was taken instead.</summary>
/// <param name="Field">The place: a parameter, or a JSON pointer into the body.</param>
/// <param name="Value">What was taken.</param>
/// <param name="Reason">Why that.</param>
public sealed record Assumption([property: JsonIgnore] string Field, string Value, Message Reason)
{
    /// <summary>Where in the JSON body (RFC 6901). Not there for a request without one.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Pointer => SentPlace.Of(Field).Pointer;

    /// <summary>The parameter. Not there for a JSON body.</summary>
    [JsonIgnore(Condition = JsonIgnoreCondition.WhenWritingNull)]
    public string? Parameter => SentPlace.Of(Field).Parameter;

    /// <summary>The same assumption of a JSON body, whose members are named by pointers: chart is /chart.</summary>
    /// <param name="at">Pointer of the object that the member belongs to.</param>
    public Assumption InBody(string at = "") =>
        Field.Length == 0 || Field[0] == '/' ? this : this with { Field = $"{at}/{Field.Replace('.', '/')}" };
}
