namespace ConeService.Data;

/// <summary>One printed cell of a chart: where the cone has bent through 90° when heated at the rate.</summary>
/// <param name="Chart">Id of the chart.</param>
/// <param name="Cone">The cone, as the chart prints it.</param>
/// <param name="RateCelsiusPerHour">Heating rate over the last 100 °C, °C/h; null where the chart states none.</param>
/// <param name="Celsius">End point as printed, °C.</param>
/// <param name="Fahrenheit">End point as printed or corrected, °F; null where only °C was seen.</param>
/// <param name="Source">Id of the source.</param>
/// <param name="Confidence">How far the cell can be trusted.</param>
/// <param name="Note">Why an oddity stays as printed.</param>
/// <param name="Rate">The rate as a part of the key: as written, or <c>unstated</c>.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record EndPointRow(string Chart, string Cone, decimal? RateCelsiusPerHour, decimal Celsius, decimal? Fahrenheit,
    string Source, Confidence Confidence, string? Note, string Rate,
    RowEvidence? Evidence = null)
{
    /// <summary>Whether °F was adopted against the print (<see cref="Dataset.Corrections"/>).</summary>
    public bool IsFahrenheitCorrected { get; init; }
}
