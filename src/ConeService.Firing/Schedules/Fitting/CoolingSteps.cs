using ConeService.Contract.Schedules;
using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Cooling through the quartz inversion that follows the thickness of the wall.</summary>
internal static class CoolingSteps
{
    /// <summary>Slows cooling segments that cross the inversion, or adds one where the kiln by itself would cool faster than the wall allows.</summary>
    /// <param name="steps">The steps; the last ones may cool already.</param>
    /// <param name="question">The question.</param>
    /// <param name="book">The limits.</param>
    /// <param name="naturalRate">How fast the kiln cools by itself through the inversion, °C/h.</param>
    /// <param name="naturalTop">How fast it cools by itself from the top, °C/h.</param>
    /// <param name="changes">Changes are added here.</param>
    public static void Apply(List<FitStep> steps, FitQuestion question, ScheduleBook book, double naturalRate, double naturalTop, List<FitChange> changes)
    {
        if (WallLimits.Cooling(book, question.ThicknessMillimetres) is not { } limit || steps.Max(s => s.Celsius) <= limit.To) return;
        var (rates, f) = (SegmentWords.Rate(limit.Rate, question.Fahrenheit), question.Fahrenheit);
        for (var i = 1; i < steps.Count; i++)
        {
            var (from, step) = (steps[i - 1].Celsius, steps[i]);
            if (step.Celsius >= from || step.Celsius >= limit.To || from <= limit.From || step.Speed <= limit.Rate) continue;
            steps[i] = step with { Rate = limit.Rate, RateLimited = true };
            changes.Add(new(FitChangeCode.CoolingForThickness, step.From, FormattableString.Invariant($"The cooling was slowed from {SegmentWords.Rate(step.Speed, f)} to {rates} for a wall of {question.ThicknessMillimetres:0.#} mm, as quartz inverts at 573 °C.")));
        }

        var last = steps[^1];
        if (last.Celsius <= limit.From || naturalRate <= limit.Rate) return;
        if (last.Celsius > limit.To) steps.Add(Cool(last, FiringStage.CrashCooling, "cool by itself: added", null, limit.To, naturalTop));
        steps.Add(Cool(last, FiringStage.SlowCooling, "cool through 573 °C: added", limit.Rate, limit.From, naturalRate));
        changes.Add(new(FitChangeCode.CoolingForThickness, [], FormattableString.Invariant(
            $"A cooling at {rates} from {SegmentWords.Temperature(Math.Min(limit.To, last.Celsius), f)} to {SegmentWords.Temperature(limit.From, f)} was added for a wall of {question.ThicknessMillimetres:0.#} mm: by itself the kiln would cool at about {SegmentWords.Rate(naturalRate, f)} there.")));
    }

    private static FitStep Cool(FitStep last, FiringStage stage, string purpose, double? rate, double celsius, double taken) => new()
    {
        From = [],
        Stage = stage,
        Purpose = purpose,
        Rate = rate,
        TakenRate = taken,
        RateLimited = rate is not null,
        Target = StepTarget.Fixed,
        Celsius = celsius,
        HoldMinutes = 0,
        Atmosphere = last.Atmosphere == Atmosphere.Reduction ? Atmosphere.Oxidation : last.Atmosphere,
        Vent = VentSetting.AsNormal,
    };
}
