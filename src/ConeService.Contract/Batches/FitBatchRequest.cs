using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;
using ConeService.Contract.Requests;
using ConeService.Contract.Schedules;

namespace ConeService.Contract.Batches;

/// <summary>Templates to be fitted for one kiln.</summary>
/// <param name="Units">C or F: the unit of the temperatures sent, and of the programmes' whole degrees.</param>
/// <param name="Kiln">The kiln of all; left out: no prediction of what it does.</param>
/// <param name="Tariff">What energy costs; left out: no cost.</param>
/// <param name="Items">1 to 100 fits.</param>
[Needs(nameof(Units), nameof(Items))]
public sealed record FitBatchRequest(
    [property: AllowedValues("C", "F")] string? Units = null,
    Kiln? Kiln = null,
    FitTariff? Tariff = null,
    [property: Items(1, BatchCheck.Most)] IReadOnlyList<FitBatchItem?>? Items = null);

/// <summary>One fit of a batch.</summary>
/// <param name="Schedule">Name of the schedule, from /v1/schedules.</param>
/// <param name="Cone">The target cone, as text; left out only for templates that end without a cone.</param>
/// <param name="Chart">The chart whose cone is meant; may be left out.</param>
/// <param name="ClockHand">Where the target cone shall point at the end, as the hour of a clock: 6 is down (90°). 2 to 6; left out:
/// 6.</param>
/// <param name="Load">The load; left out: as the template assumes.</param>
/// <param name="Start">When the programme starts: date, time and offset, such as 2026-12-04T18:00:00+01:00.</param>
/// <param name="LoadingMinutes">How long loading takes before the start, minutes, 0 to 1440.</param>
/// <param name="StartTemperature">Temperature of kiln and load at the start, in units, −20 to 200 °C, −4 to 392 °F; left out: that of the
/// room.</param>
/// <param name="RoomTemperature">Temperature of the room, in units, −20 to 50 °C, −4 to 122 °F; left out: 20 °C.</param>
/// <param name="TimeZone">IANA name of the zone whose clock moments are told by, such as Europe/Berlin; left out: by the offset of the
/// start.</param>
/// <param name="Attendance">usual, or whole-firing where a local rule asks for somebody at the kiln all the time; left out: usual.</param>
/// <param name="FinishBy">Instead of a start: when the programme shall have ended.</param>
/// <param name="PeakBetween">Instead of a start: between which moments the peak shall come.</param>
/// <param name="StartNotBefore">The earliest start to choose from; left out: now.</param>
[Needs(nameof(Schedule))]
public sealed record FitBatchItem(
    string? Schedule = null,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Cone = default,
    string? Chart = null,
    [property: Range(2.0, 6.0), DefaultValue(6.0)] double? ClockHand = null,
    FitLoad? Load = null,
    [property: RegularExpression(StartMoments.Pattern)] string? Start = null,
    [property: Range(0.0, 1440.0)] double? LoadingMinutes = null,
    [property: Range(-20.0, 392.0)] double? StartTemperature = null,
    [property: Range(-20.0, 122.0)] double? RoomTemperature = null,
    string? TimeZone = null,
    [property: WordsOf(typeof(AttendanceRule))] string? Attendance = null,
    [property: RegularExpression(StartMoments.Pattern)] string? FinishBy = null,
    PeakWindow? PeakBetween = null,
    [property: RegularExpression(StartMoments.Pattern)] string? StartNotBefore = null)
{
    /// <summary>The fit as it would be asked alone.</summary>
    /// <param name="batch">The batch, with what all its fits share.</param>
    public FitRequest Alone(FitBatchRequest batch) => new(
        Cone, Chart, ClockHand, batch.Units, batch.Kiln, Load, Start, LoadingMinutes, StartTemperature, batch.Tariff, RoomTemperature,
        TimeZone, Attendance, FinishBy, PeakBetween, StartNotBefore);
}
