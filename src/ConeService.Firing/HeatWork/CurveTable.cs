using System.Numerics;
using ConeService.Contract.Quantities;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>
/// ln K and its slope of many cones on a grid of whole degrees Celsius. Between grid points a cubic through ln K and its
/// slope; since a curve is itself a cubic of ln K between its knots, it comes back as it is when its knots lie on the grid.
/// Each curve has its own phase of the grid for that: a borrowed one is moved by a fraction of a degree. Costs 1 MB a chart.
/// </summary>
internal sealed class CurveTable
{
    /// <summary>Coldest temperature of the grid, °C.</summary>
    public const int ColdestCelsius = -30;

    /// <summary>Hottest temperature of the grid, °C.</summary>
    public const int HottestCelsius = 1500;

    private const double Zero = Temperature.KelvinAtZero;

    // Beyond it K is no number any more.
    private const double MostLog = 690;

    // ln K below which nothing is told of a cone: less than the least progress that has a margin (HeatMargin), 1e-250.
    private const double IdleLog = -600;

    private readonly double[] logs;
    private readonly double[] slopes;
    private readonly double[] phases;

    // For each vector of curves the first degree at which one of them works.
    private readonly int[] working;
    private readonly bool aligned;

    /// <summary>Tabulates the curves.</summary>
    public CurveTable(BendingCurve[] curves)
    {
        var lanes = Vector<double>.Count;
        Width = (curves.Length + lanes - 1) / lanes * lanes;
        // One point before the grid and one behind, for the curves whose points lie between whole degrees.
        var rows = HottestCelsius - ColdestCelsius + 3;
        logs = new double[rows * Width];
        Array.Fill(logs, -MostLog);
        slopes = new double[rows * Width];
        phases = new double[Width];
        for (var i = 0; i < curves.Length; i++) phases[i] = curves[i].KnotPhase;
        aligned = phases.All(p => p == 0);
        for (var row = 0; row < rows; row++)
        {
            for (var i = 0; i < curves.Length; i++)
            {
                var kelvin = ColdestCelsius + row - 1 + phases[i] + Zero;
                logs[(row * Width) + i] = curves[i].LogK(kelvin);
                slopes[(row * Width) + i] = curves[i].Slope(kelvin);
            }
        }

        working = [.. Enumerable.Range(0, Width / lanes).Select(block => FirstWorking(block * lanes, lanes, rows))];
    }

    /// <summary>Number of curves, rounded up to whole vectors.</summary>
    public int Width { get; }

    /// <summary>K of every cone at a temperature, K/h.</summary>
    public void Works(double kelvin, double[] into)
    {
        var place = Place(kelvin);
        for (var at = 0; at < Width; at += Vector<double>.Count)
        {
            (IsIdle(place.Row, at) ? Vector<double>.Zero : Exp(At(place, at).Log)).CopyTo(into, at);
        }
    }

    /// <summary>k of every cone at a temperature, 1/h.</summary>
    public void BendRates(double kelvin, double[] into)
    {
        var place = Place(kelvin);
        for (var at = 0; at < Width; at += Vector<double>.Count)
        {
            if (IsIdle(place.Row, at))
            {
                Vector<double>.Zero.CopyTo(into, at);
                continue;
            }

            var (log, slope) = At(place, at);
            (Exp(log) * slope).CopyTo(into, at);
        }
    }

    /// <summary>Adds the work of a stay at a temperature when every curve is steeper: K′ = 60·(K/60)^a.</summary>
    /// <param name="kelvin">The temperature, K.</param>
    /// <param name="hours">The stay, h.</param>
    /// <param name="exponent">a.</param>
    /// <param name="progress">Added to, in the order of the curves.</param>
    public void AddSteeper(double kelvin, double hours, double exponent, double[] progress)
    {
        var place = Place(kelvin);
        var atRate = new Vector<double>(HeatMargin.LogRate);
        for (var at = 0; at < Width; at += Vector<double>.Count)
        {
            if (IsIdle(place.Row, at)) continue;
            var (log, slope) = At(place, at);
            var rate = Exp(((log - atRate) * exponent) + atRate) * slope * (exponent * hours);
            (new Vector<double>(progress, at) + rate).CopyTo(progress, at);
        }
    }

    // A piece reaches at most to the second point above the degree in which it begins.
    private int FirstWorking(int at, int lanes, int rows)
    {
        var row = 0;
        while (row < rows - 3 && logs.AsSpan(((row + 2) * Width) + at, lanes).IndexOfAnyInRange(IdleLog, double.MaxValue) < 0) row++;
        return row;
    }

    private bool IsIdle(int row, int at) => row < working[at / Vector<double>.Count];

    /// <summary>ln K and its slope of as many cones as a vector holds.</summary>
    private (Vector<double> Log, Vector<double> Slope) At((int Row, double Share) place, int at)
    {
        // The first point of the table lies a degree before the grid.
        var below = (place.Row * Width) + at;
        var (low, high) = (below + Width, below + (2 * Width));
        var u = new Vector<double>(place.Share);
        if (aligned) return Cubic(u, From(logs, low), From(logs, high), From(slopes, low), From(slopes, high));
        u -= From(phases, at);
        // Below the point of a curve within this degree, its piece begins in the degree before.
        var before = Vector.LessThan(u, Vector<double>.Zero);
        u += Vector.ConditionalSelect(before, Vector<double>.One, Vector<double>.Zero);
        var (log, slope) = (From(logs, low), From(slopes, low));
        return Cubic(
            u,
            Vector.ConditionalSelect(before, From(logs, below), log),
            Vector.ConditionalSelect(before, log, From(logs, high)),
            Vector.ConditionalSelect(before, From(slopes, below), slope),
            Vector.ConditionalSelect(before, slope, From(slopes, high)));
    }

    private static Vector<double> From(double[] table, int at) => new(table, at);

    private static (Vector<double> Value, Vector<double> Slope) Cubic(
        Vector<double> u, Vector<double> y0, Vector<double> y1, Vector<double> s0, Vector<double> s1)
    {
        var rise = y1 - y0;
        var square = (rise * 3) - (s0 * 2) - s1;
        var cube = s0 + s1 - (rise * 2);
        return (y0 + (u * (s0 + (u * (square + (u * cube))))), s0 + (u * ((square * 2) + (u * cube * 3))));
    }

    private static Vector<double> Exp(Vector<double> log) =>
        Vector.Exp(Vector.Max(Vector.Min(log, new Vector<double>(MostLog)), new Vector<double>(-MostLog)));

    private static (int Row, double Share) Place(double kelvin)
    {
        var x = kelvin - Zero - ColdestCelsius;
        var row = (int)x;
        return (row, x - row);
    }
}
