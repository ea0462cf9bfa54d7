using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Conversions;

/// <summary>What must hold for a batch of conversions as a whole; its lines are judged one by one.</summary>
public static class ConversionCheck
{
    /// <summary>Most lines of a batch.</summary>
    public const int MostLines = 1000;

    private static readonly Message[] Lines = ["1 to 1,000 lines"];

    /// <summary>Checks a batch.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public static void Require(ConversionRequest request)
    {
        var check = new RequestCheck();
        var count = request.Lines?.Count;
        check.Require(count is > 0, "empty-request", "/lines", null, "The request holds no lines.", Lines);
        check.Require(
            count is null or <= MostLines, "too-many-lines", "/lines", null,
            string.Create(CultureInfo.InvariantCulture, $"The request holds {count} lines."), Lines, "Send several requests.");
        check.Require(
            request.Units is null or "C" or "F", "units-unknown", "/units", request.Units,
            $"“{request.Units}” is not a unit of temperature for bare numbers.", ["C", "F"],
            RequestCheck.Meant(request.Units) is { } meant ? $"Write {meant}." : null);
        check.Done();
    }
}
