using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Contract.Materials;

/// <summary>Glazes and decorations.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Cone">The cone asked for; null for all.</param>
/// <param name="Atmosphere">The atmosphere asked for; null for all.</param>
/// <param name="Items">The coats, by id; those of overlays follow.</param>
public sealed record GlazeList(
    string DatasetVersion, string? Cone, [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere? Atmosphere,
    IReadOnlyList<GlazeSummary> Items);

/// <summary>A coat in a list.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Name">What it is called.</param>
/// <param name="CoatKind">What sort of coat it is.</param>
/// <param name="Cones">Its cones.</param>
/// <param name="Atmospheres">Atmospheres in which it gives what it is meant to give.</param>
/// <param name="FiredIn">Kinds of firing it is fired in.</param>
/// <param name="RunRisk">How readily it runs above its range.</param>
/// <param name="RangeConfidence">How far the cones and atmospheres can be trusted.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record GlazeSummary(
    string Id,
    string Name,
    CoatKind CoatKind,
    ConeRange Cones,
    [property: AtmosphereWords(AtmosphereUse.Firing)] IReadOnlyList<Atmosphere> Atmospheres,
    IReadOnlyList<FiringKind> FiredIn,
    RunRisk RunRisk,
    Confidence RangeConfidence,
    IReadOnlyList<string> Sources)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("glazes", Id);
}

/// <summary>One coat with what happens outside its range.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Glaze">As the data package has it.</param>
/// <param name="Disagreements">Where sources contradict each other on it.</param>
public sealed record GlazeDetail(string DatasetVersion, [property: Flat] Glaze Glaze, IReadOnlyList<Disagreement> Disagreements);
