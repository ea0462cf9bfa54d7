namespace ConeService.Data;

/// <summary>The greatest rate for a wall of one thickness in one band of temperature.</summary>
/// <param name="Band">What happens in the ware.</param>
/// <param name="ThicknessMillimetres">Thickness of the wall, mm.</param>
/// <param name="FromCelsius">Lower end of the band, °C.</param>
/// <param name="ToCelsius">Upper end of the band, °C.</param>
/// <param name="RateCelsiusPerHour">Greatest rate, °C/h.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ThicknessLimitRow(WaterBand Band, decimal ThicknessMillimetres, decimal FromCelsius, decimal ToCelsius,
    decimal RateCelsiusPerHour, IReadOnlyList<string> Sources, Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
