using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing.Reading;

namespace ConeService.Firing.Study.Searching;

/// <summary>Reads what is searched for.</summary>
internal static class SearchQuestion
{
    private const string Parameter = "q";
    private static readonly IReadOnlyList<Message> Examples = Message.Verbatim(["candling", "black core", "hotter 012 or 06"]);

    /// <summary>The text without blanks around it.</summary>
    /// <exception cref="RefusedException">There is none, it is too long, or does not print.</exception>
    public static string Read(string? sent)
    {
        if (string.IsNullOrWhiteSpace(sent))
        {
            throw new RefusedException(new Finding(
                FindingCodes.MemberMissing, Parameter, null, Message.Of("members.member-missing", ("member", Parameter)), Examples));
        }

        return Naming.Check(Parameter, Parameter, sent.Trim()) is { } wrong
            ? throw new RefusedException(wrong with { Allowed = Examples })
            : sent.Trim();
    }
}
