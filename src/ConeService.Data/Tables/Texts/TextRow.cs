namespace ConeService.Data;

/// <summary>A row of another table told once more, in plain sentences, to one kind of reader.</summary>
/// <param name="Table">The table that the row stands in.</param>
/// <param name="Row">Id of the row.</param>
/// <param name="Audience">Whom the text speaks to.</param>
/// <param name="Language">Language, BCP 47: <c>en</c>.</param>
/// <param name="Text">The sentences. They say nothing that the row does not, and rest on its sources.</param>
public sealed record TextRow(string Table, string Row, MessageAudience Audience, string Language, string Text);
