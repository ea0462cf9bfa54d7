using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// How the kiln is vented along each step, for the kiln model: what is set in the middle of a ramp by its temperature, what ends at a
/// step's target with the hold there.
/// </summary>
internal static class StepVents
{
    // A target of the template is put on a round temperature this near.
    private const double SameCelsius = 3;

    /// <summary>For each step, in order.</summary>
    public static List<IReadOnlyList<VentedTo>> Of(FittedSteps fitted)
    {
        var (marks, at, from) = (fitted.Settings, 0, fitted.StartCelsius);
        var found = new List<IReadOnlyList<VentedTo>>(fitted.Steps.Count);
        foreach (var step in fitted.Steps)
        {
            var (vents, down) = (new List<VentedTo>(), step.Celsius < from);
            while (at + 1 < marks.Count && IsBefore(marks[at], step.Celsius, down, fitted))
                vents.Add(new(SettingPeriods.Celsius(marks[at], fitted), marks[at++].Vent));
            vents.Add(new(step.Celsius, at < marks.Count ? marks[at].Vent : VentSetting.AsNormal));
            while (at + 1 < marks.Count && marks[at].Cooling == down
                && Math.Abs(SettingPeriods.Celsius(marks[at], fitted) - step.Celsius) <= SameCelsius)
                at++;
            found.Add(vents);
            from = step.Celsius;
        }

        return found;
    }

    private static bool IsBefore(SettingMark mark, double target, bool down, FittedSteps fitted)
    {
        if (!down) return !mark.Cooling && SettingPeriods.Celsius(mark, fitted) < target - SameCelsius;
        return !mark.Cooling || SettingPeriods.Celsius(mark, fitted) > target + SameCelsius;
    }
}
