namespace ConeService.Data;

/// <summary>Whether more of an oxide makes a glaze shrink more or less on cooling, and the fault that too much of it brings.</summary>
/// <param name="Id">Name of the oxide.</param>
/// <param name="Oxide">Its formula.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="Place">Place by what a percent by mass adds to expansion, from the least, 1, up.</param>
/// <param name="Effect">lowers, little or raises: what more of it does to the expansion of a usual glaze.</param>
/// <param name="UpToPercent">Share by mass up to which that holds, %; null where no bound is told.</param>
/// <param name="FaultOfMore">Id of the fault that too much of it brings; null where it decides neither.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record OxideExpansionRow(
    string Id,
    string Oxide,
    string Name,
    int Place,
    string Effect,
    decimal? UpToPercent,
    string? FaultOfMore,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
