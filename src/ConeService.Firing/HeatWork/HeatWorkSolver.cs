using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>Answers inverse questions: which peak, hold or last rate puts a cone just down.</summary>
/// <param name="calculator">Follows the firing with the value put in.</param>
internal sealed class HeatWorkSolver(HeatWorkCalculator calculator)
{
    private const double Zero = Temperature.KelvinAtZero;
    private const double HottestKelvin = ScaleTable.HottestCelsius + Zero;
    private const double LongestHoldHours = 24;
    private const double ModerateHoldHours = 1;
    private static readonly string[] Finds = ["peak", "hold", "rate"];

    /// <summary>Answers a request.</summary>
    /// <param name="request">The request; units are C or F, and it has segments.</param>
    /// <returns>The answer, and the history for a figure; null when nothing near is feasible.</returns>
    /// <exception cref="RefusedException">The question can't be read.</exception>
    public (SolveAnswer Answer, HeatHistory? History) Answer(SolveRequest request)
    {
        var together = new Together();
        together.Try(() => HeatWorkCheck.Require(request));
        var findings = together.Findings;
        if (!Finds.Contains(request.Find))
        {
            findings.Add(new(
                request.Find is null ? FindingCodes.MemberMissing : FindingCodes.FindUnknown, "/find", request.Find,
                Message.Of("heat-work.find-unknown"), Message.Verbatim(Finds)));
        }

        var (cone, isCone) = (default(Cone), false);
        if (request.Cone.IsAbsent)
        {
            findings.Add(new(
                FindingCodes.MemberMissing, "/cone", null, Message.Of("heat-work.no-cone-named"), Message.Verbatim(["\"6\"", "\"04\""])));
        }
        else if (ConeInput.TryRead(calculator.Charts.Scale, request.Cone, "/cone", out cone, out var wrong)) isCone = true;
        else findings.Add(wrong!);

        // What is asked for may be absent; where that can't be read, it may be the peak.
        var read = calculator.Read(request, "", together, Finds.Contains(request.Find) ? request.Find : "peak");
        if (isCone && read.Settings?.Chart is { } chart && chart.Find(cone) is null)
        {
            findings.Add(new(
                FindingCodes.ConeNotOnChart, "/cone", cone.ToString(), EndPointCalculator.NotOnChart(chart, cone),
                [Message.Of("heat-work.a-cone-of-the-chart")]));
        }

        together.Done();
        var (settings, programme) = (read.Settings!, read.Programme!);
        var found = settings.Chart.Find(cone)!;
        // A peak left open stands last, and the hottest segment is the one that is asked about.
        var open = request.Find == "peak" && request.Segments![^1]?.Target is null;
        var segment = open ? programme.Segments.Count - 1 : programme.PeakSegment;
        var rate = programme.Segments[segment].RateKelvinPerHour ?? programme.FullSpeedKelvinPerHour;
        var curve = found.Curve(new(Math.Clamp((decimal)rate, HeatingRate.Slowest, HeatingRate.Fastest)))
            ?? throw new RefusedException(new Finding(
                FindingCodes.RateNotComputable, "/cone", cone.ToString(),
                Message.Of("heat-work.none-to-borrow", ("chart", settings.Chart.Id), ("cone", cone.ToString())),
                [Message.Of("heat-work.another-cone"), Message.Verbatim(ConeCharts.DefaultChart)]));
        return Solve(
            request.Find!, new(curve, programme, segment), found.Cone, settings,
            found.Computed(HeatWorkCalculator.RateOn(settings.Chart, rate))!);
    }

    private (SolveAnswer Answer, HeatHistory? History) Solve(
        string find, Question asked, Cone cone, HeatSettings settings, EndPointValue value)
    {
        var (solution, solved) = find switch { "hold" => Hold(asked), "rate" => Rate(asked), _ => Peak(asked) };
        var instead = solved is null ? Instead(find, asked, solution) : null;
        var shown = solved ?? instead;
        var result = shown is null ? null : calculator.Answer(shown.ToHistory(), null, [], settings);
        var found = solved is null ? null : solution.Value;
        var (celsius, rate) = (find == "peak" ? found - Zero : null, find == "rate" ? found : null);
        return (new(
            calculator.Charts.Dataset.VersionId,
            Cone: cone.ToString(),
            Chart: settings.Chart.Id,
            Find: find,
            Feasible: solved is not null,
            Segment: asked.Segment + 1,
            Celsius: Round(celsius),
            Fahrenheit: Round((celsius * 1.8) + 32),
            HoldMinutes: find == "hold" ? Round(found * 60) : null,
            CelsiusPerHour: Round(rate),
            FahrenheitPerHour: Round(rate * 1.8),
            OtherProgress: Math.Round(ConeWork.Told(solution.OtherProgress), 6),
            Why: solved is null ? SolverTexts.Why(find, solution, asked.PeakCelsius, cone) : null,
            Instead: instead is null ? null : SolverTexts.Instead(instead.Segments[asked.Segment], cone),
            HeatWork: result?.Answer,
            Notes: SolverTexts.Notes(find, asked.Curve, cone),
            Basis: value.Basis,
            Confidence: ConfidenceOrder.Weakest([value.Confidence, Confidence.Derived]),
            Sources:
            [
                .. value.Cells.Select(c => c.Source).Append(ConeCharts.DerivedSource)
                    .Concat(result?.Answer.Sources ?? []).Distinct(StringComparer.Ordinal),
            ],
            Assumed: [.. (result?.Answer.Assumed ?? [.. settings.Assumed]).Select(a => a.InBody())]), result?.History);
    }

    private static (ProgrammeSolution, HeatProgramme?) Hold(Question asked)
    {
        var solution = ProgrammeSolver.Hold(asked.Curve, asked.Programme, asked.Segment);
        return (solution, solution.Value <= LongestHoldHours ? asked.With(s => s with { HoldHours = solution.Value.Value }) : null);
    }

    private static (ProgrammeSolution, HeatProgramme?) Rate(Question asked)
    {
        var solution = ProgrammeSolver.Rate(asked.Curve, asked.Programme, asked.Segment);
        var usable = solution.Value >= (double)HeatingRate.Slowest && solution.Value <= (double)HeatingRate.Fastest;
        return (solution, usable ? asked.With(s => s with { RateKelvinPerHour = solution.Value }) : null);
    }

    private static (ProgrammeSolution, HeatProgramme?) Peak(Question asked)
    {
        // Below its neighbours the segment would no longer be the peak, and I no longer rise with its target alone.
        var segments = asked.Programme.Segments;
        var before = asked.Segment == 0 ? asked.Programme.StartKelvin : segments.Take(asked.Segment).Max(s => s.TargetKelvin);
        var after = segments.Skip(asked.Segment + 1).Select(s => s.TargetKelvin).DefaultIfEmpty(0).Max();
        var solution = ProgrammeSolver.Peak(asked.Curve, asked.Programme, asked.Segment, Math.Max(before, after), HottestKelvin);
        return (solution, solution.Value is { } kelvin ? asked.With(s => s with { TargetKelvin = kelvin }) : null);
    }

    /// <summary>The peak that works when the open value is put at the nearest usable one.</summary>
    private static HeatProgramme? Instead(string find, Question asked, ProgrammeSolution solution)
    {
        if (find is not ("hold" or "rate")) return null;
        var tooSlow = solution.Value < (double)HeatingRate.Slowest || solution.Why == Unsolvable.TooLittleWork;
        var usable = find == "hold"
            ? asked.With(s => s with { HoldHours = solution.Why == Unsolvable.TooMuchWork ? 0 : ModerateHoldHours })
            : asked.With(s => s with { RateKelvinPerHour = (double)(tooSlow ? HeatingRate.Slowest : HeatingRate.Fastest) });
        return Peak(asked with { Programme = usable }).Item2;
    }

    private static double? Round(double? value) => value is { } v ? Math.Round(v, 4) : null;

    private sealed record Question(BendingCurve Curve, HeatProgramme Programme, int Segment)
    {
        public double PeakCelsius => Programme.Segments[Segment].TargetKelvin - Zero;

        public HeatProgramme With(Func<HeatSegment, HeatSegment> change) => Programme.With(Segment, change(Programme.Segments[Segment]));
    }
}
