namespace ConeService.Data;

/// <summary>One statement on how cones behave.</summary>
/// <param name="Id">Number of the fact.</param>
/// <param name="Topic">What the fact is about.</param>
/// <param name="Statement">The fact in a sentence.</param>
/// <param name="ValuePrinted">The value as the source gives it.</param>
/// <param name="ValueLow">Lower end of the value where it is one number or one span, in <paramref name="Unit"/>.</param>
/// <param name="ValueHigh">Upper end of the value where it is one number or one span, in <paramref name="Unit"/>.</param>
/// <param name="Unit">Unit of the value.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the fact can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ConeFactRow(string Id, string Topic, string Statement, string? ValuePrinted, decimal? ValueLow, decimal? ValueHigh,
    string? Unit, IReadOnlyList<string> Sources, Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
