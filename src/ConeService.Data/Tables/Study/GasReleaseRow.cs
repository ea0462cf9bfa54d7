namespace ConeService.Data;

/// <summary>What gives off gas while ware is heated, at which temperature, and the faults that it feeds.</summary>
/// <param name="Id">Name of the row.</param>
/// <param name="Substance">What gives off the gas.</param>
/// <param name="Reaction">The reaction, or what happens in words.</param>
/// <param name="Gases">The gases.</param>
/// <param name="CelsiusLow">Temperature at which it begins, °C; that of the landmark where one is named.</param>
/// <param name="CelsiusHigh">Temperature at which it is over, °C; null where that is not known.</param>
/// <param name="Atmosphere">The atmosphere in which the temperatures hold.</param>
/// <param name="RateCelsiusPerHour">Heating rate at which it was measured, °C/h; null where that is not known.</param>
/// <param name="Faults">Ids of the faults that it feeds; none where it is over before it can do harm.</param>
/// <param name="Landmark">Id of the landmark of the firing that tells of the same.</param>
/// <param name="Limit">Id of the temperature limit that tells of the same colorant.</param>
/// <param name="Cautions">Cautions on the gas or the dust.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record GasReleaseRow(
    string Id,
    string Substance,
    string Reaction,
    IReadOnlyList<string> Gases,
    decimal CelsiusLow,
    decimal? CelsiusHigh,
    Atmosphere Atmosphere,
    decimal? RateCelsiusPerHour,
    IReadOnlyList<string> Faults,
    string? Landmark,
    string? Limit,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
