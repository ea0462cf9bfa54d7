namespace ConeService.Data;

/// <summary>A word of the trade that is none of the contract.</summary>
/// <param name="Vocabulary">The member it is sent in: state, firingKind, atmosphere.</param>
/// <param name="Word">The word, in lower case.</param>
/// <param name="Means">Words of the contract that it may stand for, the likeliest first.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record TradeWordRow(
    string Vocabulary, string Word, IReadOnlyList<string> Means, IReadOnlyList<string> Sources, Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
