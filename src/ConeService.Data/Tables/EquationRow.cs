namespace ConeService.Data;

/// <summary>An equation, or a rule where nothing is computed, that answers come from.</summary>
/// <param name="Id">Name of the equation.</param>
/// <param name="Name">What it gives.</param>
/// <param name="Equation">The equation as plain text.</param>
/// <param name="Symbols">What the symbols are, with their units.</param>
/// <param name="RestsOn">Ids of the equations whose results it uses.</param>
/// <param name="Documentation">Where it is derived and tried, in the repository: a file and a heading.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far it can be trusted.</param>
/// <param name="Note">What a reader must know about it.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record EquationRow(
    string Id, string Name, string Equation, string Symbols, IReadOnlyList<string> RestsOn, string Documentation,
    IReadOnlyList<string> Sources, Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
