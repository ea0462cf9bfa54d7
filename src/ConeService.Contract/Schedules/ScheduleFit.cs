using ConeService.Contract.Answers;
using ConeService.Contract.Equations;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Schedules;

/// <summary>A template made into a programme for one cone, kiln and load, checked by the heat-work model.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Schedule">The template.</param>
/// <param name="Cone">The target cone; null for a template that ends without one.</param>
/// <param name="Chart">The chart whose cones are meant.</param>
/// <param name="ClockHand">Where the target cone shall point, as the hour of a clock; null without a cone.</param>
/// <param name="BendDegrees">The same as an angle, 90 when down; good to about 4 K of firing only.</param>
/// <param name="Units">C or F: the unit in which rates and targets are whole numbers.</param>
/// <param name="Segments">The programme, segment by segment.</param>
/// <param name="Programme">The same as a body for POST /v1/heat-work, so that anybody can check it.</param>
/// <param name="PeakCelsius">Highest temperature of the programme, °C.</param>
/// <param name="PeakFahrenheit">The same, °F.</param>
/// <param name="ProgrammeMinutes">From the start to the end of the programme, when the kiln follows it, minutes.</param>
/// <param name="HeatWork">What the firing does to the cones: of the kiln's own curve where it was modelled, else of the programme.</param>
/// <param name="WhyNot">Why the target can't be met as asked; null when it is.</param>
/// <param name="Changes">What was changed against the template, and what was lost.</param>
/// <param name="Kiln">What the kiln makes of it; null without a kiln that can be modelled.</param>
/// <param name="Times">When what happens; moments of the calendar where a start was given.</param>
/// <param name="Operation">The firing as an operating procedure: who must be there when, when to look, and what to do.</param>
/// <param name="ShutDown">How the firing is ended, step by step; empty where the controller ends it.</param>
/// <param name="Landmarks">What the ware passes on the way.</param>
/// <param name="WitnessCones">The cones to set beside the ware; null without a target cone.</param>
/// <param name="Cautions">Hazards of this firing and what controls them.</param>
/// <param name="Load">What the load check says of the pieces at the cone that the firing reaches; null without pieces.</param>
/// <param name="Warnings">What the one who fires must know.</param>
/// <param name="Basis">What the heat work rests on.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Assumed">Parameters that were left out, with what was taken.</param>
/// <param name="Confidence">The weakest of the segments, of the cells that the curve of the target goes through, and of the kiln model
/// where the kiln was modelled.</param>
/// <param name="StartChosen">The start that was chosen by finishBy, peakBetween or the periods of a tariff; null where none was to be
/// chosen.</param>
public sealed record ScheduleFit(
    string DatasetVersion,
    ScheduleSummary Schedule,
    string? Cone,
    string Chart,
    double? ClockHand,
    double? BendDegrees,
    string Units,
    IReadOnlyList<FittedSegment> Segments,
    FittedProgramme Programme,
    decimal PeakCelsius,
    decimal PeakFahrenheit,
    double ProgrammeMinutes,
    FitHeatWork HeatWork,
    Message? WhyNot,
    IReadOnlyList<FitChange> Changes,
    KilnForecast? Kiln,
    FitTimes Times,
    FitOperation Operation,
    IReadOnlyList<Message> ShutDown,
    IReadOnlyList<FitLandmark> Landmarks,
    WitnessCones? WitnessCones,
    IReadOnlyList<FitCaution> Cautions,
    FitLoadCheck? Load,
    IReadOnlyList<Message> Warnings,
    Basis Basis,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed,
    Confidence Confidence,
    StartChoice? StartChosen = null) : IComputed
{
    Address IComputed.Explain => EquationIds.Address(EquationIds.FittedPeak);
}

/// <summary>One segment of the programme. Rates and targets are whole numbers in the units asked for.</summary>
/// <param name="Number">Place in the programme, from 1.</param>
/// <param name="InWords">The segment as one says it.</param>
/// <param name="RateCelsiusPerHour">Rate, up or down, °C/h; null: as fast as the kiln goes.</param>
/// <param name="RateFahrenheitPerHour">The same, °F/h.</param>
/// <param name="TakenRateCelsiusPerHour">What a segment without a rate was reckoned to go at, °C/h; null where a rate is given.</param>
/// <param name="TargetCelsius">Where to, °C.</param>
/// <param name="TargetFahrenheit">The same, °F.</param>
/// <param name="RampMinutes">How long the ramp takes, minutes, for a controller that counts time.</param>
/// <param name="HoldMinutes">Hold at the target, minutes.</param>
/// <param name="StartMinutes">When it begins, minutes from the start, when the kiln follows.</param>
/// <param name="HoldStartMinutes">When its hold begins.</param>
/// <param name="EndMinutes">When it ends.</param>
/// <param name="Stage">What it is for.</param>
/// <param name="Purpose">What it is for, in words.</param>
/// <param name="Atmosphere">Atmosphere in the kiln when it begins.</param>
/// <param name="AtmosphereNote">How strong, where, or when.</param>
/// <param name="Vent">How the kiln is vented when it begins.</param>
/// <param name="VentNote">How, in words.</param>
/// <param name="Settings">Vents, damper and atmosphere through the segment; more than one where something is set by hand within it.</param>
/// <param name="TemplateSegments">Numbers of the template's segments that it comes from; empty for an added one.</param>
/// <param name="Confidence">The weakest confidence of those segments; derived for an added one.</param>
public sealed record FittedSegment(
    int Number,
    Message InWords,
    decimal? RateCelsiusPerHour,
    decimal? RateFahrenheitPerHour,
    decimal? TakenRateCelsiusPerHour,
    decimal TargetCelsius,
    decimal TargetFahrenheit,
    double RampMinutes,
    double HoldMinutes,
    double StartMinutes,
    double HoldStartMinutes,
    double EndMinutes,
    FiringStage Stage,
    Message Purpose,
    [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere Atmosphere,
    string? AtmosphereNote,
    VentSetting Vent,
    string? VentNote,
    IReadOnlyList<SegmentSetting> Settings,
    IReadOnlyList<int> TemplateSegments,
    Confidence Confidence);

/// <summary>The programme as the heat-work address takes it.</summary>
/// <param name="Units">C or F.</param>
/// <param name="Chart">The chart.</param>
/// <param name="Start">Temperature at the start, in units.</param>
/// <param name="Segments">The segments.</param>
/// <param name="CoolingRate">How fast the kiln cools by itself after the last segment, in units per hour; null where the
/// ware is drawn then.</param>
public sealed record FittedProgramme(string Units, string Chart, decimal Start, IReadOnlyList<FittedRamp> Segments, decimal? CoolingRate);

/// <summary>One segment of it.</summary>
/// <param name="Rate">How fast, in units per hour, up or down.</param>
/// <param name="Target">Where to, in units.</param>
/// <param name="HoldMinutes">How long to stay there, minutes.</param>
public sealed record FittedRamp(decimal Rate, decimal Target, double HoldMinutes);
