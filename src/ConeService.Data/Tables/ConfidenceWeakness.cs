namespace ConeService.Data;

/// <summary>How far confidences can be trusted against each other.</summary>
public static class ConfidenceWeakness
{
    /// <summary>Place of a confidence from the surest, 0, to the weakest, 5.</summary>
    // What is computed from seen cells is surer than what was recalled.
    public static int Of(Confidence confidence) => confidence switch
    {
        Confidence.Corroborated => 0,
        Confidence.Published => 1,
        Confidence.Derived => 2,
        Confidence.CommonPractice => 3,
        Confidence.FromMemory => 4,
        _ => 5,
    };
}
