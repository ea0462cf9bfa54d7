using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>An end point with what it rests on.</summary>
/// <param name="Celsius">End point, °C.</param>
/// <param name="Basis">What it rests on.</param>
/// <param name="SigmaCelsius">Standard uncertainty, K; null where the chart states no rate, and with it no spread.</param>
/// <param name="From">The printed cells it was read or computed from.</param>
internal sealed record EndPointValue(decimal Celsius, Basis Basis, double? SigmaCelsius, IReadOnlyList<EndPointRow> From);
