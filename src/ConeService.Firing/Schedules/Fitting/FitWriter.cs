using ConeService.Contract.Answers;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Writes the answer of a fit.</summary>
internal sealed class FitWriter(ScheduleBook book, ConeCharts charts)
{
    /// <summary>Writes the answer.</summary>
    public FitResult Write(FitQuestion question, FittedPlan plan, ConeCurves meter, KilnPrediction? prediction, IReadOnlyList<FitRemedy>? remedies)
    {
        var programme = plan.Programme.ToHistory();
        var work = meter.Measure(programme);
        var asked = FitProgrammes.Of(plan.Steps, plan.StartCelsius).ToHistory();
        var curve = prediction?.Chamber ?? Cooled(plan);
        var segments = Segments(plan, question);
        var kiln = prediction is null ? null : ForecastWriter.Write(question, plan, meter, prediction, remedies!);
        var share = LastRampShare(question, plan, meter);
        var heatWork = FitReadings.Of(work, programme, question.Target, share);
        var landmarks = FitLandmarks.Along(book.Dataset, question, curve);
        return new(
            new(
                book.Dataset.VersionId, ScheduleDescriber.Summary(question.Schedule), question.Target?.Cone.Cone.ToString(), question.Chart.Id,
                question.Target?.Clock, question.Target is { } t ? Math.Round(t.Clock * 15, 1) : null, question.Fahrenheit ? "F" : "C",
                segments, Programme(plan, question), Celsius(plan.PeakCelsius), Fahrenheit(plan.PeakCelsius), Math.Round(plan.Hours, 3),
                heatWork, plan.WhyNot, plan.Changes, kiln, FitTiming.Of(question, plan, segments, prediction, curve), landmarks,
                Witnesses(question), FitCautions.For(book.Dataset, question), FitWarnings.For(question, plan, heatWork, prediction),
                BasisOf(question, plan), Sources(question, landmarks), question.Assumed),
            curve, asked);
    }

    /// <summary>The programme as the heat-work address takes it.</summary>
    public static FittedProgramme Programme(FittedPlan plan, FitQuestion question)
    {
        var grid = new ControllerGrid(question.Fahrenheit);
        return new(
            question.Fahrenheit ? "F" : "C", question.Chart.Id, grid.WholeTemperature(plan.StartCelsius),
            [.. plan.Steps.Select(s => new FittedRamp(grid.WholeRate(s.Speed), grid.WholeTemperature(s.Celsius), s.HoldMinutes))],
            grid.WholeRate(plan.CoolingRate));
    }

    private static List<FittedSegment> Segments(FittedPlan plan, FitQuestion question)
    {
        var (segments, now, grid) = (new List<FittedSegment>(), 0.0, new ControllerGrid(question.Fahrenheit));
        for (var i = 0; i < plan.Steps.Count; i++)
        {
            var step = plan.Steps[i];
            var from = FitProgrammes.StartOf(plan.Steps, i, plan.StartCelsius);
            var hold = now + (Math.Abs(step.Celsius - from) / step.Speed);
            var end = hold + (step.HoldMinutes / 60);
            var rows = question.Schedule.Segments.Where(s => step.From.Contains(s.Number)).ToList();
            var rate = grid.WholeRate(step.Speed);
            segments.Add(new(
                i + 1,
                SegmentWords.Say(question.Fahrenheit, step.Rate, step.Celsius, null, null, step.HoldMinutes, from != step.Celsius),
                step.Rate is null ? null : RateCelsius(rate, question), step.Rate is null ? null : RateFahrenheit(rate, question), step.Rate is null ? RateCelsius(rate, question) : null,
                Celsius(step.Celsius), Fahrenheit(step.Celsius), step.HoldMinutes, Math.Round(now, 3), Math.Round(hold, 3), Math.Round(end, 3),
                step.Stage, step.Purpose, step.Atmosphere, step.AtmosphereNote, step.Vent, step.VentNote, step.From,
                rows.Count == 0 ? Confidence.Derived : rows.Max(r => r.Confidence)));
            now = end;
        }

        return segments;
    }

    // The cooling of a kiln that was not described: it falls towards the room, at first as fast as was taken.
    private static HeatHistory Cooled(FittedPlan plan)
    {
        var last = plan.Steps[^1].Celsius + Temperature.KelvinAtZero;
        const double room = 20 + Temperature.KelvinAtZero;
        return (FitProgrammes.Of(plan.Steps, plan.StartCelsius) with { Cooling = last > room + 10 ? CoolDown.Natural.StartingAt(plan.CoolingRate, last, room) : null }).ToHistory();
    }

    private static double? LastRampShare(FitQuestion question, FittedPlan plan, ConeCurves meter)
    {
        if (question.Target is not { } target) return null;
        var index = plan.Steps.ToList().FindIndex(s => s.Target == StepTarget.Peak);
        var (from, to, curve) = (FitProgrammes.StartOf(plan.Steps, index, plan.StartCelsius) + Temperature.KelvinAtZero, plan.Steps[index].Celsius + Temperature.KelvinAtZero, meter[target.Cone]);
        var whole = plan.Programme.Progress(curve);
        return whole > 0 ? HeatIntegral.OfPiece(curve, from, to, (to - from) / plan.Steps[index].Speed) / whole : null;
    }

    private WitnessCones? Witnesses(FitQuestion question)
    {
        if (question.Target is not { } target) return null;
        var whole = question.Chart.Cones.Select(c => c.Cone).Where(c => charts.Scale.Row(c).Kind == "whole").ToList();
        var (guide, guard) = (whole.LastOrDefault(c => c < target.Cone.Cone), whole.FirstOrDefault(c => c > target.Cone.Cone));
        return new(
            guide == default ? null : guide.ToString(), target.Cone.Cone.ToString(), guard == default ? null : guard.ToString(),
            "Set them where the ware is and one set where the kiln is coldest. When the guide falls, watch; when the target points where it should, the firing is done, whatever the meter says; the guard must stay up.");
    }

    private static Basis BasisOf(FitQuestion question, FittedPlan plan)
    {
        if (question.Target is not { } target) return Basis.Interpolated;
        var rate = plan.Steps.First(s => s.Target == StepTarget.Peak).Speed;
        var basis = target.Cone.At(new HeatingRate((decimal)Math.Clamp(rate, 5, 600)))?.Basis ?? Basis.Extrapolated;
        // Even at a printed rate, holds and cooling are computed between the printed values.
        return basis == Basis.Printed ? Basis.Interpolated : basis;
    }

    private static IReadOnlyList<string> Sources(FitQuestion question, IReadOnlyList<FitLandmark> landmarks) =>
        [.. question.Schedule.Sources
            .Concat(question.Target is { } target ? target.Cone.Cells.Concat(target.Next?.Cells ?? []).Select(c => c.Source) : [question.Chart.Row.Source])
            .Append("derived").Append("common-practice")
            .Concat(question.Kiln?.Sources ?? []).Concat(landmarks.SelectMany(l => l.Sources)).Distinct()];

    private static decimal Celsius(double celsius) => Math.Round((decimal)celsius, 1);

    private static decimal Fahrenheit(double celsius) => Math.Round(Temperature.ToFahrenheit((decimal)celsius), 1);

    private static decimal RateCelsius(decimal whole, FitQuestion question) => question.Fahrenheit ? Math.Round(whole * 5m / 9m, 1) : whole;

    private static decimal RateFahrenheit(decimal whole, FitQuestion question) => question.Fahrenheit ? whole : Math.Round(whole * 9m / 5m, 1);
}
