using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Practice;

/// <summary>
/// A hazard of firing or of a material: who is exposed, when, and what controls it. Local codes and licensed practice decide.
/// </summary>
/// <param name="Id">Id of the caution.</param>
/// <param name="Name">The hazard in a few words.</param>
/// <param name="HazardKind">What sort of hazard it is.</param>
/// <param name="Severity">How bad it can get without control.</param>
/// <param name="AppliesTo">The kilns, firings and materials it belongs to, words of a closed list.</param>
/// <param name="Who">Who is exposed; this package's reading, not the source's.</param>
/// <param name="Stages">At which stages of the work; this package's reading, not the source's.</param>
/// <param name="When">When and where it arises.</param>
/// <param name="Control">What controls it.</param>
/// <param name="Figures">Figures that go with it, in words; exposure limits stand as numbers in exposure-limits.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
/// <param name="Student">The row in plain sentences for a student, without ids; null where the data package has none.</param>
public sealed record Caution(
    string Id,
    string Name,
    HazardKind HazardKind,
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
    Message? Student = null)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("cautions", Id);
}
