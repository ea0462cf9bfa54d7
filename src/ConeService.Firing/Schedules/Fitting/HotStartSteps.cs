using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>A kiln that is warm already: what is below it has nothing to heat, and what is held is held at the kiln's
/// temperature.</summary>
internal static class HotStartSteps
{
    /// <summary>Drops the ramps below the start, and lifts holds to it.</summary>
    public static void Apply(List<FitStep> steps, double startCelsius, ControllerGrid grid, List<FitChange> changes)
    {
        while (steps is [{ Target: StepTarget.Fixed } first, ..] && first.Celsius < startCelsius)
        {
            var start = QuantityFormat.Temperature(startCelsius, grid.Fahrenheit);
            if (first.HoldMinutes <= 0 && steps.Count > 1)
            {
                steps.RemoveAt(0);
                changes.Add(new(FitChangeCode.SegmentDropped, first.From, Message.Of(
                    "schedules.below-the-start",
                    ("target", QuantityFormat.Temperature(first.Celsius, grid.Fahrenheit)), ("start", start), ("purpose", first.Purpose))));
                continue;
            }

            steps[0] = first with { Celsius = grid.RoundAbove(startCelsius) };
            changes.Add(new(FitChangeCode.SegmentDropped, first.From, Message.Of(
                "schedules.held-at-the-start",
                ("hold", QuantityFormat.Duration(first.HoldMinutes)),
                ("target", QuantityFormat.Temperature(first.Celsius, grid.Fahrenheit)),
                ("start", QuantityFormat.Temperature(steps[0].Celsius, grid.Fahrenheit)))));
            break;
        }

        for (var i = 1; i < steps.Count && steps[i].Target == StepTarget.Fixed && steps[i].Celsius < steps[i - 1].Celsius; i++)
        {
            if (steps[i].Celsius < startCelsius) steps[i] = steps[i] with { Celsius = steps[i - 1].Celsius };
            else break;
        }
    }
}
