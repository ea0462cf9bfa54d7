using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Equations;

/// <summary>What the service computes with.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Items">The equations, by id; those of this build where the package is older than 1.7.0 and has none.</param>
public sealed record EquationList(string DatasetVersion, IReadOnlyList<Equation> Items);

/// <summary>One equation.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Equation">The equation.</param>
public sealed record EquationDetail(string DatasetVersion, [property: Flat] Equation Equation);

/// <summary>An equation that answers come from, or a rule where nothing is computed.</summary>
/// <param name="Id">Id of the equation.</param>
/// <param name="Name">What it gives.</param>
/// <param name="Text">The equation as plain text.</param>
/// <param name="Symbols">What the symbols are, with their units.</param>
/// <param name="RestsOn">Ids of the equations whose results it uses.</param>
/// <param name="Documentation">Where it is derived and tried: a file of the repository, and a heading in it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far it can be trusted.</param>
/// <param name="Note">What a reader must know about it; null where there is nothing to add.</param>
public sealed record Equation(
    string Id, string Name, string Text, string Symbols, IReadOnlyList<string> RestsOn, string Documentation,
    IReadOnlyList<string> Sources, Confidence Confidence, string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("equations", Id);

    /// <summary>The page on which it is derived, at its own anchor.</summary>
    public Address Page => new($"/guide/{Documentation.Split('/', '.')[1]}#{Id}");
}
