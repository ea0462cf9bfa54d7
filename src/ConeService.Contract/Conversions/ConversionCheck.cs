using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Conversions;

/// <summary>What must hold for a batch of conversions as a whole; its lines are judged one by one.</summary>
public static class ConversionCheck
{
    /// <summary>Most lines of a batch.</summary>
    public const int MostLines = 1000;

    /// <summary>Most columns of a CSV, those of its sender included, which come back in the answer.</summary>
    public const int MostColumns = 1000;

    private static readonly Message[] Lines = [Message.Of("conversions.lines-allowed")];

    /// <summary>What is told of a batch of too many lines.</summary>
    public static Finding TooManyLines(int count) => new(
        FindingCodes.TooManyLines, "/lines", null, Message.Of("conversions.too-many-lines", ("count", count)), Lines,
        Message.Of("conversions.send-several"));

    /// <summary>Checks a batch.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public static void Require(ConversionRequest request)
    {
        var check = new RequestCheck();
        var count = request.Lines?.Count;
        check.Require(count is > 0, FindingCodes.EmptyRequest, "/lines", null, Message.Of("conversions.no-lines"), Lines);
        if (count > MostLines) check.Add(TooManyLines(count.Value));
        check.Require(
            request.Units is null or "C" or "F", FindingCodes.UnitsUnknown, "/units", request.Units,
            Message.Of("conversions.unit-unknown", ("unit", request.Units)), Message.Verbatim(["C", "F"]),
            RequestCheck.Intended(request.Units));
        check.Done();
    }
}
