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

    // Share of a cone's work that may be left out, and how far below its peak a history is taken to have worked.
    private const double Untold = 1e-11;
    private const double NearPeakKelvin = 5;
    private const int FloorStep = 8;

    // Up to here eight terms of the series of e^d are right to 3e-12.
    private const double MostHalf = 0.2;

    private readonly double[] logs;
    private readonly double[] works;
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

        works = [.. logs.Select(l => Math.Exp(Math.Min(l, MostLog)))];
        working = [.. Enumerable.Range(0, Width / lanes).Select(block => FirstWorking(block * lanes, lanes, rows))];
    }

    /// <summary>Number of curves, rounded up to whole vectors.</summary>
    public int Width { get; }

    /// <summary>The whole degree in which a temperature lies, as a row of the grid.</summary>
    public static int Row(double kelvin) => Place(kelvin).Row;

    /// <summary>The degrees below which a history adds less than 1e-11 of what each cone has at its end, or when it goes down.</summary>
    public CurveFloor Floor(HeatHistory history)
    {
        var near = NearPeak(history);
        var rows = new int[working.Length];
        var works = new double[Width];
        for (var block = 0; block < rows.Length; block++)
        {
            rows[block] = Math.Max(working[block], FirstTelling(block * Vector<double>.Count, near));
            var at = block * Vector<double>.Count;
            if (rows[block] > working[block]) Exp(At((rows[block], 0), at).Log).CopyTo(works, at);
        }

        return new(rows, works);
    }

    /// <summary>K of every cone at a temperature, K/h; below the floor as at the floor, so that nothing is added there.</summary>
    public void Works(double kelvin, CurveFloor floor, double[] into)
    {
        var place = Place(kelvin);
        for (var at = 0; at < Width; at += Vector<double>.Count)
        {
            (floor.IsBelow(place.Row, at) ? From(floor.Works, at) : Work(place, at)).CopyTo(into, at);
        }
    }

    /// <summary>k of every cone at a temperature, 1/h; none below the floor.</summary>
    public void BendRates(double kelvin, CurveFloor floor, double[] into)
    {
        var place = Place(kelvin);
        for (var at = 0; at < Width; at += Vector<double>.Count)
        {
            if (floor.IsBelow(place.Row, at))
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

    // A history and how long it stayed within a few kelvin of its peak, whose work bounds what a cone has at the end from below.
    private static (int Row, double LogHours, double LogSpare) NearPeak(HeatHistory history)
    {
        var points = history.Points;
        var peak = 0.0;
        foreach (var point in points) peak = Math.Max(peak, point.Kelvin);
        // The grid point at or below, so that k there is no more than it was all that time.
        var level = Math.Floor(peak - Zero - NearPeakKelvin) + Zero;
        var hours = 0.0;
        for (var i = 1; i < points.Length; i++)
        {
            var (low, high) = (Math.Min(points[i - 1].Kelvin, points[i].Kelvin), Math.Max(points[i - 1].Kelvin, points[i].Kelvin));
            if (high <= level) continue;
            var share = low >= level ? 1 : (high - level) / (high - low);
            hours += share * (points[i].Hours - points[i - 1].Hours);
        }

        var total = points.Length == 0 ? 0 : points[^1].Hours - points[0].Hours;
        return (Place(level).Row, Math.Log(hours), Math.Log(total) - Math.Log(Untold));
    }

    // The last degree from the peak down at which all cones of a vector work so little that the whole time there would add nothing.
    private int FirstTelling(int at, (int Row, double LogHours, double LogSpare) near)
    {
        var row = near.Row;
        if (!double.IsFinite(near.LogHours)) return 0;
        // When a cone goes down is told as well: there its progress is 1, however far it goes afterwards.
        double Most(int lane) => Math.Min(LogRate(near.Row, lane) + near.LogHours, 0) - near.LogSpare;
        while (row > 0)
        {
            // What a piece between two grid points reaches is read at its upper end and one more for the phase.
            var idle = true;
            for (var lane = at; lane < at + Vector<double>.Count && idle; lane++) idle = LogRate(row + 2, lane) <= Most(lane);
            if (idle) return row;
            row -= FloorStep;
        }

        return 0;
    }

    // ln k; a lane without a cone has a slope of zero and is always idle.
    private double LogRate(int row, int lane) => logs[(row * Width) + lane] + Math.Log(slopes[(row * Width) + lane]);

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

    // K is K of the grid point below times e^d with a small d, for which a short series does; only the steepest curves need more.
    private Vector<double> Work((int Row, double Share) place, int at)
    {
        var log = At(place, at).Log;
        var from = (place.Row * Width) + at + Width;
        var half = (log - From(logs, from)) * 0.5;
        if (Vector.GreaterThanAny(Vector.Abs(half), new Vector<double>(MostHalf))) return Exp(log);
        var series = new Vector<double>(1.0 / 40320);
        series = Vector.FusedMultiplyAdd(series, half, new Vector<double>(1.0 / 5040));
        series = Vector.FusedMultiplyAdd(series, half, new Vector<double>(1.0 / 720));
        series = Vector.FusedMultiplyAdd(series, half, new Vector<double>(1.0 / 120));
        series = Vector.FusedMultiplyAdd(series, half, new Vector<double>(1.0 / 24));
        series = Vector.FusedMultiplyAdd(series, half, new Vector<double>(1.0 / 6));
        series = Vector.FusedMultiplyAdd(series, half, new Vector<double>(0.5));
        series = Vector.FusedMultiplyAdd(series, half, Vector<double>.One);
        series = Vector.FusedMultiplyAdd(series, half, Vector<double>.One);
        return From(works, from) * series * series;
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
