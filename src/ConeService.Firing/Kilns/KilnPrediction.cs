using ConeService.Contract.Kilns;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Kilns;

/// <summary>
/// What the model expects of a firing. Energy within ±20 % when the load's mass is known; see docs/kilns.md for what it can't know.
/// </summary>
/// <param name="Segments">One outcome per segment of the programme, in order.</param>
/// <param name="ExceedsMaker">True when the programme goes above the temperature that the maker allows.</param>
/// <param name="Completed">True when every segment ran to its end; false when the kiln stalled and the rest was not run.</param>
/// <param name="PeakCelsius">Highest temperature of the chamber, °C.</param>
/// <param name="HoursToPeak">From the start to the first moment of that temperature, h.</param>
/// <param name="HoursToEnd">From the start to the end of the programme, where natural cooling begins, h.</param>
/// <param name="HoursToOpening">From the start until chamber and load stay below <see cref="KilnModel.OpeningCelsius"/>, h; null when that
/// takes more than <see cref="KilnModel.LongestHours"/>.</param>
/// <param name="Energy">Energy and where it went.</param>
/// <param name="Fuel">Fuel of a gas kiln; null for an electric one.</param>
/// <param name="Chamber">Temperature of the chamber, where the controller's thermocouple and the cones are: what heat work is reckoned
/// from. Chords leave the computed curve by at most 0.1 K.</param>
/// <param name="Load">Mean temperature of ware and furniture, which lags behind; the same accuracy.</param>
/// <param name="Curve">Both temperatures, the set-point and the power for drawing: every 6 minutes and at the ends of segments.</param>
/// <param name="Steps">How many steps it was computed in.</param>
internal sealed record KilnPrediction(
    IReadOnlyList<SegmentRun> Segments,
    bool ExceedsMaker,
    bool Completed,
    double PeakCelsius,
    double HoursToPeak,
    double HoursToEnd,
    double? HoursToOpening,
    KilnEnergy Energy,
    KilnFuel? Fuel,
    HeatHistory Chamber,
    HeatHistory Load,
    IReadOnlyList<KilnSample> Curve,
    int Steps);

/// <summary>A moment of the predicted curve.</summary>
/// <param name="Hours">Since the start, h.</param>
/// <param name="SetPointCelsius">What the controller asks for, °C;
/// null where it asks for nothing (full power, or natural cooling).</param>
/// <param name="ChamberCelsius">Chamber, °C.</param>
/// <param name="LoadCelsius">Ware and furniture, °C.</param>
/// <param name="Kilowatts">Power into the chamber, kW.</param>
internal readonly record struct KilnSample(
    double Hours,
    double? SetPointCelsius,
    double ChamberCelsius,
    double LoadCelsius,
    double Kilowatts);
