using ConeService.Contract.Answers;

namespace ConeService.Firing.Reading;

/// <summary>
/// Shares out how many findings an answer to several questions lists: the first of each question, that none stands without a reason,
/// and of the others as many as are left.
/// </summary>
internal sealed class FindingBudget
{
    private int left = Told.MostFindings;

    /// <summary>What is listed of the findings of one question, and how many more there are.</summary>
    public (IReadOnlyList<Finding> Listed, int More) Share(IReadOnlyList<Finding> findings)
    {
        var listed = Math.Min(findings.Count, Math.Max(1, left));
        left -= listed;
        return listed == findings.Count ? (findings, 0) : ([.. findings.Take(listed)], findings.Count - listed);
    }
}
