using ConeService.Contract.Answers;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;

namespace ConeService.Api.Features.Cards;

/// <summary>A schedule: its steps in words, its curve, what it passes, and what can hurt.</summary>
internal static class ScheduleCard
{
    public static readonly string[] Names = ["cone", "unit"];

    public static Card Of(CardAsk ask)
    {
        var fit = Fit(ask).Answer;
        var to = fit.Cone is { } cone ? $" to cone {cone}" : "";
        return new(
            CardFrame.Path("schedule/" + fit.Schedule.Id, ask, Names), fit.Schedule.Name + to,
            $"The steps of the schedule {fit.Schedule.Name.ToLowerInvariant()}{to}, and what the ware passes on the way.",
            body => Write(body, ask, fit), fit.Sources);
    }

    /// <summary>The schedule, fitted to the cone asked for and to no kiln; without a cone to the one that is usual for it.</summary>
    public static FittedSchedule Fit(CardAsk ask)
    {
        try
        {
            return ask.Reference.Schedules.Fit(ask.Id, new FitRequest(SentText.Of(ask["cone"] ?? Usual(ask)), Units: ask["unit"] ?? "C"));
        }
        catch (RefusedException refused)
        {
            // Told of the parameters of the card: nobody posted a body.
            throw new RefusedException([.. refused.Findings.Select(f => f.Field switch
            {
                "/units" => f with { Field = "unit" },
                ['/', .. var name] => f with { Field = name },
                _ => f,
            })]);
        }
    }

    // The cone of the template; else, of the cones that it can be fitted to, the first that studios fire this way.
    private static string? Usual(CardAsk ask)
    {
        var (schedule, cones) = (ask.Reference.Schedules.Detail(ask.Id).Schedule, ask.Reference.Cones);
        if (schedule.EndCone is { } end) return end;
        if (schedule.ConeMin is not { } low || schedule.ConeMax is not { } high) return null;
        var (min, max) = (cones.Read(low), cones.Read(high));
        return ask.Reference.Dataset.UsualFirings.Where(u => u.FiringKind == schedule.FiringKind).Select(u => u.Cone)
            .FirstOrDefault(c => cones.Read(c) >= min && cones.Read(c) <= max, high);
    }

    private static void Write(CardBody body, CardAsk ask, ScheduleFit fit)
    {
        var f = fit.Units == "F";
        body.Say(
            $"Peak {QuantityFormat.Temperature((double)fit.PeakCelsius, f)} after {QuantityFormat.Duration(fit.Times.PeakMinutes)}, for "
            + $"{CardWords.Words(fit.Schedule.KilnHeats)} kilns.", "lead", needed: true);
        var cautions = fit.Cautions.Select(c => $"{c.Name}: {c.Control}").ToList();
        if (ask.Look.IsShort && cautions.Count > 0) body.Say(cautions[0], "warn");
        body.Table("Steps", ["Step", "What the controller does", "For"], fit.Segments.Select(s => (Cell[])
        [
            Cell.Number($"{s.Number}"), s.InWords, s.Purpose,
        ]));
        if (!ask.Look.IsShort)
        {
            body.Table("On the way", ["What", "At", "What to do"], fit.Landmarks.Select(l => (Cell[])
            [
                l.Name, Span(l, f), l.Advice ?? "–",
            ]));
            body.List("Cautions", cautions);
            body.List("To know", fit.Warnings.Select(w => w.ToString()));
        }

        body.Say($"How sure: {CardWords.Of(fit.Confidence)}. "
            + "The manual of your kiln, local codes and licensed practice come before this card.");
    }

    private static string Span(FitLandmark mark, bool fahrenheit)
    {
        var low = QuantityFormat.Temperature((double)mark.CelsiusMin, fahrenheit);
        var high = QuantityFormat.Temperature((double)mark.CelsiusMax, fahrenheit);
        return mark.CelsiusMin == mark.CelsiusMax ? low : $"{low[..^3]} to {high}";
    }
}
