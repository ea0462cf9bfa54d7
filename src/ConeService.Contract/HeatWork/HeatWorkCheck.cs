using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.HeatWork;

/// <summary>What must hold for a question on heat work as a whole, before its firing is read.</summary>
public static class HeatWorkCheck
{
    /// <summary>Most segments of a programme.</summary>
    public const int MostSegments = 10_000;

    private static readonly Message[] Segments = [Message.Of("heat-work.segments-allowed")];

    /// <summary>Checks a firing.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public static void Require(HeatWorkRequest request)
    {
        var check = new RequestCheck();
        Firing(check, request, "");
        check.Done();
    }

    /// <summary>Checks a question for a value: only a programme can still be changed.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public static void Require(SolveRequest request)
    {
        var check = new RequestCheck();
        Firing(check, request, "");
        check.Require(
            request.Log is null, FindingCodes.FiringAmbiguous, "/log", null, Message.Of("heat-work.log-is-past"),
            Message.Verbatim(["segments"]));
        check.Done();
    }

    /// <summary>Checks one firing with witness cones, or several.</summary>
    /// <exception cref="RefusedException">Carries every finding.</exception>
    public static void Require(CompareRequest request)
    {
        var check = new RequestCheck();
        if (request.Firings is not { } firings)
        {
            Firing(check, request, "");
        }
        else
        {
            var beside = request is not
            {
                Log: null, Segments: null, Observations: null, Units: null, Chart: null, Thermocouple: null, Uncertainty: null,
            };
            check.Require(
                !beside, FindingCodes.FiringAmbiguous, "/firings", null,
                Message.Of("heat-work.beside-firings"),
                [Message.Of("heat-work.firings-alone"), Message.Of("heat-work.firing-alone")]);
            // Too many are refused as such, and not each.
            for (var i = 0; i < firings.Count && firings.Count <= HeatWorkLimits.MostFirings; i++)
            {
                var at = string.Create(CultureInfo.InvariantCulture, $"/firings/{i}");
                check.Require(
                    firings[i] is not null, FindingCodes.EmptyRequest, at, null,
                    Message.Of("heat-work.firing-null"), [Message.Of("heat-work.firing-allowed")]);
                if (firings[i] is { } firing) Firing(check, firing, at);
            }
        }

        check.Done();
    }

    private static void Firing(RequestCheck check, HeatWorkRequest request, string at)
    {
        var (segments, log) = (request.Segments, request.Log);
        check.Units(request.Units, at);
        check.Require(
            segments is null != log is null, FindingCodes.FiringAmbiguous, at + "/segments", null,
            log is null
                ? Message.Of("heat-work.neither-segments-nor-log")
                : Message.Of("heat-work.segments-and-log"),
            Message.Verbatim(["segments", "log"]));
        check.Require(
            segments is null or { Count: > 0 }, FindingCodes.EmptyRequest, at + "/segments", null,
            Message.Of("heat-work.no-segments"), Segments);
        check.Require(
            segments is null or { Count: <= MostSegments }, FindingCodes.TooManySegments, at + "/segments", null,
            Message.Of("heat-work.too-many-segments", ("count", segments?.Count)), Segments, Message.Of("heat-work.send-as-log"));
        check.Require(
            log is null || request is { Start: null, CoolingRate: null, NaturalCooling: null, FullSpeedRate: null },
            FindingCodes.FiringAmbiguous,
            at + "/log", null, Message.Of("heat-work.log-with-programme"), [Message.Of("heat-work.log-alone")]);
    }
}
