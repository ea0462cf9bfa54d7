using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Cooling through the quartz inversion that follows the thickness of the wall.</summary>
internal static class CoolingSteps
{
    /// <summary>
    /// Slows cooling segments that cross the inversion, or adds one where the kiln by itself would cool faster than the wall allows.
    /// </summary>
    /// <param name="steps">The steps; the last ones may cool already.</param>
    /// <param name="question">The question.</param>
    /// <param name="catalogue">The limits.</param>
    /// <param name="naturalRate">How fast the kiln cools by itself through the inversion, °C/h.</param>
    /// <param name="naturalTop">How fast it cools by itself from the top, °C/h.</param>
    /// <param name="changes">Changes are added here.</param>
    public static void Apply(
        List<FitStep> steps,
        FitQuestion question,
        ScheduleCatalogue catalogue,
        double naturalRate,
        double naturalTop,
        List<FitChange> changes)
    {
        if (WallLimits.Cooling(catalogue, question.LagMillimetres, question.Flat) is not { } limit) return;
        if (steps.Max(s => s.Celsius) <= limit.To) return;
        var (rate, f) = (QuantityFormat.Rate(limit.Rate, question.Fahrenheit), question.Fahrenheit);
        for (var i = 1; i < steps.Count; i++)
        {
            var (from, step) = (steps[i - 1].Celsius, steps[i]);
            if (step.Celsius >= from || step.Celsius >= limit.To || from <= limit.From || step.Speed <= limit.Rate) continue;
            steps[i] = step with { Rate = limit.Rate, RateLimited = true };
            var within = Math.Min(from, limit.To) - Math.Max(step.Celsius, limit.From);
            (string, object?)[] slowed =
            [
                ("from", QuantityFormat.Rate(step.Speed, f)), ("to", rate), ("thickness", question.ThicknessMillimetres),
                ("time", Longer(within, limit.Rate, step.Speed)),
            ];
            changes.Add(new(FitChangeCode.CoolingForThickness, step.From, question.Flat
                ? Message.Of("schedules.cooling-slowed-for-flat-ware", slowed)
                : Message.Of("schedules.cooling-slowed", slowed)));
        }

        var last = steps[^1];
        if (last.Celsius <= limit.From || naturalRate <= limit.Rate) return;
        var (crash, slow) = (Message.Of("schedules.purpose-cool-by-itself"), Message.Of("schedules.purpose-cool-through-quartz"));
        if (last.Celsius > limit.To) steps.Add(Cool(last, FiringStage.CrashCooling, crash, null, limit.To, naturalTop));
        steps.Add(Cool(last, FiringStage.SlowCooling, slow, limit.Rate, limit.From, naturalRate));
        (string, object?)[] added =
        [
            ("rate", rate),
            ("from", QuantityFormat.Temperature(Math.Min(limit.To, last.Celsius), f)),
            ("to", QuantityFormat.Temperature(limit.From, f)),
            ("thickness", question.ThicknessMillimetres),
            ("natural", QuantityFormat.Rate(naturalRate, f)),
            ("time", Longer(Math.Min(limit.To, last.Celsius) - limit.From, limit.Rate, naturalRate)),
        ];
        changes.Add(new(FitChangeCode.CoolingForThickness, [], question.Flat
            ? Message.Of("schedules.cooling-added-for-flat-ware", added)
            : Message.Of("schedules.cooling-added", added)));
    }

    private static string Longer(double way, double slow, double fast) =>
        QuantityFormat.Duration(60 * Math.Max(0, way) * ((1 / slow) - (1 / fast)));

    private static FitStep Cool(FitStep last, FiringStage stage, Message purpose, double? rate, double celsius, double taken) => new()
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
