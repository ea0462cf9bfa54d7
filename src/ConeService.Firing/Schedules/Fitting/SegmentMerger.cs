using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// Joins segments until the controller can hold them: always at the slower rate, the cheapest join first, and what is lost is named.
/// </summary>
internal static class SegmentMerger
{
    // Weights of an hour of hold that is lost, against an hour that a join adds: judgement. Drying, reduction and vapour are
    // what a firing fails without.
    private const double VitalHold = 60;
    private const double Boiling = 100;
    private const double UsefulHold = 8;
    private const double OtherAtmosphere = 20;
    private const double OtherVent = 0.5;
    private const double LostCooling = 15;

    /// <summary>Joins until at most <paramref name="most"/> steps are left.</summary>
    public static void Apply(
        List<FitStep> steps, int most, double startCelsius, bool greenware, ControllerGrid grid, List<FitChange> changes)
    {
        while (steps.Count > Math.Max(1, most))
        {
            Patience.Check();
            var join = Joins(steps, startCelsius, greenware).MinBy(j => j.Cost)!;
            changes.Add(new(join.Loses ? FitChangeCode.Lost : FitChangeCode.SegmentsMerged, join.From, join.Says(grid.Fahrenheit)));
            join.Do(steps);
        }
    }

    private sealed record Join(double Cost, bool Loses, IReadOnlyList<int> From, Func<bool, Message> Says, Action<List<FitStep>> Do);

    private static IEnumerable<Join> Joins(List<FitStep> steps, double startCelsius, bool greenware)
    {
        for (var i = 0; i + 1 < steps.Count; i++)
        {
            var start = FitProgrammes.StartOf(steps, i, startCelsius);
            var (a, b, at) = (steps[i], steps[i + 1], i);
            // Up with up, down with down; a peak is never joined into what follows it.
            if (Math.Sign(a.Celsius - start) * Math.Sign(b.Celsius - a.Celsius) < 0 || a.Target == StepTarget.Peak) continue;
            yield return Pair(a, b, start, at, greenware);
        }

        if (steps.Count > 1 && steps[^1].Target != StepTarget.Peak) yield return Last(steps);
        // A hold at the peak after the last ramp (to clear the kiln) can be done by the ramp's own hold.
        for (var i = 1; i < steps.Count; i++)
        {
            if (steps[i - 1].Target == StepTarget.Peak && steps[i].Target == StepTarget.Peak)
                yield return PeakHold(steps[i - 1], steps[i], i);
        }
    }

    private static Join Pair(FitStep a, FitStep b, double start, int at, bool greenware)
    {
        var rate = Math.Min(a.Speed, b.Speed);
        var slower = LongerHours(a.Celsius - start, rate, a.Speed) + LongerHours(b.Celsius - a.Celsius, rate, b.Speed);
        var changes = a.Atmosphere != b.Atmosphere || a.AtmosphereNote != b.AtmosphereNote;
        var vents = a.Vent != b.Vent || a.VentNote != b.VentNote;
        var cost = slower + (a.HoldMinutes / 60 * HoldWeight(a, greenware)) + (changes ? OtherAtmosphere : 0) + (vents ? OtherVent : 0);
        return new(
            cost,
            a.HoldMinutes > 0,
            [.. a.From, .. b.From],
            f => PairMessage(a, b, rate, slower, f),
            steps =>
            {
                steps[at + 1] = b with
                {
                    Rate = b.Rate is null && a.Rate is null ? null : rate,
                    TakenRate = rate,
                    From = [.. a.From, .. b.From],
                    RateLimited = true,
                };
                steps.RemoveAt(at);
            });
    }

    private static double LongerHours(double degrees, double rate, double speed) =>
        (Math.Abs(degrees) / rate) - (Math.Abs(degrees) / speed);

    private static Message PairMessage(FitStep a, FitStep b, double rate, double slower, bool fahrenheit)
    {
        var target = QuantityFormat.Temperature(a.Celsius, fahrenheit);
        List<Message> sentences =
        [
            Message.Of(
                "schedules.segments-joined",
                ("first", NameFirst(a)),
                ("second", Name(b)),
                ("rate", QuantityFormat.Rate(rate, fahrenheit)),
                ("longer", QuantityFormat.Duration(slower * 60))),
        ];
        if (a.HoldMinutes > 0)
        {
            sentences.Add(Message.Of(
                "schedules.hold-lost", ("hold", QuantityFormat.Duration(a.HoldMinutes)), ("target", target), ("purpose", a.Purpose)));
        }

        return Message.Sentences(sentences);
    }

    private static Join Last(List<FitStep> steps)
    {
        var (step, from) = (steps[^1], steps[^2].Celsius);
        var hours = (Math.Abs(step.Celsius - from) / step.Speed) + (step.HoldMinutes / 60);
        return new(
            LostCooling + hours, true, step.From,
            f => Message.Of(
                "schedules.last-segment-lost",
                ("segment", NameFirst(step)),
                ("programme", SegmentSentence.To(f, step.Rate, step.Celsius, step.HoldMinutes)),
                ("from", QuantityFormat.Temperature(from, f))),
            s => s.RemoveAt(s.Count - 1));
    }

    private static Join PeakHold(FitStep a, FitStep b, int at) => new(
        b.Atmosphere == a.Atmosphere ? 0.1 : 2, b.Atmosphere != a.Atmosphere, [.. a.From, .. b.From],
        _ => Message.Of(
            "schedules.peak-hold-joined",
            ("segment", NameFirst(b)),
            ("hold", QuantityFormat.Duration(b.HoldMinutes)),
            ("purpose", b.Purpose)),
        steps =>
        {
            steps[at - 1] = a with { HoldMinutes = a.HoldMinutes + b.HoldMinutes, From = [.. a.From, .. b.From] };
            steps.RemoveAt(at);
        });

    private static double HoldWeight(FitStep step, bool greenware) => step.Stage switch
    {
        // Below the boiling point the hold keeps ware whole; one above only ends what it began.
        FiringStage.Drying => !greenware ? 1 : step.Celsius < Boiling ? 10 * VitalHold : VitalHold,
        FiringStage.BodyReduction or FiringStage.Vapour => VitalHold,
        FiringStage.BurnOut or FiringStage.DropAndHold or FiringStage.Growth or FiringStage.BoundWater => UsefulHold,
        _ => 2,
    };

    private static Message NameFirst(FitStep step) => step.From switch
    {
        [] => Message.Of("schedules.added-drying-first"),
        [var number] => Message.Of("schedules.segment-named-first", ("number", number), ("purpose", step.Purpose)),
        var many => Message.Of(
            "schedules.segments-named-first",
            ("numbers", string.Join(", ", many.SkipLast(1))),
            ("last", many[^1]),
            ("purpose", step.Purpose)),
    };

    private static Message Name(FitStep step) => step.From switch
    {
        [] => Message.Of("schedules.added-drying"),
        [var number] => Message.Of("schedules.segment-named", ("number", number), ("purpose", step.Purpose)),
        var many => Message.Of(
            "schedules.segments-named",
            ("numbers", string.Join(", ", many.SkipLast(1))),
            ("last", many[^1]),
            ("purpose", step.Purpose)),
    };
}
