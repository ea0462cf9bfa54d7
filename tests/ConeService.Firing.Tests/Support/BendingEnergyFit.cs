using MathNet.Numerics;
using MathNet.Numerics.LinearAlgebra;

namespace ConeService.Firing.Tests.Support;

/// <summary>
/// The regularised fit of docs/cone-curves.md, written a second time from its formula with MathNet.Numerics'
/// exponential integral and linear algebra, so that the shipped energies are checked and not merely repeated.
/// Minimises Σ(T_pred−T_obs)²/(2·2.2²) + Σ(Δ ln E)²/(2·0.25²) + Σ(ln E − ln 700 kJ/mol)²/2.
/// </summary>
internal static class BendingEnergyFit
{
    private const double R = 8.314462618;
    private const double SigmaPoint = 2.2;
    private const double SigmaNeighbour = 0.25;

    /// <param name="cones">For each cone, in the order of the scale, its points (rate °C/h, K).</param>
    /// <returns>Activation energies, J/mol, in the same order.</returns>
    public static double[] Fit(IReadOnlyList<IReadOnlyList<(double Rate, double Kelvin)>> cones)
    {
        var n = cones.Count;
        // Two unknowns a cone: ln E, and the end point at 60 °C/h in place of the pre-exponential factor.
        var unknowns = Vector<double>.Build.Dense(2 * n);
        for (var i = 0; i < n; i++)
        {
            unknowns[2 * i] = Math.Log(700e3);
            unknowns[(2 * i) + 1] = cones[i].MinBy(p => Math.Abs(Math.Log(p.Rate / 60))).Kelvin;
        }

        for (var round = 0; round < 80; round++)
        {
            var normal = Matrix<double>.Build.Dense(2 * n, 2 * n);
            var right = Vector<double>.Build.Dense(2 * n);
            void Add(double residual, params (int Index, double Derivative)[] parts)
            {
                foreach (var (a, da) in parts)
                {
                    right[a] -= da * residual;
                    foreach (var (b, db) in parts) normal[a, b] += da * db;
                }
            }

            for (var i = 0; i < n; i++)
            {
                var (q, t) = (unknowns[2 * i], unknowns[(2 * i) + 1]);
                foreach (var (rate, kelvin) in cones[i])
                {
                    var byE = (Predict(q + 1e-5, t, rate) - Predict(q - 1e-5, t, rate)) / 2e-5;
                    var byT = (Predict(q, t + 1e-3, rate) - Predict(q, t - 1e-3, rate)) / 2e-3;
                    Add((Predict(q, t, rate) - kelvin) / SigmaPoint, (2 * i, byE / SigmaPoint), ((2 * i) + 1, byT / SigmaPoint));
                }

                Add(q - Math.Log(700e3), (2 * i, 1));
                if (i + 1 < n)
                    Add((unknowns[2 * (i + 1)] - q) / SigmaNeighbour, (2 * i, -1 / SigmaNeighbour), (2 * (i + 1), 1 / SigmaNeighbour));
            }

            var step = normal.Solve(right);
            for (var k = 0; k < 2 * n; k++) unknowns[k] += Math.Clamp(step[k], k % 2 == 0 ? -0.5 : -20, k % 2 == 0 ? 0.5 : 20);
            if (step.InfinityNorm() < 1e-9) break;
        }

        return [.. Enumerable.Range(0, n).Select(i => Math.Exp(unknowns[2 * i]))];
    }

    /// <summary>ln G(T;E) with MathNet's Eₙ: T·E₂(E/RT).</summary>
    public static double LogG(double kelvin, double energy) =>
        Math.Log(kelvin) + Math.Log(SpecialFunctions.ExponentialIntegral(energy / (R * kelvin), 2));

    private static double Predict(double logEnergy, double at60, double rate)
    {
        var energy = Math.Exp(logEnergy);
        var wanted = LogG(at60, energy) + Math.Log(rate / 60);
        var t = at60;
        for (var i = 0; i < 60; i++)
        {
            var x = energy / (R * t);
            var slope = Math.Exp(-x) / (t * SpecialFunctions.ExponentialIntegral(x, 2));
            var step = Math.Clamp((wanted - LogG(t, energy)) / slope, -100, 100);
            t += step;
            if (Math.Abs(step) < 1e-11) break;
        }

        return t;
    }
}
