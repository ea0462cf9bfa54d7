using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Study;

/// <summary>An oxide of which too much in a glaze brings a fault, by what it does to expansion.</summary>
/// <param name="Id">Id of the oxide.</param>
/// <param name="Name">Its name in the trade.</param>
/// <param name="Oxide">Its formula.</param>
/// <param name="Effect">lowers, little or raises: what more of it does to the expansion of a usual glaze.</param>
/// <param name="UpToPercent">Share by mass of the glaze up to which that holds, %; null where no bound is told.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record OxideExpansion(
    string Id,
    string Name,
    string Oxide,
    string Effect,
    decimal? UpToPercent,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("oxide-expansions", Id);
}
