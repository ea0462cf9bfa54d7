using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>An end point with what it rests on.</summary>
/// <param name="Celsius">End point, °C.</param>
/// <param name="Basis">What it rests on.</param>
/// <param name="SigmaCelsius">Standard uncertainty, K; null where the chart states no rate, and with it no spread.</param>
/// <param name="From">The printed cells of the chart that it was read or computed from.</param>
/// <param name="Lender">The cells of the cone whose curve is borrowed; empty for a value that borrows nothing.</param>
internal sealed record EndPointValue(
    decimal Celsius, Basis Basis, double? SigmaCelsius, IReadOnlyList<EndPointRow> From, IReadOnlyList<EndPointRow> Lender)
{
    /// <summary>Every cell that it rests on.</summary>
    public IEnumerable<EndPointRow> Cells => From.Concat(Lender);

    /// <summary>The weakest of its cells; a computed value is derived at best.</summary>
    public Confidence Confidence => ConfidenceOrder.Weakest(
        [.. Cells.Select(c => c.Confidence), .. Basis == Basis.Printed ? Array.Empty<Confidence>() : [Confidence.Derived]]);
}
