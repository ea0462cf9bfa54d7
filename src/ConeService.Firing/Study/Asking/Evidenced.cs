using ConeService.Data;

namespace ConeService.Firing.Study.Asking;

/// <summary>What may be asked: only what rests on a source that was seen, and was not recalled or judged.</summary>
internal sealed class Evidenced(Dataset data)
{
    private readonly HashSet<string> seen = [.. data.Sources
        .Where(s => s.Kind is not ("memory" or "practice") && s.Seen is "whole" or "in-part").Select(s => s.Id)];

    /// <summary>Whether a fact may be asked.</summary>
    /// <param name="confidence">Its confidence.</param>
    /// <param name="sources">Its sources.</param>
    public bool MayAsk(Confidence confidence, IReadOnlyList<string> sources) =>
        confidence is Confidence.Corroborated or Confidence.Published or Confidence.Derived or Confidence.CommonPractice
        && sources.Any(seen.Contains);
}
