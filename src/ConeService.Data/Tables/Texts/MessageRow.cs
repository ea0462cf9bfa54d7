namespace ConeService.Data;

/// <summary>A sentence of the service in one language, for one kind of reader.</summary>
/// <param name="Code">Stable kebab-case name of the sentence, the area before the first dot: <c>heat-work.full-speed-assumed</c>.</param>
/// <param name="Audience">Whom it speaks to.</param>
/// <param name="Language">Language, BCP 47: <c>en</c>.</param>
/// <param name="Text">The sentence with named parameters; see <see cref="MessageTemplate"/>.</param>
public sealed record MessageRow(string Code, MessageAudience Audience, string Language, string Text);
