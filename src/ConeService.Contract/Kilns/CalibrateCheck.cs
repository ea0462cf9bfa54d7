using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Kilns;

/// <summary>What must hold for a calibration as a whole, before its kiln and its logs are read.</summary>
public static class CalibrateCheck
{
    /// <summary>Checks it.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public static void Require(CalibrateRequest request)
    {
        var check = new RequestCheck();
        check.Units(request.Units);
        Missing(check, request.Kiln is not null, "kiln", "/kiln", "{\"heat\": \"electric\", \"volumeLitres\": 150}");
        Missing(check, request.Firings is not null, "firings", "/firings", "[{\"log\": [{\"minutes\": 0, \"temperature\": 20}]}]");
        var firings = request.Firings ?? [];
        check.Require(
            request.Firings is null || firings.Count is > 0 and <= CalibrateRequest.MostFirings,
            firings.Count == 0 ? FindingCodes.EmptyRequest : FindingCodes.TooManyItems, "/firings", RequestCheck.Text(firings.Count),
            Message.Of("calibration.firings-count", ("count", firings.Count)),
            [Message.Of("calibration.firings-allowed", ("most", CalibrateRequest.MostFirings))]);
        for (var i = 0; i < Math.Min(firings.Count, CalibrateRequest.MostFirings); i++)
        {
            var at = FormattableString.Invariant($"/firings/{i}");
            var (log, segments) = (firings[i]?.Log, firings[i]?.Segments);
            Missing(check, log is not null, "log", at + "/log", "[{\"minutes\": 0, \"temperature\": 20}]");
            check.Require(
                segments is null or { Count: > 0 }, FindingCodes.EmptyRequest, at + "/segments", null,
                Message.Of("heat-work.no-segments"), [Message.Of("heat-work.segments-allowed")]);
            check.Require(
                segments is null or { Count: <= HeatWork.HeatWorkCheck.MostSegments }, FindingCodes.TooManySegments, at + "/segments", null,
                Message.Of("heat-work.too-many-segments", ("count", segments?.Count)), [Message.Of("heat-work.segments-allowed")]);
            check.Require(
                firings[i]?.MeterKilowattHours is not { } meter || meter is > 0 and <= 100_000, FindingCodes.NumberOutOfRange,
                at + "/meterKilowattHours", RequestCheck.Text(firings[i]?.MeterKilowattHours),
                Message.Of("answers.number-out-of-range", ("value", RequestCheck.Text(firings[i]?.MeterKilowattHours))),
                [Message.Of("calibration.meter-allowed")]);
        }

        check.Done();
    }

    private static void Missing(RequestCheck check, bool present, string member, string field, string example) => check.Require(
        present, FindingCodes.MemberMissing, field, null, Message.Of("members.member-missing", ("member", member)),
        Message.Verbatim([example]));
}
