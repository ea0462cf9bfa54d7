using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// Targets on the way that come too close to the peak of a cooler cone are lowered: the last ramp, whose rate the chart is read at, keeps
/// its span.
/// </summary>
internal static class ApproachSteps
{
    // Two targets nearer than this are one.
    private const double SameCelsius = 5;

    // A lowered target lowers the peak a little in turn; it settles at once.
    private const int Rounds = 4;

    /// <summary>Lowers targets before a step, and drops what then has nothing left to do.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="hot">The step that must keep its span; found again after each round.</param>
    /// <param name="span">The span, °C.</param>
    /// <param name="estimate">The peak of a step, °C; null when the way there is too hot already.</param>
    /// <param name="grid">The controller's grid.</param>
    /// <param name="changes">Changes are added here.</param>
    public static void Apply(
        List<FitStep> steps,
        Func<FitStep, bool> hot,
        double span,
        Func<List<FitStep>, int, double?> estimate,
        ControllerGrid grid,
        List<FitChange> changes)
    {
        var before = steps.ToDictionary(s => s.From.Count > 0 ? s.From[0] : 0, s => s.Celsius);
        for (var round = 0; round < Rounds; round++)
        {
            var index = steps.FindIndex(s => hot(s));
            var limit = grid.RoundBelow((estimate(steps, index) ?? steps.Take(index).Max(s => s.Celsius)) - span);
            if (steps.Take(index).All(s => s.Celsius <= limit)) break;
            for (var i = 0; i < index; i++) steps[i] = steps[i] with { Celsius = Math.Min(steps[i].Celsius, limit) };
        }

        Drop(steps, hot, grid, changes);
        foreach (var step in steps.TakeWhile(s => !hot(s)).Where(s => s.From.Count > 0 && before[s.From[0]] > s.Celsius + 1e-9))
        {
            changes.Add(new(FitChangeCode.ApproachLowered, step.From, Message.Of(
                "schedules.target-lowered",
                ("from", QuantityFormat.Temperature(before[step.From[0]], grid.Fahrenheit)),
                ("to", QuantityFormat.Temperature(step.Celsius, grid.Fahrenheit)))));
        }
    }

    private static void Drop(List<FitStep> steps, Func<FitStep, bool> hot, ControllerGrid grid, List<FitChange> changes)
    {
        for (var i = 1; i < steps.Count && !hot(steps[i]); i++)
        {
            if (steps[i].Celsius > steps[i - 1].Celsius + SameCelsius) continue;
            var (kept, gone) = (steps[i - 1], steps[i]);
            var dropped = Message.Of(
                "schedules.segment-dropped",
                ("numbers", string.Join(", ", gone.From)),
                ("purpose", gone.Purpose),
                ("target", QuantityFormat.Temperature(kept.Celsius, grid.Fahrenheit)));
            changes.Add(new(
                FitChangeCode.SegmentDropped, gone.From,
                gone.HoldMinutes > 0 ? Message.Sentences(dropped, Message.Of("schedules.hold-kept")) : dropped));
            steps[i - 1] = kept with
            {
                HoldMinutes = Math.Max(kept.HoldMinutes, gone.HoldMinutes),
                Rate = Math.Min(kept.Speed, gone.Speed),
            };
            steps.RemoveAt(i--);
        }
    }
}
