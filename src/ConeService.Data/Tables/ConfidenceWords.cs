namespace ConeService.Data;

/// <summary>How the data files write a <see cref="Confidence"/>.</summary>
internal static class ConfidenceWords
{
    public static IReadOnlyDictionary<string, Confidence> All { get; } = new Dictionary<string, Confidence>(StringComparer.Ordinal)
    {
        ["corroborated"] = Confidence.Corroborated,
        ["published"] = Confidence.Published,
        ["from-memory"] = Confidence.FromMemory,
        ["common-practice"] = Confidence.CommonPractice,
        ["derived"] = Confidence.Derived,
        ["estimate"] = Confidence.Estimate,
    };
}
