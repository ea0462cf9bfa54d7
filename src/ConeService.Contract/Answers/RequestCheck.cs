using ConeService.Contract.Problems;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Answers;

/// <summary>Collects what is wrong with a request as a whole, before anything is computed; the one way requests are checked.</summary>
public sealed class RequestCheck
{
    private readonly List<Finding> findings = [];

    /// <summary>What was found, in the order of the checks.</summary>
    public IReadOnlyList<Finding> Findings => findings;

    /// <summary>Adds a finding unless a condition holds.</summary>
    /// <param name="holds">What must be true.</param>
    /// <param name="code">Code of the problem.</param>
    /// <param name="member">JSON pointer to the member.</param>
    /// <param name="value">What was sent, as text.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="allowed">What would be accepted.</param>
    /// <param name="mistake">What the caller probably meant.</param>
    public void Require(
        bool holds, string code, string member, string? value, Message message, IReadOnlyList<Message> allowed, Message? mistake = null)
    {
        if (!holds) findings.Add(new(code, member, value, message, allowed, mistake));
    }

    /// <summary>Adds a finding.</summary>
    public void Add(Finding finding) => findings.Add(finding);

    /// <summary>Checks that a number, if it is there, lies within a range, ends included.</summary>
    /// <param name="value">The number; null passes.</param>
    /// <param name="bounds">The range.</param>
    /// <param name="member">JSON pointer to the member.</param>
    /// <param name="allowed">The range in words.</param>
    /// <param name="mistake">What the caller probably meant.</param>
    /// <param name="code">Code of the problem.</param>
    public void Range(
        double? value, Bounds bounds, string member, Message allowed,
        Message? mistake = null, string code = FindingCodes.NumberOutOfRange) =>
        Require(
            value is not { } number || bounds.Contain(number), code, member, Text(value),
            Message.Of("answers.number-out-of-range", ("value", Text(value))), [allowed], mistake);

    /// <summary>Checks that units are named and are C or F.</summary>
    /// <param name="units">As sent.</param>
    /// <param name="at">JSON pointer to the object that holds them.</param>
    public void Units(string? units, string at = "") => Require(
        units is "C" or "F", units is null ? FindingCodes.MemberMissing : FindingCodes.UnitsUnknown, at + "/units", units,
        units is null ? Message.Of("answers.units-missing") : Message.Of("answers.unit-unknown", ("unit", units)),
        Message.Verbatim(["C", "F"]),
        Intended(units));

    /// <summary>“Write …” with the unit that a spelling stands for; null when none.</summary>
    public static Message? Intended(string? units) => Meant(units) is { } meant ? Message.Of("answers.write", ("text", meant)) : null;

    /// <summary>The unit that a spelling such as <c>°c</c> stands for; null when none.</summary>
    public static string? Meant(string? units) => units?.Trim().TrimStart('°').ToUpperInvariant() is { } u && u is "C" or "F" ? u : null;

    /// <summary>The unit in which the rest of a question is judged: the one that was sent or surely meant; else °F, by whose range nothing
    /// is refused that either unit allows.</summary>
    internal static string Judged(string? units) => Meant(units) ?? "F";

    /// <summary>A number as a caller would write it.</summary>
    public static string? Text(double? value) => value?.ToString(System.Globalization.CultureInfo.InvariantCulture);

    /// <summary>Refuses when anything was found.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public void Done()
    {
        if (findings.Count > 0) throw new RefusedException(findings);
    }
}
