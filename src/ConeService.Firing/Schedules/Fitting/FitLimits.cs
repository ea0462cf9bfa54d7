using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>What the kiln's maker allows, held against the final programme and against the curve that the kiln will make of it.</summary>
internal static class FitLimits
{
    // What a computed curve may lie above its set-point by rounding.
    private const double Rounding = 0.1;

    /// <summary>Refuses a firing above the hottest temperature or cone.</summary>
    /// <exception cref="RefusedException">The firing goes above.</exception>
    public static void Check(FitQuestion question, FittedSteps fitted, KilnPrediction? prediction, ConeCurves meter)
    {
        var peak = Math.Max(fitted.PeakCelsius, (prediction?.PeakCelsius ?? 0) - Rounding);
        if (question.MaxCelsius is { } most && peak > most + 1e-6) throw new RefusedException(TooHot(question, peak, most));
        // A target within the limit can leave it only where the next cone falls too.
        if (question.MaxCone is not { } end || (question.Target is not null && fitted.WhyNot is null)) return;
        var work = meter.Measure(prediction?.Chamber ?? fitted.Programme.ToHistory());
        if (work.Reached is not { } reached || reached.Cone.Cone <= end) return;
        throw new RefusedException(new Finding(
            FindingCodes.KilnBelowCone, "/kiln/maxCone", end.ToString(),
            Message.Of("schedules.kiln-below-cone-fired", ("reading", FitReadings.Say(work)), ("most", end.ToString())),
            [Message.Of("schedules.hotter-kiln"), Message.Of("schedules.cooler-cone")]));
    }

    private static Finding TooHot(FitQuestion question, double peak, double most)
    {
        var needed = QuantityFormat.Temperature(peak, question.Fahrenheit);
        var ends = QuantityFormat.Temperature(most, question.Fahrenheit);
        return new(
            FindingCodes.KilnBelowCone, "/kiln/maxTemperature", ends,
            question.Target is { } target
                ? Message.Of("schedules.kiln-too-cool-for-cone", ("cone", target.Cone.Cone.ToString()), ("needed", needed), ("most", ends))
                : Message.Of("schedules.kiln-too-cool", ("needed", needed), ("most", ends)),
            [Message.Of("schedules.hotter-kiln"), Message.Of("schedules.cooler-cone")],
            question.Fahrenheit && most < 700 ? Message.Of("schedules.celsius-as-fahrenheit") : null);
    }
}
