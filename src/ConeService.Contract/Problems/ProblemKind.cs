using ConeService.Contract.Texts;

namespace ConeService.Contract.Problems;

/// <summary>A kind of problem, with the texts of its help page.</summary>
/// <param name="Code">One of <see cref="FindingCodes"/>; the type of a problem is /problems/{code}.</param>
/// <param name="Status">HTTP status code.</param>
public sealed record ProblemKind(string Code, int Status)
{
    /// <summary>The kind in a few words.</summary>
    public Message Title => Message.Of($"problems.{Code}.title");

    /// <summary>What it means, for a person.</summary>
    public Message Meaning => Message.Of($"problems.{Code}.meaning");

    /// <summary>What to do about it.</summary>
    public Message Remedy => Message.Of($"problems.{Code}.remedy");
}
