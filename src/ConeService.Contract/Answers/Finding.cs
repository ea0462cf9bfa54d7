using ConeService.Contract.Texts;

namespace ConeService.Contract.Answers;

/// <summary>One thing wrong with what a caller sent: names the field, the value, what is allowed and the likely mistake.</summary>
/// <param name="Code">Stable kebab-case name of the kind of problem; the host serves a help page of this name.</param>
/// <param name="Field">The parameter, or a JSON pointer into the body.</param>
/// <param name="Value">What was sent, as text; null where nothing was sent.</param>
/// <param name="Message">One sentence that says what is wrong.</param>
/// <param name="Allowed">What would be accepted: examples, a range, or near matches.</param>
/// <param name="LikelyMistake">What the caller probably meant; null where there is no good guess.</param>
public sealed record Finding(
    string Code,
    string Field,
    string? Value,
    Message Message,
    IReadOnlyList<Message> Allowed,
    Message? LikelyMistake = null);
