using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// The peak, and the last trim of rate and hold, that bring a cone to a progress. Progress is
/// I = before + (K(T)−K(Tₛ))/b + k(T)·t + after(T): linear in 1/b and in t, steep in T. So T is found by Newton's
/// method on ln I, put on the controller's grid, and what the grid takes away is given back by whole degrees per hour
/// or whole minutes.
/// </summary>
internal sealed class PeakSolver(ControllerGrid grid, double startCelsius, double? coolingRate)
{
    private const double Near = 1e-7;

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
        var celsius = Math.Max(curve.EndPoint(Math.Max(1, steps[index].Speed)) - FitProgrammes.Zero, least + 1);
        for (var i = 0; i < 60; i++)
        {
            var progress = before + Parts(steps, index, curve, celsius).Of(steps[index]);
            var step = Math.Log(progress / goal) / curve.Slope(celsius + FitProgrammes.Zero);
            celsius = Math.Max(celsius - Math.Clamp(step, -60, 60), least);
            if (Math.Abs(step) < Near) return celsius;
        }

        return null;
    }

    /// <summary>The steps with the peak and the trim on the grid; null when there is no peak.</summary>
    public List<FitStep>? Solve(IReadOnlyList<FitStep> steps, int index, BendingCurve curve, double goal)
    {
        if (Estimate(steps, index, curve, goal) is not { } estimate) return null;
        var (before, step, nearest) = (Before(steps, index, curve), steps[index], grid.Temperature(estimate));
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
    public double Progress(IReadOnlyList<FitStep> steps, BendingCurve curve) => FitProgrammes.Of(steps, startCelsius, coolingRate).Progress(curve);

    private IEnumerable<FitStep> Trims(FitStep step, PeakParts parts, double room)
    {
        yield return step;
        var forRamp = room - (parts.BendRate * step.HoldMinutes / 60) - parts.After;
        if (step.Rate is not null && forRamp > 0 && parts.Ramp > 0)
        {
            var rate = grid.RateBelow(parts.Ramp / forRamp);
            for (var i = 0; i < 2; i++, rate += grid.Step)
            {
                if (rate >= 0.8 * step.Speed && rate <= (step.RateLimited ? 1 : 1.2) * step.Speed) yield return step with { Rate = rate };
            }
        }

        var minutes = Math.Floor((room - (parts.Ramp / step.Speed) - parts.After) / parts.BendRate * 60);
        for (var i = 0; i < 2; i++, minutes++)
        {
            if (minutes >= 0 && Math.Abs(minutes - step.HoldMinutes) <= Math.Max(5, 0.25 * step.HoldMinutes)) yield return step with { HoldMinutes = minutes };
        }
    }

    // A per cent off the goal weighs as much as ten per cent off the template's rate; a cone short of the goal is worse than one past it.
    private static double Cost(FitStep step, FitStep trimmed, double miss) =>
        (Math.Abs(miss) * (miss < -1e-9 ? 20 : 10)) + Math.Abs((trimmed.Speed / step.Speed) - 1) + (Math.Abs(trimmed.HoldMinutes - step.HoldMinutes) / Math.Max(20, step.HoldMinutes));

    private double Before(IReadOnlyList<FitStep> steps, int index, BendingCurve curve) => FitProgrammes.Of(steps.Take(index), startCelsius).Progress(curve);

    private PeakParts Parts(IReadOnlyList<FitStep> steps, int index, BendingCurve curve, double peak)
    {
        var (from, to) = (FitProgrammes.StartOf(steps, index, startCelsius) + FitProgrammes.Zero, peak + FitProgrammes.Zero);
        var after = FitProgrammes.AtPeak([.. steps.Skip(index + 1)], peak, grid);
        // At 1 K/h a ramp lasts as many hours as it has kelvins.
        return new(HeatIntegral.OfPiece(curve, from, to, Math.Abs(to - from)), curve.BendRate(to), FitProgrammes.Of(after, peak, coolingRate).Progress(curve));
    }

    /// <summary>Progress of the ramp at 1 °C/h, of an hour at the peak, and of everything after it.</summary>
    private readonly record struct PeakParts(double Ramp, double BendRate, double After)
    {
        public double Of(FitStep step) => (Ramp / step.Speed) + (BendRate * step.HoldMinutes / 60) + After;
    }
}
