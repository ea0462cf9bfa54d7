using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>How far confidences can be trusted against each other.</summary>
internal static class ConfidenceOrder
{
    /// <summary>The weakest: what is computed is as sure as the weakest of what it rests on.</summary>
    /// <param name="confidences">At least one.</param>
    public static Confidence Weakest(IEnumerable<Confidence> confidences) => confidences.MaxBy(Rank);

    // What is computed from seen cells is surer than what was recalled.
    private static int Rank(Confidence confidence) => confidence switch
    {
        Confidence.Corroborated => 0,
        Confidence.Published => 1,
        Confidence.Derived => 2,
        Confidence.CommonPractice => 3,
        Confidence.FromMemory => 4,
        _ => 5,
    };
}
