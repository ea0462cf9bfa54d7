using System.ComponentModel;
using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Requests;

namespace ConeService.Contract.Schedules;

/// <summary>What a template is to be fitted to.</summary>
/// <param name="Cone">The target cone, as text; left out only for templates that end without a cone.</param>
/// <param name="Chart">The chart whose cone is meant; may be left out.</param>
/// <param name="ClockHand">Where the target cone shall point at the end, as the hour of a clock: 6 is down (90°). 2 to 6; left out:
/// 6.</param>
/// <param name="Units">C or F: the unit of the temperatures sent, and of the programme's whole degrees.</param>
/// <param name="Kiln">The kiln; left out: no prediction of what it does.</param>
/// <param name="Load">The load; left out: as the template assumes.</param>
/// <param name="Start">When the programme starts: date, time and offset, such as 2026-12-04T18:00:00+01:00; needed for a calendar. With a
/// time zone the offset may be left out.</param>
/// <param name="LoadingMinutes">How long loading takes before the start, minutes, 0 to 1440; for the calendar.</param>
/// <param name="StartTemperature">Temperature of kiln and load at the start, in units, −20 to 200 °C, −4 to 392 °F;
/// left out: that of the room.</param>
/// <param name="Tariff">What energy costs; left out: no cost.</param>
/// <param name="RoomTemperature">Temperature of the room, in units, −20 to 50 °C, −4 to 122 °F; left out: 20 °C.</param>
/// <param name="TimeZone">IANA name of the zone whose clock moments are told by, such as Europe/Berlin; left out: by the offset of the
/// start, which is wrong after a change of clocks.</param>
/// <param name="Attendance">usual, or whole-firing where a local rule asks for somebody at the kiln all the time; left out: usual.</param>
/// <param name="FinishBy">Instead of a start: when the programme shall have ended and the kiln be off; the latest start that does it is
/// chosen, with a two-rate tariff the cheapest.</param>
/// <param name="PeakBetween">Instead of a start: between which moments the peak shall come.</param>
/// <param name="StartNotBefore">The earliest start to choose from, and what a saving is told against; left out: now.</param>
[Needs(nameof(Units))]
public sealed record FitRequest(
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Cone = default,
    string? Chart = null,
    [property: Range(2.0, 6.0), DefaultValue(6.0)] double? ClockHand = null,
    [property: AllowedValues("C", "F")] string? Units = null,
    Kiln? Kiln = null,
    FitLoad? Load = null,
    [property: RegularExpression(StartMoments.Pattern)] string? Start = null,
    [property: Range(0.0, 1440.0)] double? LoadingMinutes = null,
    [property: Range(-20.0, 392.0)] double? StartTemperature = null,
    FitTariff? Tariff = null,
    [property: Range(-20.0, 122.0)] double? RoomTemperature = null,
    string? TimeZone = null,
    [property: WordsOf(typeof(AttendanceRule))] string? Attendance = null,
    [property: RegularExpression(StartMoments.Pattern)] string? FinishBy = null,
    PeakWindow? PeakBetween = null,
    [property: RegularExpression(StartMoments.Pattern)] string? StartNotBefore = null)
{
    /// <summary>A date and a time with its offset from UTC.</summary>
    public const string StartPattern =
        @"^\s*[0-9]{4}-[0-9]{2}-[0-9]{2}[T ][0-9]{2}:[0-9]{2}(:[0-9]{2}(\.[0-9]{1,7})?)?(Z|z|[+-][0-9]{2}:[0-9]{2})\s*$";
}

/// <summary>What stands in the kiln.</summary>
/// <param name="KilogramsWare">Mass of the ware, kg; up to 1.25 kg a litre of the kiln, 1.5 with the furniture.</param>
/// <param name="KilogramsFurniture">Mass of shelves and posts, kg; up to 1.25 kg a litre of the kiln.</param>
/// <param name="ThickestMillimetres">Thickest wall of the ware, mm, up to 400.</param>
/// <param name="Dryness">wet, leather-hard or bone-dry.</param>
/// <param name="Glaze">none, dry or fresh: the coat on the ware when the firing starts.</param>
/// <param name="Form">hollow or flat: flatware lies on the shelf and is heated from one side; left out: hollow.</param>
/// <param name="Pieces">The pieces as the load check takes them, 1 to 2,000: each is judged at the cone of the fit; left out: nothing is
/// judged.</param>
public sealed record FitLoad(
    [property: Range(0.0, 6_250.0)] double? KilogramsWare = null,
    [property: Range(0.0, 6_250.0)] double? KilogramsFurniture = null,
    [property: Range(1.0, 400.0)] double? ThickestMillimetres = null,
    [property: AllowedValues("wet", "leather-hard", "bone-dry")] string? Dryness = null,
    [property: WordsOf(typeof(GlazeCoat))] string? Glaze = null,
    [property: WordsOf(typeof(WareForm)), DefaultValue("hollow")] string? Form = null,
    [property: Items(1, LoadLimits.MostPieces)] IReadOnlyList<PieceRequest?>? Pieces = null);

/// <summary>What energy costs.</summary>
/// <param name="PerKilowattHour">Price of a kWh, of electricity or of the fuel's net heating value; outside the periods.</param>
/// <param name="Currency">ISO 4217 code, such as EUR.</param>
/// <param name="Periods">Hours with another price; they choose the start where none is sent.</param>
[Needs(nameof(PerKilowattHour), nameof(Currency))]
public sealed record FitTariff(
    [property: Range(0.0, 1_000_000.0)] double? PerKilowattHour = null,
    [property: RegularExpression("^[A-Z]{3}$")] string? Currency = null,
    [property: Items(1, StartMoments.MostPeriods)] IReadOnlyList<TariffPeriod?>? Periods = null);
