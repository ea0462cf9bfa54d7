namespace ConeService.Data;

/// <summary>One way in which thermocouples drift or break.</summary>
/// <param name="Id">Name of the row.</param>
/// <param name="Types">Letters of the thermocouples concerned.</param>
/// <param name="Mechanism">What happens in the wires.</param>
/// <param name="CelsiusLow">From which temperature, °C; null where no bound is told.</param>
/// <param name="CelsiusHigh">Up to which, °C; null where no bound is told.</param>
/// <param name="Atmosphere">The air around the wires in which it happens.</param>
/// <param name="Reads">low, high, either, or breaks: what the meter shows then.</param>
/// <param name="Effect">What comes of it.</param>
/// <param name="Change">What to do about it.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ThermocoupleAgeingRow(
    string Id,
    IReadOnlyList<string> Types,
    string Mechanism,
    decimal? CelsiusLow,
    decimal? CelsiusHigh,
    Atmosphere Atmosphere,
    string Reads,
    string Effect,
    string Change,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
