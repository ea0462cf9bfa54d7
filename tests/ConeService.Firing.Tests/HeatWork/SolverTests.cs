using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;
using CsCheck;
using static ConeService.Firing.Tests.HeatWork.Firings;

namespace ConeService.Firing.Tests.HeatWork;

public class SolverTests
{
    private static readonly HeatWorkSolver Solver = new(new(Reference.Charts));

    // Source: hand arithmetic with heat-work specification section 3: b = (K(Tp)−K(Ts))/(1−I₀−K(Tp)/c−k·t).
    [Fact]
    public void The_last_rate_is_that_of_the_closed_form() => Gen.Select(
        Gen.Double[1190, 1235], Gen.Double[200, 400], Gen.Double[0, 4])
        .Sample((peak, cooling, minutes) =>
    {
        var (curve, from, to) = (Curve("6"), 1100 + Zero, peak + Zero);
        HeatProgramme programme = new(20 + Zero, [new(100, from), new(7, to, minutes / 60)], 150, Down(cooling));
        var before = curve.K(from) / 100;
        var denominator = 1 - before - (curve.K(to) / cooling) - (curve.BendRate(to) * minutes / 60);
        var solution = ProgrammeSolver.Rate(curve, programme, 1);
        if (denominator <= 0) Assert.Equal(Unsolvable.TooMuchWork, solution.Why);
        else Assert.Equal(1, solution.Value!.Value / ((curve.K(to) - curve.K(from)) / denominator), 1e-9);
    });

    [Fact]
    public void Whatever_is_solved_puts_the_cone_just_down() => Gen.Select(
        Gen.Int[0, 2], Gen.Double[1150, 1222], Gen.Double[20, 300])
        .Sample((what, peak, rate) =>
    {
        var curve = Curve("6");
        var programme = Ramp(rate, peak, 3, Down(300));
        var (solution, solved) = what switch
        {
            0 => Put(ProgrammeSolver.Hold(curve, programme, 0), (s, v) => s with { HoldHours = v }),
            1 => Put(ProgrammeSolver.Rate(curve, programme, 0), (s, v) => s with { RateKelvinPerHour = v }),
            _ => Put(ProgrammeSolver.Peak(curve, programme, 0, 300, 1770), (s, v) => s with { TargetKelvin = v }),
        };
        if (solved is null) Assert.NotNull(solution.Why);
        else Assert.Equal(1, solved.Progress(curve), 1e-7);

        (ProgrammeSolution, HeatProgramme?) Put(ProgrammeSolution found, Func<HeatSegment, double, HeatSegment> change) =>
            (found, found.Value is { } v ? programme.With(0, change(programme.Segments[0], v)) : null);
    });

    [Fact]
    public void A_cone_that_is_down_anyway_says_what_would_be_feasible()
    {
        var (answer, history) = Solver.Answer(Ask("hold", new(60, 1250)));
        Assert.False(answer.Feasible);
        Assert.Contains("already", answer.Why!.ToString(), StringComparison.Ordinal);
        // Source: the chart prints 1222 °C for cone 6 at 60 °C/h.
        Assert.Equal(1222, answer.Instead!.Celsius, 0.001);
        Assert.Equal(0, answer.Instead.HoldMinutes);
        Assert.Equal("6", answer.HeatWork!.Reached);
        Assert.NotNull(history);
    }

    [Fact]
    public void A_rate_that_no_kiln_has_is_not_an_answer()
    {
        var (answer, _) = Solver.Answer(Ask("rate", new(null, 1300)));
        Assert.False(answer.Feasible);
        Assert.Contains("600 °C/h", answer.Why!.ToString(), StringComparison.Ordinal);
        Assert.Equal(600, answer.Instead!.CelsiusPerHour);
    }

    [Fact]
    public void A_peak_may_be_left_open()
    {
        var (answer, _) = Solver.Answer(Ask("peak", new(60)));
        Assert.Equal(1222, answer.Celsius!.Value, 0.001);
        Assert.Equal(0, answer.HeatWork!.Cones.Single(c => c.Cone == "6").MarginCelsiusDifference, 0.001);
    }

    [Fact]
    public void A_question_must_say_what_it_asks_for_and_of_which_cone()
    {
        var refused = Assert.Throws<RefusedException>(() => Solver.Answer(
            new() { Units = "C", Segments = [new(60, 1222)], Find = "power", Cone = new("6", SentKind.Number) }));
        Assert.Equal(["find-unknown", "cone-as-number"], refused.Findings.Select(f => f.Code));
    }

    private static SolveRequest Ask(string find, ProgrammeSegment segment) =>
        new() { Units = "C", Segments = [segment], Find = find, Cone = SentText.Of("6") };
}
