using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Quantities;
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
        var findings = new List<Finding>();
        if (!Finds.Contains(request.Find)) findings.Add(new("find-unknown", "/find", request.Find, "The request must say which value it asks for.", [.. Finds]));
        if (request.Cone.IsAbsent) findings.Add(new("cone-unreadable", "/cone", null, "The request names no cone.", ["\"6\"", "\"04\""]));
        Cone cone = default;
        if (!request.Cone.IsAbsent && !ConeInput.TryRead(calculator.Charts.Scale, request.Cone, "/cone", out cone, out var wrong)) findings.Add(wrong!);
        var settings = HeatSettings.Read(calculator.Charts, request, "", findings);
        if (findings.Count > 0) throw new RefusedException(findings);
        var programme = FiringInput.ReadProgramme(request, "", calculator.Defaults, settings!.Assumed, request.Find);
        var found = settings.Chart.Find(cone) ?? throw new RefusedException(new Finding("cone-not-on-chart", "/cone", cone.ToString(), $"Chart {settings.Chart.Id} does not print cone {cone}.", ["a cone of the chart"]));
        // A peak left open stands last, and the hottest segment is the one that is asked about.
        var segment = request.Find == "peak" && request.Segments![^1]?.Target is null ? programme.Segments.Count - 1 : programme.PeakSegment;
        var rate = programme.Segments[segment].RateKelvinPerHour ?? programme.FullSpeedKelvinPerHour;
        var curve = found.Curve(new(Math.Clamp((decimal)rate, HeatingRate.Slowest, HeatingRate.Fastest)))
            ?? throw new RefusedException(new Finding("rate-not-computable", "/cone", cone.ToString(), $"Chart {settings.Chart.Id} has no kinetics for cone {cone}, and none can be borrowed.", ["another cone", ConeCharts.DefaultChart]));
        return Solve(request.Find!, new(curve, programme, segment), found.Cone, settings);
    }

    private (SolveAnswer Answer, HeatHistory? History) Solve(string find, Question asked, Cone cone, HeatSettings settings)
    {
        var (solution, solved) = find switch { "hold" => Hold(asked), "rate" => Rate(asked), _ => Peak(asked, 0) };
        var (instead, why) = solved is not null ? (null, null) : (Instead(find, asked, solution), Why(find, asked, solution, cone));
        var shown = solved ?? instead;
        var result = shown is null ? null : calculator.Answer(shown.ToHistory(), null, [], settings);
        var value = solved is null ? null : solution.Value;
        return (new(
            calculator.Charts.Dataset.VersionId, cone.ToString(), settings.Chart.Id, find, solved is not null, asked.Segment,
            find == "peak" ? Round(value - Zero) : null, find == "peak" ? Round(((value - Zero) * 1.8) + 32) : null,
            find == "hold" ? Round(value * 60) : null,
            find == "rate" ? Round(value) : null, find == "rate" ? Round(value * 1.8) : null,
            Math.Round(solution.OtherProgress, 6), why, instead is null ? null : Describe(instead, asked.Segment, cone), result?.Answer, Notes(find, asked, cone)), result?.History);
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

    private static (ProgrammeSolution, HeatProgramme?) Peak(Question asked, double lowest)
    {
        // Below its neighbours the segment would no longer be the peak, and I no longer rise with its target alone.
        var from = asked.Segment == 0 ? asked.Programme.StartKelvin : asked.Programme.Segments.Take(asked.Segment).Max(s => s.TargetKelvin);
        var after = asked.Programme.Segments.Skip(asked.Segment + 1).Select(s => s.TargetKelvin).DefaultIfEmpty(0).Max();
        var solution = ProgrammeSolver.Peak(asked.Curve, asked.Programme, asked.Segment, Math.Max(lowest, Math.Max(from, after)), HottestKelvin);
        return (solution, solution.Value is { } kelvin ? asked.With(s => s with { TargetKelvin = kelvin }) : null);
    }

    /// <summary>The peak that works when the open value is put at the nearest usable one.</summary>
    private static HeatProgramme? Instead(string find, Question asked, ProgrammeSolution solution) => find switch
    {
        "hold" => Peak(asked with { Programme = asked.With(s => s with { HoldHours = solution.Why == Unsolvable.TooMuchWork ? 0 : ModerateHoldHours }) }, 0).Item2,
        "rate" => Peak(asked with { Programme = asked.With(s => s with { RateKelvinPerHour = (double)(solution.Value < (double)HeatingRate.Slowest || solution.Why == Unsolvable.TooLittleWork ? HeatingRate.Slowest : HeatingRate.Fastest) }) }, 0).Item2,
        _ => null,
    };

    private static string Why(string find, Question asked, ProgrammeSolution solution, Cone cone)
    {
        var peak = asked.Programme.Segments[asked.Segment].TargetKelvin - Zero;
        return (find, solution) switch
        {
            ("hold", { Why: Unsolvable.TooMuchWork }) => FormattableString.Invariant($"Without any hold the programme already does {solution.OtherProgress:0.###} of the work of cone {cone}: it is past it."),
            ("hold", { Value: { } hours }) => FormattableString.Invariant($"At {peak:0} °C cone {cone} would need {hours:0.#} hours; a prediction that long means nothing."),
            ("hold", _) => FormattableString.Invariant($"At {peak:0} °C cone {cone} does not bend."),
            ("rate", { Why: Unsolvable.TooMuchWork }) => FormattableString.Invariant($"However fast the segment, the rest of the programme does {solution.OtherProgress:0.###} of the work of cone {cone}."),
            ("rate", { Value: { } rate }) => FormattableString.Invariant($"It would take {rate:0.##} °C/h; curves are good from 5 to 600 °C/h."),
            ("rate", _) => "The hottest segment does not climb, so its rate changes nothing.",
            ("peak", { Why: Unsolvable.TooMuchWork }) => FormattableString.Invariant($"The other segments and the cooling already do {solution.OtherProgress:0.###} of the work of cone {cone}."),
            _ => FormattableString.Invariant($"Even 1500 °C does not put cone {cone} down so fast."),
        };
    }

    private static SolveInstead Describe(HeatProgramme programme, int index, Cone cone)
    {
        var segment = programme.Segments[index];
        var celsius = segment.TargetKelvin - Zero;
        return new(
            FormattableString.Invariant($"A peak of {celsius:0.#} °C ({(celsius * 1.8) + 32:0.#} °F){(segment.RateKelvinPerHour is { } r ? FormattableString.Invariant($", reached at {r:0.#} °C/h") : "")} with a hold of {segment.HoldHours * 60:0} minutes puts cone {cone} just down."),
            Round(celsius)!.Value, Round((celsius * 1.8) + 32)!.Value, Round(segment.RateKelvinPerHour), Round(segment.HoldHours * 60)!.Value);
    }

    private static List<string> Notes(string find, Question asked, Cone cone)
    {
        List<string> notes = ["Just down means a progress of 1: half of all real cones would not be quite down. See probabilityDown and sigmaCelsius in heatWork."];
        if (find != "hold") return notes;
        var kelvin = asked.Curve.EndPoint(ConeReader.MarginRate);
        notes.Add(FormattableString.Invariant($"The rule of the trade, one to two hours of soak for the next cone, is coarse. At its own end point after 60 °C/h ({kelvin - Zero:0} °C) cone {cone} bends from nothing in {60 / asked.Curve.BendRate(kelvin):0} minutes of hold."));
        return notes;
    }

    private static double? Round(double? value) => value is { } v ? Math.Round(v, 4) : null;

    private sealed record Question(BendingCurve Curve, HeatProgramme Programme, int Segment)
    {
        public HeatProgramme With(Func<HeatSegment, HeatSegment> change) => Programme.With(Segment, change(Programme.Segments[Segment]));
    }
}
