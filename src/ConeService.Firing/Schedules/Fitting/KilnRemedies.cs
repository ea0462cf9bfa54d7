using ConeService.Contract.Kilns;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>What helps a kiln that can't follow: each remedy was fired in the model before it is named.</summary>
internal static class KilnRemedies
{
    // Programmed a little slower than what the kiln just managed, so that something is left for the thermostat.
    private const double Reserve = 0.9;
    private const double SlowestRamp = 5;

    // Less than these are within what a meter shows.
    private const double NoticeableAgeing = 1.005;
    private const double FullPower = 0.97;

    /// <summary>The remedies, the simplest first; empty when the kiln follows.</summary>
    public static IReadOnlyList<FitRemedy> Find(
        FitQuestion question, FittedSteps fitted, ConeCurves meter, KilnPrediction prediction, KilnModel model)
    {
        var remedies = new List<FitRemedy>();
        if (prediction.Segments.Any(s => s.Following is Following.TooSlow or Following.Stalls))
        {
            Slower(remedies, question, fitted, meter, prediction, model);
            Power(remedies, question, fitted, meter, model);
        }

        if (!prediction.Completed && meter.Measure(prediction.Chamber).Reached is { } cooler)
        {
            var cone = cooler.Cone.Cone.ToString();
            var message = Message.Of("schedules.remedy-cooler-cone", ("cone", cone));
            remedies.Add(new("cooler-cone", message, null, Message.Of("schedules.cone-named", ("cone", cone))));
        }

        foreach (var (step, outcome) in fitted.Steps.Zip(prediction.Segments).Where(x => x.Second.Following == Following.CoolsSlower))
        {
            var message = Message.Of(
                "schedules.remedy-slower-cooling",
                ("segment", outcome.Index + 1),
                ("rate", QuantityFormat.Rate(step.Speed, question.Fahrenheit)),
                ("natural", QuantityFormat.Rate(outcome.MeanRateCelsiusPerHour ?? 0, question.Fahrenheit)));
            remedies.Add(new("slower-cooling", message, null, null));
        }

        return remedies;
    }

    private static void Slower(
        List<FitRemedy> remedies, FitQuestion question, FittedSteps fitted, ConeCurves meter, KilnPrediction prediction, KilnModel model)
    {
        if (prediction.Segments.Any(s => s.Following == Following.Stalls)) return;
        var grid = new ControllerGrid(question.Fahrenheit);
        var steps = fitted.Steps.Zip(prediction.Segments, (step, outcome) => Slowed(step, outcome, grid)).ToList();
        var again = StepFitter.Refit(fitted, steps, question, meter);
        var second = model.Predict(question.Kiln!, again.KilnProgramme);
        var reading = FitReadings.Say(meter.Measure(second.Chamber));
        var slowed = again.Steps.Select((step, i) => (step, i)).Where(x => fitted.Steps[x.i].Speed != x.step.Speed).Select(x => Message.Of(
            "schedules.segment-at-rate", ("segment", x.i + 1), ("rate", QuantityFormat.Rate(x.step.Speed, question.Fahrenheit))));
        var message = Message.Of(
            "schedules.remedy-slower-ramps",
            ("segments", slowed.ToArray()),
            ("peak", QuantityFormat.Temperature(again.PeakCelsius, question.Fahrenheit)),
            ("follows", Follows(second)),
            ("reading", reading),
            ("time", QuantityFormat.Duration(second.HoursToPeak * 60)));
        remedies.Add(new("slower-ramps", message, FitWriter.Programme(again, question), reading));
    }

    private static FitStep Slowed(FitStep step, SegmentRun outcome, ControllerGrid grid) =>
        outcome is { Following: Following.TooSlow, LastRateCelsiusPerHour: { } rate } && step.Rate is { } asked
            ? step with { Rate = grid.RateBelow(Math.Clamp(rate * Reserve, SlowestRamp, asked)), RateLimited = true }
            : step;

    private static void Power(List<FitRemedy> remedies, FitQuestion question, FittedSteps fitted, ConeCurves meter, KilnModel model)
    {
        var setup = question.Kiln!;
        if (setup.Heat != KilnHeat.Electric) return;
        if (setup.ElementAgeing > NoticeableAgeing)
        {
            var renewed = setup with { AvailableKilowatts = setup.AvailableKilowatts * setup.ElementAgeing, ElementAgeing = 1 };
            var (values, reading) = Try(renewed);
            remedies.Add(new("new-elements", Message.Of("schedules.remedy-new-elements", values), null, reading));
        }

        var full = setup.RatedKilowatts / setup.ElementAgeing;
        if (setup.AvailableKilowatts < FullPower * full)
        {
            var (values, reading) = Try(setup with { AvailableKilowatts = full });
            remedies.Add(new("full-voltage", Message.Of("schedules.remedy-full-voltage", values), null, reading));
        }

        ((string, object?)[] Values, Message Reading) Try(KilnSetup changed)
        {
            var prediction = model.Predict(changed, fitted.KilnProgramme);
            var reading = FitReadings.Say(meter.Measure(prediction.Chamber));
            return (
            [
                ("kilowatts", changed.AvailableKilowatts),
                ("now", setup.AvailableKilowatts),
                ("follows", Follows(prediction)),
                ("reading", reading),
            ],
            reading);
        }
    }

    private static string Follows(KilnPrediction prediction) =>
        prediction.Segments.All(s => s.Following is not (Following.TooSlow or Following.Stalls)) ? "yes" : "no";
}
