using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.HeatWork;

/// <summary>What must hold for a question on a firing under way, before its log is read.</summary>
public static class ForecastCheck
{
    private static readonly Message[] Segments = [Message.Of("heat-work.segments-allowed")];

    /// <summary>Checks a question.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public static void Require(ForecastRequest request)
    {
        var check = new RequestCheck();
        check.Units(request.Units);
        check.Require(
            request.Log is not null, FindingCodes.MemberMissing, "/log", null, Message.Of("forecast.log-missing"),
            Message.Verbatim(["[{\"minutes\": 0, \"temperature\": 20}, {\"minutes\": 480, \"temperature\": 1100}]"]));
        check.Require(
            !request.Cone.IsAbsent, FindingCodes.MemberMissing, "/cone", null, Message.Of("heat-work.no-cone-named"),
            Message.Verbatim(["\"6\"", "\"04\""]));
        check.Require(
            request.Segments is null or { Count: > 0 }, FindingCodes.EmptyRequest, "/segments", null,
            Message.Of("forecast.no-segments"), Segments);
        check.Require(
            request.Segments is null or { Count: <= HeatWorkCheck.MostSegments }, FindingCodes.TooManySegments, "/segments", null,
            Message.Of("heat-work.too-many-segments", ("count", request.Segments?.Count)), Segments);
        check.Done();
    }
}
