using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>The fitted steps, on the controller's grid.</summary>
/// <param name="Steps">The steps.</param>
/// <param name="StartCelsius">Temperature at the start, °C.</param>
/// <param name="RoomCelsius">Temperature of the room, °C.</param>
/// <param name="CoolingRate">Cooling after the last step, °C/h; null where the ware is drawn.</param>
/// <param name="WhyNot">Why the target can't be met; null when it is.</param>
/// <param name="Changes">What was changed against the template.</param>
/// <param name="Settings">How vents, damper and atmosphere stand along the way.</param>
internal sealed record FittedSteps(
    IReadOnlyList<FitStep> Steps,
    double StartCelsius,
    double RoomCelsius,
    double? CoolingRate,
    Message? WhyNot,
    IReadOnlyList<FitChange> Changes,
    IReadOnlyList<SettingMark> Settings)
{
    /// <summary>The programme of the heat-work model, with its cooling.</summary>
    public HeatProgramme Programme => FitProgrammes.Of(Steps, StartCelsius, CoolingRate);

    /// <summary>The programme of the kiln model.</summary>
    public KilnProgramme KilnProgramme =>
        new(
            [.. Steps.Zip(StepVents.Of(this), (s, vents) => new KilnSegment(s.Rate, s.Celsius, s.HoldMinutes / 60, vents))],
            StartCelsius, RoomCelsius);

    /// <summary>Highest temperature, °C.</summary>
    public double PeakCelsius => Steps.Max(s => s.Celsius);

    /// <summary>Time that the programme takes, h.</summary>
    public double Hours => FitProgrammes.Hours(Steps, StartCelsius);
}
