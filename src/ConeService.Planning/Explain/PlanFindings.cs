using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Plans;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Kilns;
using ConeService.Planning.Digest;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Explain;

/// <summary>Puts findings and warnings of a plan into sentences.</summary>
internal static class PlanFindings
{
    /// <summary>A finding, with what was said by load check or fit where they said it.</summary>
    public static Finding Told(PlanFinding found) => found switch
    {
        { Code: FindingCodes.HoursUnknown } => Make(
            FindingCodes.HoursUnknown, found, Message.Of("plans.hours-unknown"), Message.Of("plans.send-minutes")),
        { Cause: { } cause } => cause with { Field = found.Pointer },
        { Code: FindingCodes.NumberOutOfRange } => Make(
            FindingCodes.NumberOutOfRange, found, Message.Of("answers.number-out-of-range", ("value", found.Value))),
        { Code: FindingCodes.KilnUnknown } => Make(
            FindingCodes.KilnUnknown, found, Message.Of("plans.kiln-unknown", ("id", found.Value))),
        { Code: FindingCodes.RangeInverted } => Make(FindingCodes.RangeInverted, found, Message.Of("plans.span-inverted")),
        { Code: FindingCodes.TimeZoneUnknown } => Make(
            FindingCodes.TimeZoneUnknown, found, Message.Of("plans.time-zone-unknown", ("zone", found.Value)),
            Message.Verbatim("Europe/Berlin")),
        { Code: FindingCodes.StartUnreadable } => Make(
            FindingCodes.StartUnreadable, found, Message.Of("plans.moment-unreadable", ("moment", found.Value)),
            Message.Verbatim("2026-12-04T18:00")),
        { Code: FindingCodes.StartWithoutOffset } => Make(
            FindingCodes.StartWithoutOffset, found, Message.Of("plans.moment-without-offset", ("moment", found.Value)),
            Message.Verbatim("2026-12-04T18:00+01:00")),
        { Code: FindingCodes.StartInSkippedHour } => Make(
            FindingCodes.StartInSkippedHour, found, Message.Of("plans.moment-skipped", ("moment", found.Value))),
        { Code: FindingCodes.HorizonTooLong } => Make(FindingCodes.HorizonTooLong, found, Message.Of("plans.horizon-too-long")),
        { Code: FindingCodes.NoStartInHorizon } => Make(FindingCodes.NoStartInHorizon, found, Message.Of("plans.no-start-in-horizon")),
        { Code: FindingCodes.DueBeforeReady } => Make(FindingCodes.DueBeforeReady, found, Message.Of("plans.due-before-ready")),
        { Code: FindingCodes.FiringNotOnMenu } => Make(FindingCodes.FiringNotOnMenu, found, Message.Of("plans.firing-not-on-menu")),
        { Code: FindingCodes.PinsOverlap } => Make(
            FindingCodes.PinsOverlap, found, Message.Of("plans.pins-overlap", ("other", "/firings/" + found.Value))),
        { Code: FindingCodes.PieceUnknown } => Make(FindingCodes.PieceUnknown, found, Message.Of("plans.piece-unknown")),
        _ => throw new InvalidOperationException($"A finding {found.Code} has no sentence."),
    };

    /// <summary>A warning.</summary>
    public static PlanWarning Warning(PlanFinding told) => new(
        told.Code,
        told.Code switch
        {
            PlanWarningCodes.PinNotAccepted => Message.Of("plans.pin-not-accepted"),
            PlanWarningCodes.PinOverfull => Message.Of("plans.pin-overfull"),
            PlanWarningCodes.PinNotReady => Message.Of("plans.pin-not-ready"),
            PlanWarningCodes.LookAtPiece => Message.Of("plans.look-at-piece", ("id", told.Value)),
            PlanWarningCodes.WithoutSolver => Message.Of("plans.without-solver"),
            PlanWarningCodes.AnnouncedNotPossible => Message.Of("plans.announced-not-possible"),
            _ => throw new InvalidOperationException($"A warning {told.Code} has no sentence."),
        },
        told.Pointer);

    /// <summary>Something that was left out of the request, with what was taken.</summary>
    public static Assumption Assumed(PlanAssumption left) => new(
        left.Pointer, left.Value,
        left.Ware == SlowWare.Usual ? Message.Of("plans.assumed") : Message.Of("plans.assumed-for-ware", ("ware", Words(left.Ware))));

    /// <summary>Damp or thick ware in words: “walls to 24 mm”.</summary>
    public static string Words(SlowWare ware) => string.Join(
        ", ", new[]
        {
            ware.Dryness == Dryness.BoneDry ? null : EnumWords.Word(ware.Dryness),
            ware.ThickestMillimetres is { } wall ? string.Create(CultureInfo.InvariantCulture, $"walls to {wall} mm") : null,
        }.OfType<string>());

    private static Finding Make(string code, PlanFinding found, Message message, params Message[] allowed) =>
        new(code, found.Pointer, found.Value, message, allowed);
}
