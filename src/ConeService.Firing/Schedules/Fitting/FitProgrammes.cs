using ConeService.Contract.Quantities;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Steps as programmes of the heat-work model.</summary>
internal static class FitProgrammes
{
    /// <summary>The steps from a start, with the cooling after them where a rate is given.</summary>
    public static HeatProgramme Of(IEnumerable<FitStep> steps, double startCelsius, double? coolingRate = null)
    {
        List<HeatSegment> segments =
        [
            .. steps.Select(s => new HeatSegment(s.Speed, s.Celsius + Temperature.KelvinAtZero, s.HoldMinutes / 60)),
        ];
        var last = segments.Count > 0 ? segments[^1].TargetKelvin : startCelsius + Temperature.KelvinAtZero;
        var cooling = coolingRate is { } rate ? new CoolDown.AtRate(rate, Math.Min(last, 20 + Temperature.KelvinAtZero)) : null;
        return new(startCelsius + Temperature.KelvinAtZero, segments, 150, cooling);
    }

    /// <summary>The same steps with the peak, and what hangs on it, at a temperature.</summary>
    public static List<FitStep> AtPeak(IReadOnlyList<FitStep> steps, double peak, ControllerGrid grid) =>
        [.. steps.Select(s => s.Target switch
        {
            StepTarget.Peak => s with { Celsius = peak },
            StepTarget.BelowPeak => s with { Celsius = grid.Temperature(peak - s.Below) },
            _ => s,
        })];

    /// <summary>Where a step starts, °C.</summary>
    public static double StartOf(IReadOnlyList<FitStep> steps, int index, double startCelsius) =>
        index == 0 ? startCelsius : steps[index - 1].Celsius;

    /// <summary>Time that the steps take, h.</summary>
    public static double Hours(IReadOnlyList<FitStep> steps, double startCelsius) =>
        steps.Select((s, i) => (Math.Abs(s.Celsius - StartOf(steps, i, startCelsius)) / s.Speed) + (s.HoldMinutes / 60)).Sum();
}
