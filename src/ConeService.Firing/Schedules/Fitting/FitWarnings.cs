using ConeService.Contract.Loads;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>What the one who fires must know, in sentences.</summary>
internal static class FitWarnings
{
    // Beyond this share of holds and cooling the result rests on what no chart prints.
    private const double LeastRampShare = 0.5;
    private const double NoticeableUndervoltage = 0.995;
    private const double LongHours = 60;
    private const int MostLoadReasons = 5;
    private const int MostPieceNames = 8;
    private const double ThickestOfTable = 50;
    private const decimal BandLow = -10;
    private const decimal BandHigh = 3;

    /// <summary>The warnings.</summary>
    public static IReadOnlyList<Message> For(FitQuestion question, FittedSteps fitted, FitHeatWork work, KilnPrediction? prediction,
        FitLoadCheck? load)
    {
        IEnumerable<Message?> all =
        [
            .. OfLoad(load),
            fitted.WhyNot,
            .. OfAtmosphere(question),
            .. OfHeatWork(work),
            .. OfWare(question, fitted),
            .. OfKiln(question, fitted, prediction),
            Message.Of("schedules.warn-witness-cones"),
        ];
        return [.. all.OfType<Message>()];
    }

    // What speaks against the load stands before everything else; the whole of it is in the answer's load.
    private static IEnumerable<Message> OfLoad(FitLoadCheck? load)
    {
        if (load is null or { Verdict: Verdict.Accept }) yield break;
        yield return load.Verdict == Verdict.Refuse
            ? Message.Of("schedules.warn-load-refused", ("cone", load.Cone))
            : Message.Of("schedules.warn-load-review", ("cone", load.Cone));
        var told = load.Pieces.Where(p => p.Verdict != Verdict.Accept)
            .Select(p => (p.Id, Reason: p.Reasons[0].Message))
            .GroupBy(p => p.Reason)
            .Take(MostLoadReasons);
        foreach (var group in told)
        {
            var pieces = group.Select(p => p.Id).ToList();
            yield return Message.Of(
                "schedules.warn-load-piece",
                ("pieces", string.Join(", ", pieces.Take(MostPieceNames))), ("more", pieces.Count > MostPieceNames ? "yes" : "no"),
                ("reason", group.Key));
        }

        foreach (var reason in load.Reasons.Where(r => r.Severity > ReasonSeverity.Note).Take(MostLoadReasons)) yield return reason.Message;
    }

    private static IEnumerable<Message> OfAtmosphere(FitQuestion question)
    {
        var (row, target) = (question.Schedule.Row, question.Target?.Cone.Cone);
        if (question.Heat is { } heat && !row.KilnHeats.Contains(heat))
        {
            (string, object?)[] values = [("heats", Alternatives(row.KilnHeats)), ("heat", EnumWords.Word(heat))];
            yield return heat == KilnHeat.Electric && row.Atmosphere == Atmosphere.Reduction
                ? Message.Of("schedules.warn-heat-reduction", values)
                : Message.Of("schedules.warn-heat", values);
        }

        if (row.Atmosphere == Atmosphere.Reduction && target is { Position: >= BandLow and <= BandHigh })
            yield return Message.Of("schedules.warn-iron-cones");
    }

    private static Message Alternatives(IReadOnlyList<KilnHeat> heats) => heats
        .Select(h => Message.Verbatim(EnumWords.Word(h)))
        .Aggregate((first, second) => Message.Of("schedules.alternatives", ("first", first), ("second", second)));

    private static IEnumerable<Message> OfHeatWork(FitHeatWork work)
    {
        if (work.LastRampShare is { } share and < LeastRampShare)
            yield return Message.Of("schedules.warn-last-ramp-share", ("percent", 100 * share));
    }

    private static IEnumerable<Message> OfWare(FitQuestion question, FittedSteps fitted)
    {
        if (question.Greenware && question.Dryness != Dryness.BoneDry) yield return Message.Of("schedules.warn-not-dry");
        if (question.ThicknessMillimetres > ThickestOfTable) yield return Message.Of("schedules.warn-very-thick");
        else if (fitted.Changes.Any(c => c.Code is FitChangeCode.SlowedForThickness or FitChangeCode.CoolingForThickness))
            yield return Message.Of("schedules.warn-rates-are-practice");
        if (!question.Greenware && question.Glaze == GlazeCoat.None && question.Schedule.Row.Kind is FiringKind.Glaze)
            yield return Message.Of("schedules.warn-glaze-missing");
        if (question.Glaze != GlazeCoat.None && question.Schedule.Row.Kind == FiringKind.Bisque)
            yield return Message.Of("schedules.warn-bisque-glazed");
    }

    private static IEnumerable<Message> OfKiln(FitQuestion question, FittedSteps fitted, KilnPrediction? prediction)
    {
        if (fitted.Hours > LongHours) yield return Message.Of("schedules.warn-long", ("hours", fitted.Hours));
        if (question.Heat == KilnHeat.Wood) yield return Message.Of("schedules.warn-wood");
        if (question.VoltageShare < NoticeableUndervoltage)
        {
            yield return Message.Of(
                "schedules.warn-undervoltage", ("percent", 100 * question.VoltageShare), ("kilowatts", question.Kiln!.AvailableKilowatts));
        }

        if (prediction is not null && question.Kiln is { Heat: not KilnHeat.Electric, FuelFactor: null })
            yield return Message.Of("schedules.warn-fuel-bound");
        if (!question.Drawn && prediction is { HoursToOpening: null }) yield return Message.Of("schedules.warn-opening-unknown");
    }
}
