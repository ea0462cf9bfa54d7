using ConeService.Contract.Quantities;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// The peak, and the last trim of rate and hold, that bring a cone to a progress. Progress is
/// I = before + (K(T)−K(Tₛ))/b + k(T)·t + after(T): linear in 1/b and in t, steep in T. So T is found by Newton's
/// method on ln I, put on the controller's grid, and what the grid takes away is given back by steps of rate
/// or hold.
/// </summary>
internal sealed class PeakSolver(ControllerGrid grid, double startCelsius, double? coolingRate)
{
    private const double Near = 1e-7;
    private const double Hottest = 1480;

    /// <summary>The peak, °C, off the grid; null when the steps before it put the cone down already, or nothing does.</summary>
    /// <param name="steps">The steps.</param>
    /// <param name="index">The step whose target is sought.</param>
    /// <param name="curve">The cone.</param>
    /// <param name="goal">The progress wanted, at most 1.</param>
    public double? Estimate(IReadOnlyList<FitStep> steps, int index, BendingCurve curve, double goal)
    {
        var before = Before(steps, index, curve);
        if (before >= goal) return null;
        var least = FitProgrammes.StartOf(steps, index, startCelsius);
        var (low, high) = (least, Hottest);
        var celsius = Math.Clamp(curve.EndPoint(Math.Max(1, steps[index].Speed)) - Temperature.KelvinAtZero, low + 1, high - 1);
        for (var i = 0; i < 80 && high - low > Near; i++)
        {
            Patience.Check();
            var progress = before + Parts(steps, index, curve, celsius).Of(steps[index]);
            if (progress > goal) high = celsius;
            else low = celsius;
            // The slope of the curve has kinks, so that Newton's step alone may go round in circles.
            var step = Math.Log(progress / goal) / curve.Slope(celsius + Temperature.KelvinAtZero);
            if (Math.Abs(step) < Near) return celsius;
            var next = celsius - step;
            celsius = next > low && next < high && i < 20 ? next : 0.5 * (low + high);
        }

        return high < Hottest ? celsius : null;
    }

    /// <summary>The steps with the peak and the trim on the grid; null when there is no peak.</summary>
    public List<FitStep>? Solve(IReadOnlyList<FitStep> steps, int index, BendingCurve curve, double goal)
    {
        if (Estimate(steps, index, curve, goal) is not { } estimate) return null;
        var (before, step, nearest) = (Before(steps, index, curve), steps[index], grid.Peak(estimate));
        var (best, bestCost, bestPeak) = (step, double.PositiveInfinity, nearest);
        var least = FitProgrammes.StartOf(steps, index, startCelsius);
        for (var away = -1; away <= 1; away++)
        {
            var peak = nearest + (away * grid.Step);
            if (peak < least) continue;
            var parts = Parts(steps, index, curve, peak);
            foreach (var trimmed in Trims(step, parts, goal - before))
            {
                var cost = Cost(step, trimmed, before + parts.Of(trimmed) - goal);
                if (cost < bestCost) (best, bestCost, bestPeak) = (trimmed, cost, peak);
            }
        }

        return FitProgrammes.AtPeak([.. steps.Select((s, i) => i == index ? best : s)], bestPeak, grid);
    }

    /// <summary>Progress of a cone through the whole programme.</summary>
    public double Progress(IReadOnlyList<FitStep> steps, BendingCurve curve) =>
        FitProgrammes.Of(steps, startCelsius, coolingRate).Progress(curve);

    // The hold as it is and the two nearest on the grid; with each, the rate as it is and the two nearest.
    private IEnumerable<FitStep> Trims(FitStep step, PeakParts parts, double room)
    {
        const double grain = ControllerGrid.HoldMinutes;
        var minutes = Math.Floor((room - (parts.Ramp / step.Speed) - parts.After) / parts.BendRate * 60 / grain) * grain;
        var most = Math.Max(5, 0.25 * step.HoldMinutes);
        var typed = new[] { minutes, minutes + grain }.Where(m => m >= 0 && Math.Abs(m - step.HoldMinutes) <= most);
        double[] holds = [step.HoldMinutes, .. typed];
        foreach (var hold in holds)
        {
            yield return step with { HoldMinutes = hold };
            var forRamp = room - (parts.BendRate * hold / 60) - parts.After;
            if (step.Rate is null || forRamp <= 0 || parts.Ramp <= 0) continue;
            var rate = grid.RateBelow(parts.Ramp / forRamp);
            for (var i = 0; i < 2; i++, rate += grid.RateStep)
            {
                if (rate >= 0.8 * step.Speed && rate <= (step.RateLimited ? 1 : 1.2) * step.Speed)
                    yield return step with { Rate = rate, HoldMinutes = hold };
            }
        }
    }

    // A per cent off the goal weighs as much as ten per cent off the template's rate; a cone that is not down is no solution while there is
    // another.
    private const double ShortOfGoal = 0.5;

    // A fifth of a chart's σ, about half a degree, is about this much progress: nothing is trimmed for less.
    private const double NearEnough = 0.02;

    private static double Cost(FitStep step, FitStep trimmed, double miss) =>
        (Math.Max(0, Math.Abs(miss) - NearEnough) * 10) + (miss < -1e-9 ? ShortOfGoal : 0) + Math.Abs((trimmed.Speed / step.Speed) - 1)
        + (Math.Abs(trimmed.HoldMinutes - step.HoldMinutes) / Math.Max(20, step.HoldMinutes));

    private double Before(IReadOnlyList<FitStep> steps, int index, BendingCurve curve) =>
        FitProgrammes.Of(steps.Take(index), startCelsius).Progress(curve);

    private PeakParts Parts(IReadOnlyList<FitStep> steps, int index, BendingCurve curve, double peak)
    {
        var (from, to) = (FitProgrammes.StartOf(steps, index, startCelsius) + Temperature.KelvinAtZero, peak + Temperature.KelvinAtZero);
        var after = FitProgrammes.AtPeak([.. steps.Skip(index + 1)], peak, grid);
        // At 1 K/h a ramp lasts as many hours as it has kelvins.
        var ramp = HeatIntegral.OfPiece(curve, from, to, Math.Abs(to - from));
        return new(ramp, curve.BendRate(to), FitProgrammes.Of(after, peak, coolingRate).Progress(curve));
    }

    /// <summary>Progress of the ramp at 1 °C/h, of an hour at the peak, and of everything after it.</summary>
    private readonly record struct PeakParts(double Ramp, double BendRate, double After)
    {
        public double Of(FitStep step) => (Ramp / step.Speed) + (BendRate * step.HoldMinutes / 60) + After;
    }
}
