using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>What colours, clouds or lustres a glaze.</summary>
/// <param name="Id">Id of the colorant.</param>
/// <param name="Name">Its name.</param>
/// <param name="Formula">The substance that percentages count, unless a note names another form.</param>
/// <param name="ColorantKind">oxide, stain (made up and calcined), opacifier, lustre (metal film), mixture, reducer (colours by taking
/// oxygen), historic (told, not to be used).</param>
/// <param name="Hazard">Hazard to whoever handles and fires it.</param>
/// <param name="HazardNote">The hazard in words.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Contains">Other colorants that it brings, in amounts that are not stated.</param>
/// <param name="Aliases">Other names a caller may use.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
/// <param name="Student">The row in plain sentences for a student, without ids; null where the data package has none.</param>
public sealed record Colorant(
    string Id,
    string Name,
    string Formula,
    ColorantKind ColorantKind,
    HazardLevel Hazard,
    string HazardNote,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Contains,
    IReadOnlyList<string> Aliases,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    Message? Student = null)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("colorants", Id);
}
