using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Makes a template into a programme: drying, thickness, approach, cooling, the controller's segments, then the peak.</summary>
internal sealed class StepFitter(ScheduleCatalogue catalogue, ConeCharts charts)
{
    // The band that a fitted cone must land in, and the least span that a last ramp keeps.
    private const double Tolerance = 0.05;
    private const double LeastSpan = 30;

    /// <summary>Makes the programme.</summary>
    /// <param name="question">The question.</param>
    /// <param name="meter">The chart's curves.</param>
    /// <param name="natural">How fast the kiln cools by itself.</param>
    public FittedSteps Fit(FitQuestion question, ConeCurves meter, NaturalRates natural)
    {
        var grid = new ControllerGrid(question.Fahrenheit);
        var changes = new List<FitChange>();
        var steps = TemplateSteps.Of(question.Schedule, charts.Scale, FirstPeak(question, meter));
        foreach (var hand in question.Schedule.Segments.Where(s => s.Stage == FiringStage.PostFiring))
        {
            changes.Add(new(FitChangeCode.DoneByHand, [hand.Number], Message.Of(
                "schedules.done-by-hand", ("number", hand.Number), ("purpose", hand.Purpose))));
        }

        var template = steps.ToList();
        Crash(steps, natural);
        DryingSteps.Apply(steps, question, catalogue, changes);
        var start = question.StartCelsius;
        HotStartSteps.Apply(steps, start, grid, changes);
        if (question.Target is not null) Approach(steps, question, meter, grid, start, changes);
        ThicknessSteps.Apply(steps, question, catalogue, start, changes);
        if (!question.Drawn) CoolingSteps.Apply(steps, question, catalogue, natural.Inversion, natural.Top, changes);
        var settings = SettingMark.Of(template, steps);
        if (question.ControllerSegments is { } most) SegmentMerger.Apply(steps, most, start, question.Greenware, grid, changes);
        OnGrid(steps, grid);
        double? cooling = question.Drawn ? null : grid.Rate(natural.Top);
        if (question.Target is not { } target) return new(steps, start, question.RoomCelsius, cooling, null, changes, settings);
        var (solved, whyNot) = Solve(steps, question, target, meter, new(grid, start, cooling), changes);
        return new(solved, start, question.RoomCelsius, cooling, whyNot, changes, settings);
    }

    /// <summary>Solves the peak again after ramps were changed.</summary>
    public static FittedSteps Refit(FittedSteps fitted, IReadOnlyList<FitStep> steps, FitQuestion question, ConeCurves meter)
    {
        if (question.Target is not { } target) return fitted with { Steps = steps };
        var solver = new PeakSolver(new(question.Fahrenheit), fitted.StartCelsius, fitted.CoolingRate);
        var (solved, whyNot) = Solve([.. steps], question, target, meter, solver, []);
        return fitted with { Steps = solved, WhyNot = whyNot };
    }

    private static double FirstPeak(FitQuestion question, ConeCurves meter)
    {
        if (question.Target is not { } target) return (double)question.Schedule.Segments.Max(s => s.TargetCelsius ?? 0);
        var rate = question.Schedule.Segments.First(s => s.TargetCone is not null).RateCelsiusPerHour ?? 60;
        return meter[target.Cone].EndPoint((double)rate) - Temperature.KelvinAtZero;
    }

    private static void Crash(List<FitStep> steps, NaturalRates natural)
    {
        for (var i = 1; i < steps.Count; i++)
        {
            var step = steps[i];
            if (step.Rate is null && step.Celsius < steps[i - 1].Celsius)
                steps[i] = step with { TakenRate = natural.Crash.TryGetValue(step.From[0], out var known) ? known : natural.Top };
        }
    }

    private void Approach(
        List<FitStep> steps, FitQuestion question, ConeCurves meter, ControllerGrid grid, double start, List<FitChange> changes)
    {
        var solver = new PeakSolver(grid, start, null);
        while (steps.FindIndex(s => s.Target == StepTarget.EarlierCone) is var i and >= 0)
        {
            Patience.Check();
            var from = steps[i].From;
            var curve = Earlier(question, meter, steps[i]);
            double? Peak(List<FitStep> s, int at) => solver.Estimate([.. s.Take(at + 1)], at, curve, 1);
            ApproachSteps.Apply(steps, s => s.From == from, Span(question, steps[i], meter), Peak, grid, changes);
            i = steps.FindIndex(s => s.From == from);
            steps[i] = steps[i] with
            {
                Celsius = grid.PeakAbove(Peak(steps, i) ?? steps[i].Celsius),
                Target = StepTarget.Fixed,
                IsPeak = true,
            };
        }

        var target = question.Target!;
        var peak = steps.FindIndex(s => s.Target == StepTarget.Peak);
        double? Estimate(List<FitStep> s, int at) => solver.Estimate(s, at, meter[target.Cone], target.Progress);
        // What follows a cooler cone has that cone's peak for a start, and no span of its own to keep.
        if (!question.Schedule.Segments.Any(s =>
            s is { TargetCone: { } c, TargetBelowCelsius: null } && Cone.Parse(c) != question.Schedule.EndCone))
        {
            ApproachSteps.Apply(steps, s => s.Target == StepTarget.Peak, Span(question, steps[peak], meter), Estimate, grid, changes);
        }

        peak = steps.FindIndex(s => s.Target == StepTarget.Peak);
        if (Estimate(steps, peak) is { } celsius)
        {
            var moved = FitProgrammes.AtPeak(steps, celsius, grid);
            for (var i = 0; i < steps.Count; i++) steps[i] = moved[i];
        }
    }

    private static BendingCurve Earlier(FitQuestion question, ConeCurves meter, FitStep step)
    {
        var whole = question.Chart.Cones
            .Where(c => c.Cone <= question.Target!.Cone.Cone && c.Cone.Position == Math.Truncate(c.Cone.Position) && meter.Has(c))
            .ToList();
        return meter[whole[Math.Max(0, whole.Count - 1 - (int)step.Below)]];
    }

    // The template's own last ramp, from the target before it to the end point of its own cone, at most the span that charts ask for.
    private double Span(FitQuestion question, FitStep hot, ConeCurves meter)
    {
        var most = catalogue.Default("last-ramp-span");
        var row = question.Schedule.Segments.First(s => s.Number == hot.From[0]);
        if (row.Number == 1 || question.Chart.Find(Cone.Parse(row.TargetCone!)) is not { } own || !meter.Has(own)) return most;
        var before = question.Schedule.Segments[row.Number - 2];
        if (before.TargetCelsius is not { } from) return LeastSpan;
        var end = meter[own].EndPoint((double)(row.RateCelsiusPerHour ?? 60)) - Temperature.KelvinAtZero;
        return Math.Clamp(end - (double)from, LeastSpan, most);
    }

    private static void OnGrid(List<FitStep> steps, ControllerGrid grid)
    {
        for (var i = 0; i < steps.Count; i++)
        {
            var step = steps[i];
            steps[i] = step with
            {
                Celsius = step is { Target: StepTarget.Fixed, IsPeak: false } ? grid.Temperature(step.Celsius) : step.Celsius,
                Rate = step.Rate is { } rate ? (step.RateLimited ? grid.RateBelow(rate) : grid.Rate(rate)) : null,
                TakenRate = grid.Rate(step.TakenRate),
                HoldMinutes =
                Math.Max(0, Math.Ceiling((step.HoldMinutes / ControllerGrid.HoldMinutes) - 1e-9)) * ControllerGrid.HoldMinutes,
            };
        }
    }

    private static (List<FitStep> Steps, Message? WhyNot) Solve(
        List<FitStep> steps, FitQuestion question, FitTarget target, ConeCurves meter, PeakSolver solver, List<FitChange> changes)
    {
        var index = steps.FindIndex(s => s.Target == StepTarget.Peak);
        var asked = steps[index];
        // A hair short of its end point is down.
        var fallen = target.Next is { } hotter ? HeatMargin.JustDown(meter[hotter]) : double.PositiveInfinity;
        (List<FitStep> Steps, double Next)? best = null;
        foreach (var (rate, hold) in Ramps(asked, new(question.Fahrenheit)))
        {
            Patience.Check();
            var attempt = steps.ToList();
            attempt[index] = asked with { Rate = rate ?? asked.Rate, HoldMinutes = hold };
            if (solver.Solve(attempt, index, meter[target.Cone], target.Aim) is not { } solved) continue;
            // What the programme is given beyond the goal, the kiln does not pass on to the next cone either.
            var next = target.Next is { } n ? solver.Progress(solved, meter[n]) * target.Progress / target.Aim : 0;
            if (best is null || next < best.Value.Next) best = (solved, next);
            if (next < fallen) break;
        }

        if (best is not { } found) return (steps, TooMuch(steps, index, question, target));
        Said(asked, found.Steps[index], question.Fahrenheit, changes);
        var progress = solver.Progress(found.Steps, meter[target.Cone]);
        if (found.Next >= fallen)
        {
            return (found.Steps, Message.Of(
                "schedules.next-cone-falls-too",
                ("next", target.Next!.Cone.ToString()),
                ("progress", ConeWork.Told(found.Next)),
                ("chart", question.Chart.Id),
                ("cone", target.Cone.Cone.ToString())));
        }

        return (found.Steps, Math.Abs(progress - target.Aim) <= Tolerance ? null : Message.Of(
            "schedules.grid-misses-goal",
            ("cone", target.Cone.Cone.ToString()),
            ("progress", progress),
            ("goal", target.Aim)));
    }

    // First as asked; then, should the next cone fall too, without the hold and at other rates.
    private static IEnumerable<(double? Rate, double Hold)> Ramps(FitStep asked, ControllerGrid grid)
    {
        yield return (null, asked.HoldMinutes);
        if (asked.HoldMinutes > 0) yield return (null, 0);
        foreach (var slow in (double[])[60, 100, 150, 30, 15])
        {
            var rate = grid.Rate(slow);
            if (!asked.RateLimited || rate <= asked.Speed) yield return (rate, 0);
        }
    }

    private static void Said(FitStep asked, FitStep got, bool fahrenheit, List<FitChange> changes)
    {
        if (asked.Speed == got.Speed && asked.HoldMinutes == got.HoldMinutes) return;
        var large = Math.Abs((got.Speed / asked.Speed) - 1) > 0.2
            || Math.Abs(got.HoldMinutes - asked.HoldMinutes) > Math.Max(5, 0.25 * asked.HoldMinutes);
        (string, object?)[] values =
        [
            ("fromRate", QuantityFormat.Rate(asked.Speed, fahrenheit)),
            ("fromHold", QuantityFormat.Duration(asked.HoldMinutes)),
            ("toRate", QuantityFormat.Rate(got.Speed, fahrenheit)),
            ("toHold", QuantityFormat.Duration(got.HoldMinutes)),
        ];
        changes.Add(large
            ? new(FitChangeCode.LastRampChanged, got.From, Message.Of("schedules.last-ramp-changed", values))
            : new(FitChangeCode.Trimmed, got.From, Message.Of("schedules.last-ramp-trimmed", values)));
    }

    private static Message TooMuch(List<FitStep> steps, int index, FitQuestion question, FitTarget target)
    {
        var before = steps.Take(index).TakeLast(2)
            .Select(s => SegmentSentence.To(question.Fahrenheit, s.Rate, s.Celsius, s.HoldMinutes)).ToList();
        return Message.Of("schedules.cone-down-before", ("cone", target.Cone.Cone.ToString()), ("segments", before switch
        {
            [var first, var second] => Message.Of("schedules.segments-after-each-other", ("first", first), ("second", second)),
            [var only] => only,
            _ => null,
        }));
    }
}
