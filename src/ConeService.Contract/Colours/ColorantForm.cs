using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>A substance in which a colorant is weighed.</summary>
/// <param name="Id">Id of the form.</param>
/// <param name="Colorant">The colorant.</param>
/// <param name="Name">Its name.</param>
/// <param name="Formula">Its formula.</param>
/// <param name="OxideFactor">Parts of the counted oxide with the same metal, for one part of the form.</param>
/// <param name="Arithmetic">How the factor follows from the atomic weights.</param>
/// <param name="Aliases">Other names a caller may use.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record ColorantForm(
    string Id,
    string Colorant,
    string Name,
    string Formula,
    decimal OxideFactor,
    string Arithmetic,
    IReadOnlyList<string> Aliases,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("colorant-forms", Id);
}
