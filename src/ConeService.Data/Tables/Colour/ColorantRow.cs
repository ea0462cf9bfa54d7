namespace ConeService.Data;

/// <summary>What colours, clouds or lustres a glaze.</summary>
/// <param name="Id">Name of the colorant, kept from the reference tables.</param>
/// <param name="Name">Its name.</param>
/// <param name="Formula">The substance that percentages count, unless a note names another form.</param>
/// <param name="Kind">oxide, stain (made up and calcined), opacifier, lustre (metal film), mixture, reducer (colours by taking
/// oxygen), historic (told, not to be used).</param>
/// <param name="Hazard">Hazard to whoever handles and fires it.</param>
/// <param name="HazardNote">The hazard in words.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Contains">Other colorants that it brings, in amounts that are not stated.</param>
/// <param name="Aliases">Other names a caller may use.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ColorantRow(
    string Id,
    string Name,
    string Formula,
    ColorantKind Kind,
    HazardLevel Hazard,
    string HazardNote,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Contains,
    IReadOnlyList<string> Aliases,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
