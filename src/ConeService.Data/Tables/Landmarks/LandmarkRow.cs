namespace ConeService.Data;

/// <summary>What happens in ware, glaze and kiln at a temperature.</summary>
/// <param name="Id">Name of the landmark, kept from the reference tables with hyphens for underscores; crack-lid and unload drop
/// a word that would be a promise.</param>
/// <param name="Landmark">What happens.</param>
/// <param name="Phase">heating, cooling, either (both ways) or look (how the kiln looks).</param>
/// <param name="CelsiusLow">Lower end of the band, °C.</param>
/// <param name="CelsiusHigh">Upper end of the band, °C.</param>
/// <param name="RateLowCelsiusPerHour">Greatest rate advised: the most careful advice, °C/h.</param>
/// <param name="RateHighCelsiusPerHour">Greatest rate advised: the least careful advice, °C/h.</param>
/// <param name="SlowFromCelsius">From here go slowly, in the direction of the phase, °C.</param>
/// <param name="SlowToCelsius">To here, °C.</param>
/// <param name="HoldLowCelsius">Hold advised from this temperature, °C.</param>
/// <param name="HoldHighCelsius">Hold advised to this temperature, °C.</param>
/// <param name="HoldLowMinutes">Shortest hold advised, min.</param>
/// <param name="HoldHighMinutes">Longest hold advised, min.</param>
/// <param name="Advice">What to do, in words.</param>
/// <param name="Effect">What it does to the ware, or what goes wrong.</param>
/// <param name="Cautions">Cautions that go with it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record LandmarkRow(
    string Id,
    string Landmark,
    LandmarkPhase Phase,
    decimal CelsiusLow,
    decimal CelsiusHigh,
    decimal? RateLowCelsiusPerHour,
    decimal? RateHighCelsiusPerHour,
    decimal? SlowFromCelsius,
    decimal? SlowToCelsius,
    decimal? HoldLowCelsius,
    decimal? HoldHighCelsius,
    decimal? HoldLowMinutes,
    decimal? HoldHighMinutes,
    string? Advice,
    string? Effect,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
