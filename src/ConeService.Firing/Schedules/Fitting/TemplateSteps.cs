using ConeService.Contract.Cones;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>The segments of a template as steps towards another cone.</summary>
internal static class TemplateSteps
{
    /// <summary>What is programmed; steps done outside the kiln or after it are not.</summary>
    /// <param name="schedule">The template.</param>
    /// <param name="scale">The scale, to count cones.</param>
    /// <param name="peak">First estimate of the peak, °C.</param>
    public static List<FitStep> Of(Schedule schedule, ConeScale scale, double peak)
    {
        var steps = new List<FitStep>();
        foreach (var row in schedule.Segments.Where(s => s.Stage != FiringStage.PostFiring))
        {
            var (target, below) = Target(schedule, scale, row);
            var step = new FitStep
            {
                From = [row.Number],
                Stage = row.Stage,
                Purpose = Message.Verbatim(row.Purpose),
                Rate = (double?)row.RateCelsiusPerHour,
                Target = target,
                Celsius = row.TargetCelsius is { } celsius ? (double)celsius : peak - (target == StepTarget.BelowPeak ? below : 0),
                Below = below,
                HoldMinutes = (double)row.HoldMinutes,
                Atmosphere = row.Atmosphere,
                AtmosphereNote = row.AtmosphereNote,
                Vent = row.Vent,
                VentNote = row.VentNote,
                // Full power up: as the ramp before it. Down: a first guess, replaced by what the kiln does.
                TakenRate = steps.LastOrDefault()?.Speed ?? 60,
            };
            if (steps.LastOrDefault() is not { } last || !OnlyHolds(last, step))
            {
                steps.Add(step);
                continue;
            }

            steps[^1] = last with
            {
                HoldMinutes = last.HoldMinutes + step.HoldMinutes,
                From = [.. last.From, .. step.From],
                Stage = step.Stage,
                Purpose = step.Purpose,
            };
        }

        return steps;
    }

    // Two rows of one template that a controller holds as one segment, with nothing for the operator to do in between.
    private static bool OnlyHolds(FitStep last, FitStep step) =>
        last.Target == step.Target && last.Celsius == step.Celsius && last.Below == step.Below
        && last.Atmosphere == step.Atmosphere && last.Vent == step.Vent;

    private static (StepTarget Target, double Below) Target(Schedule schedule, ConeScale scale, ScheduleSegmentRow row)
    {
        if (row.TargetCone is not { } cone) return (StepTarget.Fixed, 0);
        if (row.TargetBelowCelsius is { } below) return (StepTarget.BelowPeak, (double)below);
        var steps = scale.WholeSteps(Cone.Parse(cone), schedule.EndCone!.Value) ?? 0;
        return steps == 0 ? (StepTarget.Peak, 0) : (StepTarget.EarlierCone, steps);
    }
}
