using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>One word of the closed list of colours.</summary>
/// <param name="Id">The word.</param>
/// <param name="WordKind">hue, tone or surface.</param>
/// <param name="Covers">Names that were put under it; null where only itself.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
public sealed record ColourWord(
    string Id,
    ColourWordKind WordKind,
    string? Covers,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("colour-words", Id);
}
