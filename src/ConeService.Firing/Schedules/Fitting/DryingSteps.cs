using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Drying that follows dryness and thickness. Steam bursts ware; the hold below the boiling point is what prevents it.</summary>
internal static class DryingSteps
{
    private const double Boiling = 100;

    /// <summary>Lengthens the template's drying or puts one in front.</summary>
    public static void Apply(List<FitStep> steps, FitQuestion question, ScheduleBook book, List<FitChange> changes)
    {
        var (least, why) = LeastHold(question, book);
        if (least <= 0) return;
        var index = steps.FindIndex(s => s.Stage == FiringStage.Drying && s.HoldMinutes > 0 && (s.Celsius <= Boiling || !question.Greenware));
        if (index < 0)
        {
            var celsius = book.Default("drying-temperature");
            var rate = question.ThicknessMillimetres is { } t && question.Greenware ? WallLimits.Heating(book, t, true).First(l => l.Band == WaterBand.Drying).Rate : 50;
            steps.Insert(0, new()
            {
                From = [],
                Stage = FiringStage.Drying,
                Purpose = "dry: added",
                Rate = Math.Min(rate, 100),
                Target = StepTarget.Fixed,
                Celsius = celsius,
                HoldMinutes = least,
                Atmosphere = steps[0].Atmosphere,
                Vent = VentSetting.Open,
                VentNote = "Vent and spyholes open.",
                RateLimited = true,
            });
            changes.Add(new(FitChangeCode.DryingAdded, [], $"A drying segment was added, {SegmentWords.Duration(least)} at {SegmentWords.Temperature(celsius, question.Fahrenheit)}: {why}"));
        }
        else if (steps[index].HoldMinutes < least)
        {
            var step = steps[index];
            steps[index] = step with { HoldMinutes = least };
            changes.Add(new(FitChangeCode.DryingLengthened, step.From, $"The hold at {SegmentWords.Temperature(step.Celsius, question.Fahrenheit)} was lengthened from {SegmentWords.Duration(step.HoldMinutes)} to {SegmentWords.Duration(least)}: {why}"));
        }
    }

    private static (double Minutes, string Why) LeastHold(FitQuestion question, ScheduleBook book)
    {
        if (!question.Greenware)
        {
            return question.Glaze == GlazeCoat.Fresh || question.Dryness != Dryness.BoneDry
                ? (book.Default("drying-hold-glaze"), "the ware still holds water of its glaze.") : (0, "");
        }

        var (hold, why) = question.Dryness switch
        {
            Dryness.Wet => (book.Default("drying-hold-wet"), "the ware is wet"),
            Dryness.LeatherHard => (book.Default("drying-hold-leather-hard"), "the ware is leather-hard"),
            _ => (0, ""),
        };
        var extra = question.ThicknessMillimetres is { } thickness ? Math.Max(0, thickness - book.Default("drying-thickness")) * book.Default("drying-hold-per-millimetre") : 0;
        if (extra <= 0) return (hold, why + ".");
        var wall = FormattableString.Invariant($"the wall is {question.ThicknessMillimetres:0.#} mm thick");
        // The template's own two hours for ordinary walls stand under the extra time for a thick one.
        var least = Math.Min(Math.Max(hold, book.Default("drying-hold-thin")) + extra, book.Default("drying-hold-most"));
        return (Math.Ceiling(least / 10) * 10, why.Length > 0 ? $"{why}, and {wall}." : wall + ".");
    }
}
