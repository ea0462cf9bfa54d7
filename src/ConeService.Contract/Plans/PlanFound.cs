using System.Diagnostics.CodeAnalysis;
using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Requests;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Plans;

/// <summary>Collects what is wrong with a part of a plan's request.</summary>
internal sealed class PlanFound
{
    private readonly List<Finding> findings = [];

    /// <summary>What was found, in the order of the checks.</summary>
    public IReadOnlyList<Finding> Findings => findings;

    /// <summary>Adds a finding.</summary>
    public void Add(string code, string at, string? value, Message message, params Message[] allowed) =>
        findings.Add(new(code, at, value, message, allowed));

    /// <summary>A member that must be there and is not.</summary>
    public void Missing(string at, string? value = null) => Add(
        FindingCodes.MemberMissing, at, value, Message.Of("members.member-missing", ("member", at[(at.LastIndexOf('/') + 1)..])));

    /// <summary>A moment that must be there. Whether it is one is seen by whoever knows time zones.</summary>
    public void Moment(string? sent, string at)
    {
        if (string.IsNullOrWhiteSpace(sent)) Missing(at);
    }

    /// <summary>A number that, if it is there, lies within the range that is declared of its member.</summary>
    public void Within<[DynamicallyAccessedMembers(DynamicallyAccessedMemberTypes.PublicProperties)] T>(
        double? sent, string member, string at)
    {
        if (sent is null || PlanNumbers.Within<T>(sent, member) is not null) return;
        var bounds = Bounds.Of<T>(member);
        OutOfRange(RequestCheck.Text(sent), at, Range(bounds.Low, bounds.High));
    }

    /// <summary>A length that, if it is there, is one.</summary>
    public void Millimetres(SentText sent, string at)
    {
        if (sent.IsAbsent) return;
        var allowed = Message.Of("members.millimetres-allowed", ("most", PlanNumbers.MostMillimetres));
        if (sent.Kind != SentKind.Number) NoNumber(sent, at, allowed);
        else if (PlanNumbers.Millimetres(sent) is null) OutOfRange(sent.Text, at, allowed);
    }

    /// <summary>A number that, if it is there, is one, whatever its value.</summary>
    public void Number(SentText sent, int least, int most, string at)
    {
        if (!sent.IsAbsent && sent.Kind != SentKind.Number) NoNumber(sent, at, Range(least, most));
    }

    /// <summary>A count that, if it is there, is one.</summary>
    public void Count(SentText sent, int most, string at)
    {
        Number(sent, 1, most, at);
        if (sent.Kind == SentKind.Number && PlanNumbers.Count(sent, most) is null) OutOfRange(sent.Text, at, Range(1, most));
    }

    /// <summary>A list that must not be too long.</summary>
    public void AtMost(int? count, int most, string at)
    {
        if (count > most) Add(
            FindingCodes.TooManyItems, at, Text(count.Value), Message.Of("plans.too-many-items", ("count", Text(count.Value))),
            Range(0, most));
    }

    /// <summary>A list that must be neither empty nor too long.</summary>
    /// <param name="count">How many it has; null: it was left out.</param>
    /// <param name="most">Most.</param>
    /// <param name="at">Its pointer.</param>
    /// <param name="empty">What is told of one that is empty or left out; null: that it is missing.</param>
    /// <param name="allowed">What would do.</param>
    public void List(int? count, int most, string at, Message? empty = null, params Message[] allowed)
    {
        if ((count ?? 0) == 0 && empty is not null) Add(FindingCodes.MemberMissing, at, null, empty, allowed);
        else if (count is null or 0) Missing(at);
        else AtMost(count, most, at);
    }

    /// <summary>More pieces than can be planned.</summary>
    public void TooManyPieces(int count) => Add(
        FindingCodes.TooManyPieces, "/pieces", Text(count), Message.Of("plans.too-many-pieces", ("count", Text(count))),
        Message.Of("plans.pieces-allowed", ("most", PlanLimits.MostPieces)));

    private void NoNumber(SentText sent, string at, Message allowed) => findings.Add(new(
        FindingCodes.NumberExpected, at, sent.Text,
        Message.Of("members.number-expected", ("member", at[(at.LastIndexOf('/') + 1)..])), [allowed],
        sent.Kind == SentKind.Text && decimal.TryParse(sent.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out _)
            ? Message.Of("members.number-in-quotation-marks", ("number", sent.Text!.Trim()))
            : null));

    private static string Text(int number) => number.ToString(CultureInfo.InvariantCulture);

    private static Message Range(double low, double high) =>
        Message.Of("answers.range", ("low", RequestCheck.Text(low)), ("high", RequestCheck.Text(high)));

    private void OutOfRange(string? sent, string at, Message allowed) => Add(
        FindingCodes.NumberOutOfRange, at, sent, Message.Of("answers.number-out-of-range", ("value", sent)), allowed);
}
