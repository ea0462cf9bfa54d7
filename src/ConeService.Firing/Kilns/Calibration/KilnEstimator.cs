using ConeService.Contract.Kilns;
using ConeService.Contract.Requests;
using MathNet.Numerics.LinearAlgebra;
using MathNet.Numerics.Optimization;

namespace ConeService.Firing.Kilns.Calibration;

/// <summary>A kiln as its firings show it.</summary>
/// <param name="Guess">The estimate; a number that is not told stands as it was.</param>
/// <param name="Errors">Standard errors: of ln wall, of the leak, of ln power; NaN for what is not told.</param>
/// <param name="WallTold">True when the firings tell the wall.</param>
/// <param name="LeakTold">True when they tell the leak.</param>
/// <param name="PowerTold">True when they tell the power.</param>
/// <param name="Fired">Each firing by the estimated kiln.</param>
/// <param name="CutShort">True where the search was ended before it was done.</param>
/// <param name="Powers">Power by each firing alone, over what was stated, with its error in ln; null where it shows none.</param>
internal sealed record EstimatedKiln(
    KilnGuess Guess, double[] Errors, bool WallTold, bool LeakTold, bool PowerTold, IReadOnlyList<SimulatedFiring> Fired,
    bool CutShort, IReadOnlyList<(double Factor, double Error)?> Powers);

/// <summary>
/// Estimates wall, leak and power by least squares: the cooling of the closed kiln, what the meter counted, and how the kiln climbs when
/// it can't follow its programme, against the model. Levenberg and Marquardt's rule, by MathNet.Numerics.
/// </summary>
internal sealed class KilnEstimator
{
    /// <summary>The search ends when it has computed so many steps; a kiln that is like its model is found in half as many.</summary>
    public const int MostSteps = 1_600_000;

    // What a bin of a log, and a meter, are believed to; how far the whole lies from the model widens the errors.
    private const double SigmaKelvin = 5;
    private const double SigmaMeter = 0.02;
    private const double LeastMeter = 0.2;

    // A number is told when a change by a fifth would be seen.
    private const double Fifth = 0.2;
    private const double Seen = 3;
    private const double MostWallError = 0.35;
    private const double MostLeakError = 0.5;
    // Of ln wall, ln leak and ln power: wide, as the model moves in whole steps of time and a slope over less would be that of its stairs;
    // of power less wide, as a kiln that is a little weaker may stall.
    private static readonly double[] Differences = [0.05, 0.1, 0.02];

    // The logarithm of a leak, of which there may be none.
    private const double LeastLeak = 0.1;
    private const double LeastPower = 0.3;
    private const double MostPower = 3;
    private const int MostIterations = 10;
    private const int MostRuns = 2;
    private const double Damping = 1e-6;
    private const double Settled = 0.02;

    private static readonly Bounds Walls = Bounds.Of<KilnWall>(nameof(KilnWall.ThicknessMillimetres));
    private static readonly Bounds Leaks = Bounds.Of<Kiln>(nameof(Kiln.LeakFactor));

    private readonly KilnSimulation simulation;
    private readonly IReadOnlyList<LoggedFiring> firings;
    private readonly CancellationToken cancel;
    private readonly Vector<double> seen, weights;

    // The best of a search so far, with how far it is from what was seen; null outside of one.
    private (Vector<double> Kiln, double Miss)? best;
    private bool cutShort;

    // An estimate comes back to the same kiln: at the end of each step of the search, for its errors, and for the answer.
    private readonly Dictionary<(LoggedFiring Firing, KilnGuess Guess), SimulatedFiring> known = [];

    /// <summary>Takes the firings.</summary>
    public KilnEstimator(KilnSimulation simulation, IReadOnlyList<LoggedFiring> firings, CancellationToken cancel)
    {
        (this.simulation, this.firings, this.cancel) = (simulation, firings, cancel);
        seen = Vector<double>.Build.DenseOfEnumerable(firings.SelectMany(f => f.Bins.Concat(Meter(f))));
        weights = Vector<double>.Build.DenseOfEnumerable(firings.SelectMany(
            f => Enumerable.Repeat(Weight(SigmaKelvin), f.Bins.Length)
                .Concat(Meter(f).Select(m => Weight(Math.Max(LeastMeter, SigmaMeter * m))))));
    }

    /// <summary>Estimates.</summary>
    public EstimatedKiln Estimate()
    {
        var setup = firings[0].Setup;
        var begin = Vector<double>.Build.Dense([Math.Log(setup.WallMillimetres), Math.Log(setup.LeakFactor + LeastLeak), 0]);
        if (seen.Count == 0) return Told(begin, [false, false, false]);
        bool[] told = [true, true, ShowsPower(begin)];
        if (!firings.Any(f => f.Cools || f.MeterKilowattHours is not null)) told[0] = told[1] = false;
        var found = Fit(begin, told);
        var errors = Errors(found, told);
        if (cutShort) return Told(found, told);
        // Wall and leak both let heat out: where only their sum is seen, the wall is left as stated.
        if (told[0] && (!(errors[0] <= MostWallError) || !(errors[1] <= Math.Max(MostLeakError, MostLeakError * Guess(found).LeakFactor))))
        {
            told[0] = false;
            found = Fit(begin, told);
        }

        if (cutShort) return Told(found, told);
        // Whether power is seen depends on what the kiln loses.
        if (!told[2] && ShowsPower(found))
        {
            told[2] = true;
            found = Fit(found, told);
        }

        return Told(found, told);
    }

    private static double Weight(double sigma) => 1 / (sigma * sigma);

    private static IEnumerable<double> Meter(LoggedFiring firing) =>
        firing.MeterKilowattHours is { } meter ? [meter] : [];

    private static KilnGuess Guess(Vector<double> p) => new(
        Math.Clamp(Math.Exp(p[0]), Walls.Low, Walls.High), Math.Clamp(Math.Exp(p[1]) - LeastLeak, Leaks.Low, Leaks.High),
        Math.Clamp(Math.Exp(p[2]), LeastPower, MostPower));

    private Vector<double> Model(Vector<double> p)
    {
        var values = new List<double>(seen.Count);
        foreach (var firing in firings) values.AddRange(Values(firing, Fire(firing, p)));
        var model = Vector<double>.Build.DenseOfEnumerable(values);
        if (best is not { } found) return model;
        var miss = (seen - model).MapIndexed((row, value) => value * value * weights[row]).Sum();
        if (miss < found.Miss) best = (p.Clone(), miss);
        return model;
    }

    private SimulatedFiring Fire(LoggedFiring firing, Vector<double> p)
    {
        cancel.ThrowIfCancellationRequested();
        if (best is not null && simulation.Steps > MostSteps) throw new SearchEndedException();
        var key = (firing, Guess(p));
        if (!known.TryGetValue(key, out var fired)) known[key] = fired = simulation.Fire(firing, key.Item2);
        return fired;
    }

    private static IEnumerable<double> Values(LoggedFiring firing, SimulatedFiring fired) =>
        fired.Bins.Concat(firing.MeterKilowattHours is null ? [] : [fired.KilowattHours]);

    private Matrix<double> Slopes(Vector<double> p, bool[] told)
    {
        var slopes = Matrix<double>.Build.Dense(seen.Count, 3);
        for (var i = 0; i < 3; i++)
        {
            if (!told[i]) continue;
            var (less, more) = (p.Clone(), p.Clone());
            less[i] -= Differences[i];
            more[i] += Differences[i];
            slopes.SetColumn(i, (Model(more) - Model(less)) / (2 * Differences[i]));
        }

        return slopes;
    }

    private Vector<double> Fit(Vector<double> begin, bool[] told)
    {
        if (!told.Contains(true)) return begin;
        var objective = ObjectiveFunction.NonlinearModel(
            (p, _) => Model(p), (p, _) => Slopes(p, told), Vector<double>.Build.Dense(seen.Count, i => i), seen, weights);
        // Little damping: wall and leak lie in a long valley, along which a damped step creeps.
        var minimizer = new LevenbergMarquardtMinimizer(
            initialMu: Damping, gradientTolerance: 1e-9, stepTolerance: 1e-3, functionTolerance: 1e-9, maximumIterations: MostIterations);
        // Where a stair of the model stops it early, it is begun again from there.
        var found = begin;
        for (var run = 0; run < MostRuns; run++)
        {
            var before = found;
            best = (before, double.PositiveInfinity);
            try
            {
                found = minimizer.FindMinimum(objective, before, null, null, null, [.. told.Select(t => !t)]).MinimizingPoint;
            }
            catch (SearchEndedException)
            {
                (cutShort, found) = (true, best.Value.Kiln);
                return found;
            }
            finally
            {
                best = null;
            }

            if (!found.ForAll(double.IsFinite)) return before;
            if ((found - before).InfinityNorm() < Settled) break;
        }

        return found;
    }

    // Standard errors by the slopes at the estimate and the scatter about it; NaN for what is not told.
    private double[] Errors(Vector<double> p, bool[] told)
    {
        var free = Enumerable.Range(0, 3).Where(i => told[i]).ToList();
        double[] errors = [double.NaN, double.NaN, double.NaN];
        if (free.Count == 0 || seen.Count <= free.Count) return errors;
        var slopes = Slopes(p, told);
        var jacobian = Matrix<double>.Build.DenseOfColumnVectors(free.Select(slopes.Column));
        var weighted = jacobian.MapIndexed((row, _, value) => value * Math.Sqrt(weights[row]));
        var residual = (seen - Model(p)).MapIndexed((row, value) => value * Math.Sqrt(weights[row]));
        var scatter = residual.DotProduct(residual) / (seen.Count - free.Count);
        var covariance = weighted.TransposeThisAndMultiply(weighted).PseudoInverse() * scatter;
        for (var i = 0; i < free.Count; i++) errors[free[i]] = Math.Sqrt(Math.Max(0, covariance[i, i]));
        errors[1] *= Math.Exp(p[1]);
        return errors;
    }

    private bool ShowsPower(Vector<double> p)
    {
        if (firings.All(f => f.Programme is null)) return false;
        var slope = Slopes(p, [false, false, true]).Column(2);
        return Math.Sqrt((slope * Fifth).MapIndexed((row, value) => value * value * weights[row]).Sum()) > Seen;
    }

    private EstimatedKiln Told(Vector<double> p, bool[] told)
    {
        var fired = firings.Select(f => Fire(f, p)).ToList();
        var more = p.Clone();
        more[2] += Differences[2];
        var errors = Errors(p, told);
        bool Sure(int i, double most) => told[i] && errors[i] <= most;
        told = [Sure(0, MostWallError), Sure(1, Math.Max(MostLeakError, MostLeakError * Guess(p).LeakFactor)), Sure(2, MostWallError)];
        List<(double, double)?> powers =
            [.. firings.Select((f, i) => told[2] && f.Programme is not null ? Alone(f, fired[i], Fire(f, more), p[2]) : null)];
        return new(Guess(p), errors, told[0], told[1], told[2], fired, cutShort, powers);
    }

    // One step of Gauss and Newton's rule from the power of all to that of one firing.
    private static (double Factor, double Error)? Alone(LoggedFiring firing, SimulatedFiring fired, SimulatedFiring more, double power)
    {
        var (moves, square, rest, count) = (0.0, 0.0, 0.0, fired.Bins.Length);
        for (var i = 0; i < count; i++)
        {
            var slope = (more.Bins[i] - fired.Bins[i]) / Differences[2];
            var miss = firing.Bins[i] - fired.Bins[i];
            moves += slope * miss;
            square += slope * slope;
            rest += miss * miss;
        }

        if (Math.Sqrt(square) * Fifth < Seen * SigmaKelvin) return null;
        var step = Math.Clamp(moves / square, -0.5, 0.5);
        return (Math.Exp(power + step), Math.Sqrt(Math.Max(1, (rest - (moves * step)) / Math.Max(1, count - 1)) / square));
    }

    /// <summary>The search has had its steps.</summary>
    private sealed class SearchEndedException : Exception;
}
