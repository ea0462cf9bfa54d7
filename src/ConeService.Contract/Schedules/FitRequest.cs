using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;

namespace ConeService.Contract.Schedules;

/// <summary>What a template is to be fitted to.</summary>
/// <param name="Cone">The target cone, as text; left out only for templates that end without a cone.</param>
/// <param name="Chart">The chart whose cone is meant; may be left out.</param>
/// <param name="ClockHand">Where the target cone shall point at the end, as the hour of a clock: 6 is down (90°). 2 to 6; left out: 6.</param>
/// <param name="Units">C or F: the unit of the temperatures sent, and of the programme's whole degrees.</param>
/// <param name="Kiln">The kiln; left out: no prediction of what it does.</param>
/// <param name="Load">The load; left out: as the template assumes.</param>
/// <param name="Start">When the programme starts: date, time and offset, such as 2026-12-04T18:00:00+01:00; needed for a calendar.</param>
/// <param name="LoadingMinutes">How long loading takes before the start, minutes, 0 to 1440; for the calendar.</param>
/// <param name="StartTemperature">Temperature of kiln and load at the start, in units, 0 to 200 °C; left out: that of a room.</param>
/// <param name="Tariff">What energy costs; left out: no cost.</param>
public sealed record FitRequest(
    SentText Cone = default,
    string? Chart = null,
    double? ClockHand = null,
    string? Units = null,
    FitKiln? Kiln = null,
    FitLoad? Load = null,
    string? Start = null,
    double? LoadingMinutes = null,
    double? StartTemperature = null,
    FitTariff? Tariff = null);

/// <summary>A kiln as its keeper knows it. What is left out is taken by size and said in assumed.</summary>
/// <param name="Id">Your name for it, repeated in the answer.</param>
/// <param name="Heat">electric, gas, wood, raku or vapour.</param>
/// <param name="VolumeLitres">Inner volume, L; not needed with <paramref name="Interior"/>.</param>
/// <param name="Interior">Inner dimensions.</param>
/// <param name="Wall">Wall.</param>
/// <param name="Kilowatts">Rated power, kW: of the elements at <paramref name="VoltsInstalled"/>, or of the burners.</param>
/// <param name="VoltsInstalled">Voltage the elements were made for, V.</param>
/// <param name="VoltsAsWired">Voltage the kiln really gets, V.</param>
/// <param name="ElementAge">Age of the elements: 0 new, 1 due for replacement, at most 2.</param>
/// <param name="ElementFirings">Firings since the elements were new, instead of their age.</param>
/// <param name="MaxCone">Hottest cone that its maker allows, as text.</param>
/// <param name="MaxTemperature">Highest temperature that its maker allows, in units.</param>
/// <param name="ControllerSegments">Segments that its controller holds, 2 to 99; left out: as many as it takes.</param>
/// <param name="LeakFactor">How leaky against a closed kiln, 0 to 20; an open vent is 2 to 5.</param>
/// <param name="FuelFactor">Gas: fuel really burnt over the lower bound, from your own meter, 1 to 10.</param>
public sealed record FitKiln(
    string? Id = null,
    string? Heat = null,
    double? VolumeLitres = null,
    KilnInterior? Interior = null,
    KilnWallInput? Wall = null,
    double? Kilowatts = null,
    double? VoltsInstalled = null,
    double? VoltsAsWired = null,
    double? ElementAge = null,
    int? ElementFirings = null,
    SentText MaxCone = default,
    double? MaxTemperature = null,
    int? ControllerSegments = null,
    double? LeakFactor = null,
    double? FuelFactor = null);

/// <summary>What stands in the kiln.</summary>
/// <param name="KilogramsWare">Mass of the ware, kg.</param>
/// <param name="KilogramsFurniture">Mass of shelves and posts, kg.</param>
/// <param name="ThickestMillimetres">Thickest wall of the ware, mm, up to 400.</param>
/// <param name="Dryness">wet, leather-hard or bone-dry.</param>
/// <param name="Glaze">none, dry or fresh: the coat on the ware when the firing starts.</param>
public sealed record FitLoad(double? KilogramsWare = null, double? KilogramsFurniture = null, double? ThickestMillimetres = null, string? Dryness = null, string? Glaze = null);

/// <summary>What energy costs.</summary>
/// <param name="PerKilowattHour">Price of a kWh, of electricity or of the fuel's net heating value.</param>
/// <param name="Currency">ISO 4217 code, such as EUR.</param>
public sealed record FitTariff(double? PerKilowattHour = null, string? Currency = null);
