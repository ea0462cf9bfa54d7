using ConeService.Contract.Answers;
using ConeService.Contract.Equations;
using ConeService.Data;

namespace ConeService.Firing.Equations;

/// <summary>Lists the equations that answers come from.</summary>
internal sealed class EquationCatalogue(Dataset dataset)
{
    /// <summary>Faults where an equation that an answer names is missing.</summary>
    public static IEnumerable<PackageFault> Requires(Dataset dataset) => Requirements.Ids(
        dataset, "equations", EquationIds.All, dataset.Equations.Select(e => e.Id), "the member explain of an answer");

    /// <summary>All of them.</summary>
    public EquationList All() => new(dataset.VersionId, [.. dataset.Equations.Select(Answer)]);

    /// <summary>An equation.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public EquationDetail Find(string id) => new(
        dataset.VersionId, Answer(Rows.Find(dataset, "equations", dataset.Equations, e => e.Id, id, "equation", "/v1/equations")));

    private Equation Answer(EquationRow row) => new(
        row.Id, row.Name, row.Equation, row.Symbols, row.RestsOn, row.Documentation, [.. Sources(row).Distinct()], row.Confidence,
        row.Note);

    // What is derived alone says nothing of where it comes from: the sources of what it rests on follow.
    private IEnumerable<string> Sources(EquationRow row) => row.Sources is ["derived"]
        ? row.Sources.Concat(row.RestsOn.SelectMany(id => Sources(dataset.Equations.First(e => e.Id == id))))
        : row.Sources;
}
