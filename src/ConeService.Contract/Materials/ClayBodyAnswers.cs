using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Contract.Materials;

/// <summary>Clay bodies.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Cone">The cone asked for; null for all.</param>
/// <param name="Atmosphere">The atmosphere asked for; null for all.</param>
/// <param name="Items">The bodies, by id; those of overlays follow.</param>
public sealed record ClayBodyList(
    string DatasetVersion,
    string? Cone,
    [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere? Atmosphere,
    IReadOnlyList<ClayBodySummary> Items);

/// <summary>A clay body in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Description">What it is made of.</param>
/// <param name="Bisque">Cones of its bisque.</param>
/// <param name="Mature">Cones at which it is mature; null where its base clay decides.</param>
/// <param name="Atmospheres">Atmospheres it is used in.</param>
/// <param name="RangeConfidence">How far the cones can be trusted.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record ClayBodySummary(
    string Id,
    string Name,
    string? Description,
    ConeRange Bisque,
    ConeRange? Mature,
    [property: AtmosphereWords(AtmosphereUse.Firing)] IReadOnlyList<Atmosphere> Atmospheres,
    Confidence RangeConfidence,
    IReadOnlyList<string> Sources)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("clay-bodies", Id);
}

/// <summary>One clay body with what happens outside its range.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="ClayBody">As the data package has it.</param>
/// <param name="OverfireSteps">Where each harm begins above the best cone.</param>
/// <param name="Disagreements">Where sources contradict each other on it.</param>
public sealed record ClayBodyDetail(
    string DatasetVersion,
    [property: Flat] ClayBody ClayBody,
    IReadOnlyList<OverfireStepAt> OverfireSteps,
    IReadOnlyList<Disagreement> Disagreements);

/// <summary>Where a harm begins.</summary>
/// <param name="Step">The harm.</param>
/// <param name="ConesOverBest">Whole cones over the best cone.</param>
/// <param name="Cone">The first cone at which it is reached; null beyond cone 14.</param>
public sealed record OverfireStepAt(OverfireStep Step, decimal ConesOverBest, string? Cone);
