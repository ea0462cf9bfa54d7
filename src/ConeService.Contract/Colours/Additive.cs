using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>A part of a glaze that changes its colours without colouring by itself.</summary>
/// <param name="Id">Id of the additive.</param>
/// <param name="Name">Its name.</param>
/// <param name="Formula">The oxide it counts as.</param>
/// <param name="Aliases">Other names a caller may use.</param>
/// <param name="Effect">What it does in a glaze, in words.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record Additive(
    string Id,
    string Name,
    string Formula,
    IReadOnlyList<string> Aliases,
    string Effect,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("additives", Id);
}
