using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>How far confidences can be trusted against each other.</summary>
internal static class ConfidenceOrder
{
    /// <summary>The weakest: what is computed is as sure as the weakest of what it rests on.</summary>
    /// <param name="confidences">At least one.</param>
    public static Confidence Weakest(IEnumerable<Confidence> confidences) => confidences.MaxBy(ConfidenceWeakness.Of);
}
