
namespace ConeService.Contract.Answers;

/// <summary>Raised when a question can't be answered as asked; carries every finding.</summary>
public sealed class RefusedException : Exception
{
    /// <summary>Refuses for one reason.</summary>
    public RefusedException(Finding finding)
        : this([finding])
    {
    }

    /// <summary>Refuses for several reasons; at least one.</summary>
    public RefusedException(IReadOnlyList<Finding> findings) => Findings = findings;

    /// <summary>Everything that was found wrong.</summary>
    public IReadOnlyList<Finding> Findings { get; }

    /// <summary>The findings in words. Put together only when read: most refusals are told as findings.</summary>
    public override string Message => string.Join(" ", Findings.Select(f => f.Message));
}
