namespace ConeService.Data;

/// <summary>
/// A hazard of firing or of a material: who is exposed, when, and what controls it. Local codes and licensed practice decide.
/// </summary>
/// <param name="Id">Number of the caution.</param>
/// <param name="Hazard">The hazard in a few words.</param>
/// <param name="Kind">What sort of hazard it is.</param>
/// <param name="Severity">How bad it can get without control.</param>
/// <param name="AppliesTo">The kilns, firings and materials it belongs to, words of a closed list.</param>
/// <param name="Who">Who is exposed; this package's reading, not the source's.</param>
/// <param name="Stages">At which stages of the work; this package's reading, not the source's.</param>
/// <param name="When">When and where it arises.</param>
/// <param name="Control">What controls it.</param>
/// <param name="Figures">Figures that go with it, in words; exposure limits stand as numbers in exposure-limits.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record CautionRow(
    string Id,
    string Hazard,
    HazardKind Kind,
    Severity Severity,
    IReadOnlyList<string> AppliesTo,
    IReadOnlyList<Exposed> Who,
    IReadOnlyList<WorkStage> Stages,
    string When,
    string Control,
    string? Figures,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
