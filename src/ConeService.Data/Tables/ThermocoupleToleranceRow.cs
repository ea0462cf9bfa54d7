namespace ConeService.Data;

/// <summary>How far a new thermocouple of one class may read off.</summary>
/// <param name="Id">Name of the row.</param>
/// <param name="Type">Letter of the thermocouple.</param>
/// <param name="Standard">iec-60584 or astm-e230.</param>
/// <param name="Class">The class, as the standard names it.</param>
/// <param name="Formula">greater (of floor and share·t) or beyond (floor, and share·(t − from) above from).</param>
/// <param name="FloorCelsius">The floor, °C.</param>
/// <param name="ShareOfCelsius">The share of the temperature.</param>
/// <param name="FromCelsius">Where the share begins to count, °C; null for greater.</param>
/// <param name="LowestCelsius">Lower end of the standard's range, °C.</param>
/// <param name="HighestCelsius">Upper end, °C; null where it was not seen.</param>
/// <param name="Source">Id of the source.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ThermocoupleToleranceRow(
    string Id, string Type, string Standard, string Class, string Formula, decimal FloorCelsius, decimal ShareOfCelsius,
    decimal? FromCelsius,
    decimal LowestCelsius, decimal? HighestCelsius, string Source, Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
