using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Drying that follows dryness and thickness. Steam bursts ware; the hold below the boiling point is what prevents it.</summary>
internal static class DryingSteps
{
    private const double Boiling = 100;
    // Of packages that do not state them: 30 to 50 °C/h to 80 °C, common practice.
    private const double CandleRate = 40;
    private const double CandleCelsius = 80;

    /// <summary>Lengthens the template's drying or puts one in front.</summary>
    public static void Apply(List<FitStep> steps, FitQuestion question, ScheduleCatalogue catalogue, List<FitChange> changes)
    {
        var index = steps.FindIndex(s =>
            s is { Stage: FiringStage.Drying, HoldMinutes: > 0 } && (s.Celsius <= Boiling || !question.Greenware));
        var (least, why) = LeastHold(question, catalogue);
        if (index < 0 && question.Greenware && least < catalogue.Default("drying-hold-thin") && !IsOpenFire(steps))
        {
            // Nothing in the template holds raw ware below boiling, and ware that looks dry holds water all the same.
            (least, why) = (catalogue.Default("drying-hold-thin"), why is null || least <= 0 ? Message.Of("schedules.dry-for-raw") : why);
        }

        if (least <= 0) return;
        if (index < 0)
        {
            var celsius = question.Damp
                ? catalogue.Default("candle-temperature", CandleCelsius)
                : catalogue.Default("drying-temperature");
            var rate = question.LagMillimetres is { } t && question.Greenware
                ? WallLimits.Heating(catalogue, t, true).First(l => l.Purpose == LimitPurpose.Drying).Rate
                : 50;
            steps.Insert(0, new()
            {
                From = [],
                Stage = FiringStage.Drying,
                Purpose = Message.Of("schedules.purpose-dry"),
                Rate = Math.Min(rate, question.Damp ? catalogue.Default("candle-rate", CandleRate) : 100),
                Target = StepTarget.Fixed,
                Celsius = celsius,
                HoldMinutes = least,
                Atmosphere = steps[0].Atmosphere,
                Vent = VentSetting.Open,
                VentNote = OpenVent(catalogue),
                RateLimited = true,
            });
            changes.Add(new(FitChangeCode.DryingAdded, [], Message.Of(
                "schedules.drying-added",
                ("hold", QuantityFormat.Duration(least)),
                ("temperature", QuantityFormat.Temperature(celsius, question.Fahrenheit)),
                ("why", why))));
        }
        else if (question.Damp)
        {
            Candle(steps, index, least, why, question, catalogue, changes);
        }
        else if (steps[index].HoldMinutes < least)
        {
            var step = steps[index];
            steps[index] = step with { HoldMinutes = least };
            changes.Add(new(FitChangeCode.DryingLengthened, step.From, Message.Of(
                "schedules.drying-lengthened",
                ("temperature", QuantityFormat.Temperature(step.Celsius, question.Fahrenheit)),
                ("from", QuantityFormat.Duration(step.HoldMinutes)),
                ("to", QuantityFormat.Duration(least)),
                ("why", why))));
        }
    }

    // Nothing before the hold goes faster than candling, and the hold is no hotter.
    private static void Candle(
        List<FitStep> steps,
        int index,
        double least,
        Message? why,
        FitQuestion question,
        ScheduleCatalogue catalogue,
        List<FitChange> changes)
    {
        var (rate, celsius) = (catalogue.Default("candle-rate", CandleRate), catalogue.Default("candle-temperature", CandleCelsius));
        for (var i = 0; i <= index; i++)
        {
            var step = steps[i];
            steps[i] = step with
            {
                Rate = Math.Min(step.Speed, rate),
                Celsius = Math.Min(step.Celsius, celsius),
                HoldMinutes = i == index ? Math.Max(step.HoldMinutes, least) : step.HoldMinutes,
                RateLimited = true,
            };
        }

        changes.Add(new(FitChangeCode.DryingLengthened, steps[index].From, Message.Of(
            "schedules.candled-first",
            ("rate", QuantityFormat.Rate(steps[index].Speed, question.Fahrenheit)),
            ("temperature", QuantityFormat.Temperature(steps[index].Celsius, question.Fahrenheit)),
            ("hold", QuantityFormat.Duration(steps[index].HoldMinutes)),
            ("why", why))));
    }

    // Nobody holds a bonfire at 90 °C: what goes into one is warmed beforehand.
    private static bool IsOpenFire(List<FitStep> steps) => steps[0].Vent == VentSetting.Outdoors;

    // As the templates say it, so that their next segment with the same setting goes on with it.
    private static string? OpenVent(ScheduleCatalogue catalogue) =>
        catalogue.Dataset.ScheduleSegments.FirstOrDefault(s => s is { Stage: FiringStage.Drying, Vent: VentSetting.Open })?.VentNote;

    private static (double Minutes, Message? Why) LeastHold(FitQuestion question, ScheduleCatalogue catalogue)
    {
        if (!question.Greenware)
        {
            return question.Glaze == GlazeCoat.Fresh || question.Dryness != Dryness.BoneDry
                ? (catalogue.Default("drying-hold-glaze"), Message.Of("schedules.dry-for-glaze"))
                : (0, null);
        }

        var hold = question.Dryness switch
        {
            Dryness.Wet => catalogue.Default("drying-hold-wet"),
            Dryness.LeatherHard => catalogue.Default("drying-hold-leather-hard"),
            _ => 0,
        };
        var dryness = EnumWords.Word(question.Dryness);
        var excess = question.LagMillimetres is { } thickness ? Math.Max(0, thickness - catalogue.Default("drying-thickness")) : 0;
        var extra = excess * catalogue.Default("drying-hold-per-millimetre");
        if (extra <= 0) return (hold, Message.Of("schedules.dry-for-dryness", ("dryness", dryness)));
        // The template's own two hours for ordinary walls stand under the extra time for a thick one.
        var least = Math.Min(Math.Max(hold, catalogue.Default("drying-hold-thin")) + extra, catalogue.Default("drying-hold-most"));
        return (Math.Ceiling(least / 10) * 10, question.Dryness != Dryness.BoneDry
            ? Message.Of("schedules.dry-for-dryness-and-wall", ("dryness", dryness), ("thickness", question.ThicknessMillimetres))
            : Message.Of("schedules.dry-for-wall", ("thickness", question.ThicknessMillimetres)));
    }
}
