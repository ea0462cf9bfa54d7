using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Digest;

/// <summary>Checks numbers and texts of a request.</summary>
internal sealed class Numbers(List<PlanFinding> findings)
{
    /// <summary>A number within a range, or what is taken where none was sent; what is outside is a finding.</summary>
    public double Within(double? sent, double least, double most, double otherwise, string pointer)
    {
        if (sent is not { } number) return otherwise;
        if (number >= least && number <= most) return number;
        findings.Add(new(FindingCodes.NumberOutOfRange, pointer, Moments.Text(number)));
        return otherwise;
    }

    /// <summary>A length in mm; null when it is left out or no length, which is a finding.</summary>
    public decimal? Millimetres(SentText sent, string pointer)
    {
        if (sent.IsAbsent) return null;
        if (sent.Kind == SentKind.Number
            && decimal.TryParse(sent.Text, NumberStyles.Float, CultureInfo.InvariantCulture, out var length) && length is > 0 and <= 5000)
        {
            return length;
        }

        findings.Add(new(FindingCodes.NumberOutOfRange, pointer, sent.Text));
        return null;
    }

    /// <summary>A count; what is none is a finding.</summary>
    public int Count(SentText sent, int most, string pointer)
    {
        if (sent.IsAbsent) return 1;
        if (int.TryParse(sent.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) && count >= 1
            && count <= most) return count;
        findings.Add(new(FindingCodes.NumberOutOfRange, pointer, sent.Text));
        return 1;
    }

    /// <summary>A list that must not be too long.</summary>
    public void AtMost(int? count, int most, string pointer)
    {
        if (count > most) findings.Add(new(FindingCodes.TooManyItems, pointer, Moments.Text(count.Value)));
    }

    /// <summary>A list that must not be empty nor too long; what is missing is a finding.</summary>
    public void List(int? count, int most, string pointer, string code = FindingCodes.TooManyItems)
    {
        if (count is null or 0) findings.Add(new(FindingCodes.MemberMissing, pointer));
        else if (count > most) findings.Add(new(code, pointer, count.Value.ToString(CultureInfo.InvariantCulture)));
    }
}
