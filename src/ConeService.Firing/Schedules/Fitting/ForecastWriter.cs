using ConeService.Contract.Kilns;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Writes what the kiln makes of a programme.</summary>
internal static class ForecastWriter
{
    private const double EnergyClaim = 0.2;
    private const double NearlyAsked = 0.97;

    /// <summary>The forecast.</summary>
    public static KilnForecast Write(
        FitQuestion question, FittedSteps fitted, ConeCurves meter, KilnPrediction prediction, IReadOnlyList<FitRemedy> remedies)
    {
        var work = meter.Measure(prediction.Chamber);
        var setup = question.Kiln!;
        var follows = prediction.Segments.All(s => s.Following is Following.Follows or Following.CoolsSlower);
        return new(
            question.KilnId,
            question.Heat!.Value,
            VolumeLitres: Math.Round(setup.VolumeLitres, 1),
            AvailableKilowatts: Math.Round(setup.AvailableKilowatts, 2),
            CanFollow: follows,
            Segments: [.. prediction.Segments.Select(s => s.Told())],
            HeatWork: FitReadings.Of(work, prediction.Chamber, question.Target, null),
            PeakCelsius: Math.Round(prediction.PeakCelsius, 1),
            PeakMinutes: FitMinutes.Of(prediction.HoursToPeak),
            EndMinutes: FitMinutes.Of(prediction.HoursToEnd),
            OpeningMinutes: FitMinutes.Of(prediction.HoursToOpening),
            Energy: prediction.Energy.Rounded(),
            Fuel: prediction.Fuel.Rounded(),
            Cost: Cost(question, prediction),
            Instead: prediction.Segments.All(s => s.Following == Following.Follows)
                ? null
                : Instead(question, fitted, prediction, FitReadings.Say(work)),
            Remedies: remedies);
    }

    private static FitCost? Cost(FitQuestion question, KilnPrediction prediction)
    {
        if (question.PricePerKilowattHour is not { } price) return null;
        double Round(double kilowattHours) => Math.Round(kilowattHours * price, 2);
        if (prediction.Fuel is { } fuel)
        {
            return new(
                fuel.KilowattHours is { } own ? Round(own) : null,
                Round(fuel.KilowattHours * (1 - EnergyClaim) ?? fuel.UsualLowKilowattHours),
                Round(fuel.KilowattHours * (1 + EnergyClaim) ?? fuel.UsualHighKilowattHours),
                question.Currency!);
        }

        var total = prediction.Energy.TotalKilowattHours;
        return new(Round(total), Round(total * (1 - EnergyClaim)), Round(total * (1 + EnergyClaim)), question.Currency!);
    }

    private static Message Instead(FitQuestion question, FittedSteps fitted, KilnPrediction prediction, Message reading)
    {
        var sentences = prediction.Segments.Select(s => Instead(s, fitted.Steps[s.Index], question.Fahrenheit)).OfType<Message>().ToList();
        var late = prediction.HoursToEnd - fitted.Hours;
        if (late > 0.2 && prediction.Completed)
            sentences.Add(Message.Of("schedules.ends-late", ("late", QuantityFormat.Duration(late * 60))));
        return Message.Sentences([.. sentences, Message.Of("schedules.cones-read", ("reading", reading))]);
    }

    private static Message? Instead(SegmentRun outcome, FitStep step, bool fahrenheit) => outcome.Following switch
    {
        Following.TooSlow when outcome.LastRateCelsiusPerHour is { } last && step.Rate is { } asked && last < NearlyAsked * asked =>
            Message.Of(
                "schedules.falls-behind-at-rate",
                ("segment", outcome.Index + 1),
                ("from", BehindFrom(outcome, fahrenheit)),
                ("rate", QuantityFormat.Rate(last, fahrenheit)),
                ("asked", QuantityFormat.Rate(asked, fahrenheit))),
        Following.TooSlow => Message.Of(
            "schedules.falls-behind-by",
            ("segment", outcome.Index + 1),
            ("from", BehindFrom(outcome, fahrenheit)),
            ("lag", fahrenheit ? outcome.LargestLagKelvin * 1.8 : outcome.LargestLagKelvin),
            ("unit", fahrenheit ? "°F" : "°C")),
        Following.Stalls => Message.Of(
            "schedules.stalls",
            ("segment", outcome.Index + 1),
            ("reached", QuantityFormat.Temperature(outcome.EndCelsius, fahrenheit)),
            ("target", QuantityFormat.Temperature(step.Celsius, fahrenheit))),
        Following.CoolsSlower when outcome.MeanRateCelsiusPerHour is { } rate => Message.Of(
            "schedules.cools-by-itself", ("segment", outcome.Index + 1), ("rate", QuantityFormat.Rate(rate, fahrenheit))),
        _ => null,
    };

    private static string BehindFrom(SegmentRun outcome, bool fahrenheit) =>
        outcome.FollowsToCelsius is { } upTo ? QuantityFormat.Temperature(upTo, fahrenheit) : "start";
}
