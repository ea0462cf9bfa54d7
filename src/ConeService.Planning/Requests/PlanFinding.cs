using ConeService.Contract.Answers;

namespace ConeService.Planning.Requests;

/// <summary>One thing wrong with a request, or to be told about it.</summary>
/// <param name="Code">A code of findings of the contract, or of warnings of a plan.</param>
/// <param name="Pointer">JSON pointer (RFC 6901) into the request.</param>
/// <param name="Value">What was sent, as text; null where nothing was.</param>
/// <param name="Cause">What the load check, the fit or the reading of a quantity said, where they said it; its pointer is their
/// own.</param>
internal sealed record PlanFinding(string Code, string Pointer, string? Value = null, Finding? Cause = null)
{
    /// <summary>What was found by the checks that need no data.</summary>
    public static IEnumerable<PlanFinding> Of(IEnumerable<Finding> found) =>
        found.Select(f => new PlanFinding(f.Code, f.Field, f.Value, f));
}

/// <summary>Raised when no plan can be made of a request; carries every finding.</summary>
internal sealed class PlanRefusedException : Exception
{
    /// <summary>Refuses; at least one finding.</summary>
    public PlanRefusedException(IReadOnlyList<PlanFinding> findings)
        : base(string.Join("; ", findings.Select(f => $"{f.Pointer}: {f.Code}"))) => Findings = findings;

    /// <summary>Everything that was found wrong.</summary>
    public IReadOnlyList<PlanFinding> Findings { get; }
}
