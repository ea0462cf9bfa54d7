using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Requests;
using ConeService.Contract.Schedules;
using ConeService.Data;

namespace ConeService.Contract.Kilns;

/// <summary>Logs of firings of one kiln, in the order of time. Nothing of them is kept: who asks keeps the history and sends it.</summary>
/// <param name="Units">C or F: the unit of every temperature, and with “per hour” of every rate.</param>
/// <param name="Kiln">The electric kiln as it is known; what is left out is taken by size, and where the estimate begins.</param>
/// <param name="Firings">1 to 30 firings, all together at most 800 hours until each has cooled to 200 °C.</param>
/// <param name="Chart">The chart of the witness cones; left out: witness-self-supporting, said in assumed.</param>
/// <param name="Thermocouple">The thermocouple behind the logs; left out: that of the kiln.</param>
/// <param name="Atmosphere">oxidation, neutral or reduction, for the witness cones.</param>
[Needs(nameof(Units), nameof(Kiln), nameof(Firings))]
public sealed record CalibrateRequest(
    [property: AllowedValues("C", "F")] string? Units = null,
    Kiln? Kiln = null,
    [property: Items(1, CalibrateRequest.MostFirings)] IReadOnlyList<CalibrationFiring?>? Firings = null,
    string? Chart = null,
    ThermocoupleInput? Thermocouple = null,
    [property: AtmosphereWords(AtmosphereUse.Firing)] string? Atmosphere = null)
{
    /// <summary>Most firings of a request.</summary>
    public const int MostFirings = 30;

    /// <summary>Most hours of all its firings together: of each until its log is colder than 200 °C or ends, at most a week after the end
    /// of its programme, or of its segments where they are longer, each of those at least a minute.</summary>
    public const double MostHours = 800;
}

/// <summary>One firing of the kiln: its log, and what else is known of it.</summary>
/// <param name="Id">Your name for it; left out: its number.</param>
/// <param name="Log">The samples from the start of the programme until the kiln has cooled, as in the routes of heat work.</param>
/// <param name="Segments">What the controller was told, from the first sample on; only with it power can be told.</param>
/// <param name="Load">What stood in the kiln; left out: by its volume, which makes wall, leak and power as uncertain as the load.</param>
/// <param name="MeterKilowattHours">What the meter counted for it, kWh.</param>
/// <param name="Observations">What its witness cones looked like; they tell the offset of the thermocouple.</param>
[Needs(nameof(Log))]
public sealed record CalibrationFiring(
    string? Id = null,
    [property: Items(2)] IReadOnlyList<LogSample?>? Log = null,
    [property: Items(1, HeatWorkCheck.MostSegments)] IReadOnlyList<ProgrammeSegment?>? Segments = null,
    FitLoad? Load = null,
    [property: Range(0.0, 100_000.0, MinimumIsExclusive = true)] double? MeterKilowattHours = null,
    [property: Items(1, HeatWorkLimits.MostObservations)] IReadOnlyList<WitnessCone?>? Observations = null);
