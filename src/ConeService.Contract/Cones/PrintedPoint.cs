using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Cones;

/// <summary>A printed cell that an answer was read or computed from.</summary>
/// <param name="Chart">The chart that prints it.</param>
/// <param name="Cone">The cone, as that chart prints it.</param>
/// <param name="RateCelsiusPerHour">Its heating rate, °C/h; null where the chart states none.</param>
/// <param name="Celsius">The printed value, °C.</param>
/// <param name="Confidence">How far it can be trusted.</param>
/// <param name="Source">Id of its source.</param>
/// <param name="Note">Why an oddity stays as printed; null for an ordinary cell.</param>
public sealed record PrintedPoint(
    string Chart, string Cone, decimal? RateCelsiusPerHour, decimal Celsius, Confidence Confidence, string Source, string? Note)
{
    /// <summary>Address of the cell.</summary>
    public Address Href => TableAddress.OfCell(Chart, Cone, RateCelsiusPerHour);
}
