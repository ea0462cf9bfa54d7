using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>What the one who fires must know, in sentences.</summary>
internal static class FitWarnings
{
    // Beyond this share of holds and cooling the result rests on what no chart prints.
    private const double LeastRampShare = 0.5;
    private const double LongHours = 60;
    private const decimal BandLow = -10;
    private const decimal BandHigh = 3;

    /// <summary>The warnings.</summary>
    public static IReadOnlyList<string> For(FitQuestion question, FittedPlan plan, FitHeatWork work, KilnPrediction? prediction) => [.. All(question, plan, work, prediction)];

    private static IEnumerable<string> All(FitQuestion question, FittedPlan plan, FitHeatWork work, KilnPrediction? prediction)
    {
        var (row, target) = (question.Schedule.Row, question.Target?.Cone.Cone);
        if (plan.WhyNot is { } whyNot) yield return whyNot;
        if (question.Heat is { } heat && !row.KilnHeats.Contains(heat))
        {
            yield return $"The schedule is for {string.Join(" or ", row.KilnHeats.Select(EnumWords.Word))} kilns, not for {EnumWords.Word(heat)}"
                + (heat == KilnHeat.Electric && row.Atmosphere == Atmosphere.Reduction ? ": reduction strips the oxide skin that protects the elements, and an electric kiln has no flue." : ".");
        }

        if (row.Atmosphere == Atmosphere.Reduction && target is { Position: >= BandLow and <= BandHigh })
        {
            yield return "Reduction moves the cones that hold iron, 010 to 3; that is not modelled.";
        }

        if (work.LastRampShare is < LeastRampShare)
        {
            yield return FormattableString.Invariant($"Only {100 * work.LastRampShare:0} % of the target's work is done by the last ramp. The rest are holds and cooling, which no chart prints: let the witness cones decide.");
        }

        if (question.Greenware && question.Dryness != Dryness.BoneDry) yield return "Ware that is not bone dry is better dried in the air first: steam bursts ware, and water rusts kilns. The time added is practice, no promise.";
        if (question.ThicknessMillimetres > 50) yield return "No template is made for walls above 50 mm; the rates are carried on with the inverse of the thickness and are advice at most.";
        else if (plan.Changes.Any(c => c.Code is FitChangeCode.SlowedForThickness or FitChangeCode.CoolingForThickness)) yield return "Rates by thickness are practice, not a promise: how wet, how even and how open the clay is matters as much.";
        if (!question.Greenware && question.Glaze == GlazeCoat.None && row.Kind is FiringKind.Glaze) yield return "The load carries no glaze, and the schedule is a glaze firing.";
        if (question.Glaze != GlazeCoat.None && row.Kind == FiringKind.Bisque) yield return "Glazed ware in a bisque firing sticks to what it touches.";
        if (plan.Hours > LongHours) yield return FormattableString.Invariant($"The programme takes {plan.Hours:0} h: plan for attendance, and check that the controller holds that long.");
        if (question.Heat == KilnHeat.Wood) yield return "A wood kiln has no programme to follow, so it is not modelled: take the segments as marks for the log.";
        if (prediction is not null && question.Kiln is { Heat: not KilnHeat.Electric } && question.Kiln.FuelFactor is null) yield return "Fuel is a lower bound: studio kilns burn 1.5 to 2.5 times as much. Send fuelFactor from your own meter.";
        if (prediction is { HoursToOpening: null }) yield return "The kiln takes longer to cool than the model follows.";
        yield return "Witness cones decide, not the meter. Nothing here replaces the kiln's manual, local codes and licensed practice.";
    }
}
