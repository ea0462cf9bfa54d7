using ConeService.Contract.Answers;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>Writes the answer of a fit.</summary>
internal sealed class FitWriter(ScheduleCatalogue catalogue, ConeCharts charts)
{
    /// <summary>Writes the answer.</summary>
    public FitResult Write(
        FitQuestion question, FittedSteps fitted, ConeCurves meter, KilnPrediction? prediction, IReadOnlyList<FitRemedy>? remedies,
        (double Least, double Most)? opening = null, LoadVerdict? load = null)
    {
        var programme = fitted.Programme.ToHistory();
        var asked = FitProgrammes.Of(fitted.Steps, fitted.StartCelsius).ToHistory();
        var curve = prediction?.Chamber ?? Cooled(fitted);
        var segments = SettingPeriods.Within(fitted, Segments(fitted, question), asked);
        var kiln = prediction is null ? null : ForecastWriter.Write(question, fitted, meter, prediction, remedies!);
        var share = LastRampShare(question, fitted, meter);
        // What the kiln really does, where it is known: the witnesses stand in the kiln and not in the programme.
        var told = prediction?.Chamber ?? programme;
        var work = meter.Measure(told);
        var heatWork = FitReadings.Of(work, told, question.Target, share);
        var times = FitTiming.Of(question, fitted, segments, prediction, curve, opening);
        var landmarks = FitLandmarks.Along(catalogue.Dataset, question, curve, times.OpeningMinutes / 60);
        var answer = new ScheduleFit(
            catalogue.Dataset.VersionId,
            ScheduleDescriber.Summary(question.Schedule),
            Cone: question.Target?.Cone.Cone.ToString(),
            Chart: question.Chart.Id,
            ClockHand: question.Target?.Clock,
            BendDegrees: question.Target is { } t ? Math.Round(t.Clock * 15, 1) : null,
            Units: question.Fahrenheit ? "F" : "C",
            Segments: segments,
            Programme: Programme(fitted, question),
            PeakCelsius: Celsius(fitted.PeakCelsius),
            PeakFahrenheit: Fahrenheit(fitted.PeakCelsius),
            ProgrammeMinutes: FitMinutes.Of(fitted.Hours),
            HeatWork: heatWork,
            WhyNot: fitted.WhyNot,
            Changes: [.. fitted.Changes, .. SettingPeriods.ByHand(segments, question.Fahrenheit)],
            Kiln: kiln,
            Times: times,
            Operation: new FitOperations(catalogue, question).Of(fitted, segments, prediction, curve, times),
            ShutDown: ShutDownSteps.Of(question),
            Landmarks: landmarks,
            WitnessCones: Witnesses(question, work),
            Cautions: FitCautions.For(catalogue.Dataset, question, fitted.PeakCelsius),
            Load: load?.Answer,
            Warnings: FitWarnings.For(question, fitted, heatWork, prediction, load?.Answer),
            Basis: BasisOf(question, fitted),
            Sources: [.. Sources(question, landmarks).Union(load?.Sources ?? [])],
            Assumed: [.. question.Assumed.Select(a => a.InBody()), .. load?.Assumed ?? []],
            Confidence: ConfidenceOf(question, fitted, segments, prediction));
        return new(answer, curve, asked);
    }

    /// <summary>The programme as the heat-work address takes it.</summary>
    public static FittedProgramme Programme(FittedSteps fitted, FitQuestion question)
    {
        var grid = new ControllerGrid(question.Fahrenheit);
        return new(
            question.Fahrenheit ? "F" : "C", question.Chart.Id, grid.WholeTemperature(fitted.StartCelsius),
            [.. fitted.Steps.Select(s => new FittedRamp(grid.WholeRate(s.Speed), grid.WholeTemperature(s.Celsius), s.HoldMinutes))],
            fitted.CoolingRate is { } cooling ? grid.WholeRate(cooling) : null);
    }

    private static List<FittedSegment> Segments(FittedSteps fitted, FitQuestion question)
    {
        var (segments, now, grid) = (new List<FittedSegment>(), 0.0, new ControllerGrid(question.Fahrenheit));
        for (var i = 0; i < fitted.Steps.Count; i++)
        {
            var step = fitted.Steps[i];
            var from = FitProgrammes.StartOf(fitted.Steps, i, fitted.StartCelsius);
            var hold = now + (Math.Abs(step.Celsius - from) / step.Speed);
            var end = hold + (step.HoldMinutes / 60);
            var rows = question.Schedule.Segments.Where(s => step.From.Contains(s.Number)).ToList();
            var rate = grid.WholeRate(step.Speed);
            segments.Add(new(
                i + 1,
                SegmentSentence.To(question.Fahrenheit, step.Rate, step.Celsius, step.HoldMinutes, from != step.Celsius),
                RateCelsiusPerHour: step.Rate is null ? null : RateCelsius(rate, question),
                RateFahrenheitPerHour: step.Rate is null ? null : RateFahrenheit(rate, question),
                TakenRateCelsiusPerHour: step.Rate is null ? RateCelsius(rate, question) : null,
                TargetCelsius: Celsius(step.Celsius),
                TargetFahrenheit: Fahrenheit(step.Celsius),
                RampMinutes: FitMinutes.Of(hold - now),
                HoldMinutes: step.HoldMinutes,
                StartMinutes: FitMinutes.Of(now),
                HoldStartMinutes: FitMinutes.Of(hold),
                EndMinutes: FitMinutes.Of(end),
                Stage: step.Stage,
                Purpose: step.Purpose,
                Atmosphere: step.Atmosphere,
                AtmosphereNote: step.AtmosphereNote,
                Vent: step.Vent,
                VentNote: step.VentNote,
                Settings: [],
                TemplateSegments: step.From,
                Confidence: rows.Count == 0 ? Confidence.Derived : ConfidenceOrder.Weakest(rows.Select(r => r.Confidence))));
            now = end;
        }

        return segments;
    }

    // The cooling of a kiln that was not described: it falls towards the room, at first as fast as was taken.
    private static HeatHistory Cooled(FittedSteps fitted)
    {
        var last = fitted.Steps[^1].Celsius + Temperature.KelvinAtZero;
        var room = fitted.RoomCelsius + Temperature.KelvinAtZero;
        var cooling = fitted.CoolingRate is { } rate && last > room + 10 ? CoolDown.Natural.StartingAt(rate, last, room) : null;
        return (FitProgrammes.Of(fitted.Steps, fitted.StartCelsius) with { Cooling = cooling }).ToHistory();
    }

    private static double? LastRampShare(FitQuestion question, FittedSteps fitted, ConeCurves meter)
    {
        if (question.Target is not { } target) return null;
        var index = fitted.Steps.ToList().FindIndex(s => s.Target == StepTarget.Peak);
        var curve = meter[target.Cone];
        var from = FitProgrammes.StartOf(fitted.Steps, index, fitted.StartCelsius) + Temperature.KelvinAtZero;
        var to = fitted.Steps[index].Celsius + Temperature.KelvinAtZero;
        var whole = fitted.Programme.Progress(curve);
        return whole > 0 ? HeatIntegral.OfPiece(curve, from, to, (to - from) / fitted.Steps[index].Speed) / whole : null;
    }

    // A nearer guard leans when the target is done, and then says nothing.
    private const double GuardKelvin = 12;

    private WitnessCones? Witnesses(FitQuestion question, ScaleWork work)
    {
        if (question.Target is not { } target) return null;
        var whole = question.Chart.Cones.Select(c => c.Cone).Where(c => charts.Scale.Row(c).Kind == "whole").ToList();
        var aim = work.Cones.First(c => c.Cone.Cone == target.Cone.Cone).MarginKelvin;
        var far = work.Cones.Where(c => c.MarginKelvin <= Math.Min(0, aim) - GuardKelvin).Select(c => c.Cone.Cone).ToHashSet();
        // Curves of neighbours can cross: the guide must go down first.
        var before = work.Cones.Where(c => c.IsDown && c.MarginKelvin >= aim).Select(c => c.Cone.Cone).ToHashSet();
        var guide = whole.LastOrDefault(c => c < target.Cone.Cone && before.Contains(c));
        var guard = whole.FirstOrDefault(c => c > target.Cone.Cone && far.Contains(c));
        return new(
            guide == default ? null : guide.ToString(), target.Cone.Cone.ToString(), guard == default ? null : guard.ToString(),
            Message.Of("schedules.witness-cones"));
    }

    private static Basis BasisOf(FitQuestion question, FittedSteps fitted)
    {
        if (question.Target is not { } target) return Basis.Interpolated;
        var rate = fitted.Steps.First(s => s.Target == StepTarget.Peak).Speed;
        var basis = target.Cone.At(new HeatingRate((decimal)Math.Clamp(rate, 5, 600)))?.Basis ?? Basis.Extrapolated;
        // Even at a printed rate, holds and cooling are computed between the printed values.
        return basis == Basis.Printed ? Basis.Interpolated : basis;
    }

    // What the kiln will do is a judgement, however well the chart is known.
    private static Confidence ConfidenceOf(
        FitQuestion question, FittedSteps fitted, IEnumerable<FittedSegment> segments, KilnPrediction? prediction)
    {
        var peak = fitted.Steps.FirstOrDefault(s => s.Target == StepTarget.Peak)?.Speed;
        return ConfidenceOrder.Weakest(
        [
            Confidence.Derived,
            .. segments.Select(s => s.Confidence),
            .. peak is { } rate && question.Target?.Cone.Computed(HeatWorkCalculator.RateOn(question.Chart, rate)) is { } value
                ? [value.Confidence]
                : Array.Empty<Confidence>(),
            .. prediction is null ? Array.Empty<Confidence>() : [Confidence.Estimate],
        ]);
    }

    private static IReadOnlyList<string> Sources(FitQuestion question, IReadOnlyList<FitLandmark> landmarks) =>
        [.. question.Schedule.Sources
            .Concat(question.Target is { } target
                ? target.Cone.Cells.Concat(target.Next?.Cells ?? []).Select(c => c.Source)
                : [question.Chart.Row.Source])
            .Append("derived").Append("common-practice")
            .Concat(question.Kiln?.Sources ?? []).Concat(landmarks.SelectMany(l => l.Sources)).Distinct()];

    private static decimal Celsius(double celsius) => Math.Round((decimal)celsius, 1);

    private static decimal Fahrenheit(double celsius) => Math.Round(Temperature.ToFahrenheit((decimal)celsius), 1);

    private static decimal RateCelsius(decimal whole, FitQuestion question) => question.Fahrenheit ? Math.Round(whole * 5m / 9m, 1) : whole;

    private static decimal RateFahrenheit(decimal whole, FitQuestion question) =>
        question.Fahrenheit ? whole : Math.Round(whole * 9m / 5m, 1);
}
