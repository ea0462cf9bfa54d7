using ConeService.Contract.Kilns;
using ConeService.Contract.Schedules;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Writes what the kiln makes of a programme.</summary>
internal static class ForecastWriter
{
    private const double EnergyClaim = 0.2;
    private const double NearlyAsked = 0.97;

    /// <summary>The forecast.</summary>
    public static KilnForecast Write(FitQuestion question, FittedPlan plan, ConeCurves meter, KilnPrediction prediction, IReadOnlyList<FitRemedy> remedies)
    {
        var work = meter.Measure(prediction.Chamber);
        var setup = question.Kiln!;
        var follows = prediction.Segments.All(s => s.Following == Following.Follows);
        return new(
            question.KilnId, question.Heat!.Value, Math.Round(setup.VolumeLitres, 1), Math.Round(setup.AvailableKilowatts, 2), follows, [.. prediction.Segments.Select(s => s.Rounded())],
            FitReadings.Of(work, prediction.Chamber, question.Target, null), Math.Round(prediction.PeakCelsius, 1), Math.Round(prediction.HoursToPeak, 2), Math.Round(prediction.HoursToEnd, 2),
            prediction.HoursToOpening is { } hours ? Math.Round(hours, 2) : null, prediction.Energy.Rounded(), prediction.Fuel.Rounded(), Cost(question, prediction),
            follows ? null : Instead(question, plan, prediction, FitReadings.Say(work)), remedies);
    }

    private static FitCost? Cost(FitQuestion question, KilnPrediction prediction)
    {
        if (question.PricePerKilowattHour is not { } price) return null;
        double Round(double kilowattHours) => Math.Round(kilowattHours * price, 2);
        if (prediction.Fuel is { } fuel)
        {
            return new(fuel.KilowattHours is { } own ? Round(own) : null, Round(fuel.KilowattHours * (1 - EnergyClaim) ?? fuel.UsualLowKilowattHours), Round(fuel.KilowattHours * (1 + EnergyClaim) ?? fuel.UsualHighKilowattHours), question.Currency!);
        }

        var total = prediction.Energy.TotalKilowattHours;
        return new(Round(total), Round(total * (1 - EnergyClaim)), Round(total * (1 + EnergyClaim)), question.Currency!);
    }

    private static string Instead(FitQuestion question, FittedPlan plan, KilnPrediction prediction, string reading)
    {
        var f = question.Fahrenheit;
        var sentences = prediction.Segments.Select(s => s.Following switch
        {
            Following.TooSlow => $"In segment {s.Index + 1} it {(s.FollowsToCelsius is { } upTo ? $"falls behind above {SegmentWords.Temperature(upTo, f)}" : "can't follow from the start")}"
                + (s.LastRateCelsiusPerHour is { } last && plan.Steps[s.Index].Rate is { } asked && last < NearlyAsked * asked
                    ? $" and ends at {SegmentWords.Rate(last, f)} instead of {SegmentWords.Rate(asked, f)}."
                    : FormattableString.Invariant($", at most {(f ? s.LargestLagKelvin * 1.8 : s.LargestLagKelvin):0} {(f ? "°F" : "°C")} behind.")),
            Following.Stalls => $"In segment {s.Index + 1} it hardly climbs any more at {SegmentWords.Temperature(s.EndCelsius, f)}, short of {SegmentWords.Temperature(plan.Steps[s.Index].Celsius, f)}.",
            Following.CoolsSlower => s.MeanRateCelsiusPerHour is { } rate ? $"In segment {s.Index + 1} it cools by itself at {SegmentWords.Rate(rate, f)} only." : null,
            _ => null,
        }).OfType<string>();
        var late = prediction.HoursToEnd - plan.Hours;
        var time = late > 0.2 && prediction.Completed ? $" The programme ends {SegmentWords.Duration(late * 60)} late." : "";
        return $"{string.Join(" ", sentences)}{time} Fired so, the cones read {reading}.";
    }
}
