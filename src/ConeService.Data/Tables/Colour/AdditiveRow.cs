namespace ConeService.Data;

/// <summary>A part of a glaze that changes its colours without colouring by itself.</summary>
/// <param name="Id">Name of the additive in this package.</param>
/// <param name="Name">Its name.</param>
/// <param name="Formula">The oxide it counts as.</param>
/// <param name="Aliases">Other names a caller may use.</param>
/// <param name="Effect">What it does in a glaze, in words.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record AdditiveRow(
    string Id,
    string Name,
    string Formula,
    IReadOnlyList<string> Aliases,
    string Effect,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
