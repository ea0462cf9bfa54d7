using ConeService.Contract.Quantities;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Kilns.Calibration;

/// <summary>A firing read from its log.</summary>
/// <param name="Id">Its name, or number.</param>
/// <param name="Setup">Kiln and load as stated or assumed.</param>
/// <param name="Programme">What the controller was told; null when not stated.</param>
/// <param name="MeterKilowattHours">What the meter counted.</param>
/// <param name="Log">The log.</param>
/// <param name="Smooth">The log, means over <see cref="SmoothHours"/>.</param>
/// <param name="EndHours">Where the kiln begins to cool by itself, h.</param>
internal sealed record LoggedFiring(
    string Id, KilnSetup Setup, KilnProgramme? Programme, double? MeterKilowattHours, HeatHistory Log, HeatHistory Smooth, double EndHours)
{
    /// <summary>What a log is averaged over, h: shorter than any hold that matters, long enough to drown the flicker of a meter.</summary>
    public const double SmoothHours = 1.0 / 12;

    // A hold ends where the temperature leaves it for good, by more than a controller and a noisy meter move about.
    private const double LeavesKelvin = 8;
    private const double SlowHours = 0.5;

    // Without its programme the power may have gone off somewhat later than the log seems to say.
    private const double SureHours = 0.5;
    private const double LeastCoolingHours = 1;

    // Below, lids are opened.
    private const double ClosedKelvin = 200 + Temperature.KelvinAtZero;
    private const double BinHours = 0.25;
    private const int MostBins = 120;
    private const double MostTimes = 1.5;
    private const double LeastMostHours = 12;

    // A week after its end a kiln is cold, whatever a log goes on with.
    private const double MostCoolingHours = 168;

    /// <summary>From here on the log is compared with the model, h: with a programme from its begin, else where the kiln surely cools by
    /// itself.</summary>
    public double FromHours { get; } = Programme is null ? EndHours + SureHours : Log.Start.Hours;

    /// <summary>Means of the log over spans of the same length, to be compared with the model, K; empty when the log shows too
    /// little.</summary>
    public double[] Bins { get; } = Compared(Log, Programme is null ? EndHours + SureHours : Log.Start.Hours, EndHours, Programme is null);

    /// <summary>True where an hour of the closed kiln's own cooling is among them.</summary>
    public bool Cools => ToHours - EndHours >= LeastCoolingHours;

    /// <summary>What of a firing must be computed for each guess, h: by its log until it is cold or ends, or by its programme where that is
    /// longer.</summary>
    public double CountedHours { get; } = Math.Max(FollowedTo(Log, EndHours) - Log.Start.Hours, Programme?.PlannedHours() ?? 0);

    /// <summary>Its cooling is followed to here, h.</summary>
    public double FollowedHours { get; } = FollowedTo(Log, EndHours);

    /// <summary>A kiln that has not ended its programme by then, h since the start, is none that made this log.</summary>
    public double MostHours => Math.Max(LeastMostHours, MostTimes * CountedHours);

    /// <summary>Until here the log is compared, h: where it ends, or is too cold for the kiln to be surely closed.</summary>
    public double ToHours { get; } = ClosedHours(Log, EndHours);

    /// <summary>The log to where the kiln begins to cool by itself, for leading a kiln along it.</summary>
    public HeatHistory Led() => new(Smooth.Points[..(Last(EndHours) + 1)].ToArray());

    /// <summary>How it goes on from there to where it is compared; null where it ends there, or is compared from there on.</summary>
    public HeatHistory? LedOn()
    {
        var (from, to) = (Last(EndHours), Last(FromHours));
        return to > from ? new(Smooth.Points[from..(to + 1)].ToArray()) : null;
    }

    private int Last(double hours)
    {
        var last = 1;
        while (last < Smooth.Points.Length - 1 && Smooth.Points[last].Hours < hours) last++;
        return last;
    }

    /// <summary>Means of a firing over the spans of <see cref="Bins"/>, K.</summary>
    /// <param name="history">The firing, in the time of the log.</param>
    public double[] BinsOf(HeatHistory history) =>
        Bins.Length == 0 ? [] : [.. Means(history, FromHours, ToHours, Bins.Length).Select(p => p.Kelvin)];

    /// <summary>Reads a log.</summary>
    public static LoggedFiring Of(string id, KilnSetup setup, KilnProgramme? programme, double? meter, HeatHistory log)
    {
        var smooth = Smoothed(log);
        return new(id, setup, programme, meter, log, smooth, smooth.Points[End(smooth, programme)].Hours);
    }

    private static double FollowedTo(HeatHistory log, double end) => Math.Min(ClosedHours(log, end), end + MostCoolingHours);

    // Where the log ends, or is too cold for the kiln to be surely closed.
    private static double ClosedHours(HeatHistory log, double end)
    {
        var points = log.Points;
        var last = points.Length - 1;
        while (last > 0 && points[last].Hours > end && points[last].Kelvin < ClosedKelvin) last--;
        return points[last].Hours;
    }

    private static double[] Compared(HeatHistory log, double from, double end, bool coolingOnly)
    {
        var to = ClosedHours(log, end);
        if (coolingOnly && to - end < LeastCoolingHours) return [];
        var count = Math.Min(MostBins, (int)((to - from) / BinHours));
        return count < 4 ? [] : [.. Means(log, from, to, count).Select(p => p.Kelvin)];
    }

    private static int End(HeatHistory log, KilnProgramme? programme)
    {
        var points = log.Points;
        var leaves = Top(log) - Math.Max(LeavesKelvin, 2 * Noise(log));
        // Where the controller still cools, the kiln cools by itself only below its last target.
        if (programme is not null)
            leaves = Math.Min(leaves, programme.Segments[^1].TargetCelsius + Temperature.KelvinAtZero - LeavesKelvin);
        var end = points.Length - 1;
        while (end > 1 && points[end].Kelvin < leaves) end--;
        return end;
    }

    // The highest mean over half an hour: a single reading may be anything.
    private static double Top(HeatHistory log)
    {
        var count = (int)(log.DurationHours / SlowHours);
        return count < 2 ? log.Peak.Kelvin : Means(log, log.Start.Hours, log.End.Hours, count).Max(p => p.Kelvin);
    }

    // By how far readings leave the line of their neighbours, as a standard deviation: √6 of it, and four in five within 1.28.
    private static double Noise(HeatHistory log)
    {
        var points = log.Points;
        if (points.Length < 10) return 0;
        var bends = new double[points.Length - 2];
        for (var i = 0; i < bends.Length; i++) bends[i] = Math.Abs(points[i].Kelvin - (2 * points[i + 1].Kelvin) + points[i + 2].Kelvin);
        Array.Sort(bends);
        return bends[bends.Length * 4 / 5] / (1.28 * Math.Sqrt(6));
    }

    private static HeatHistory Smoothed(HeatHistory raw)
    {
        var count = (int)(raw.DurationHours / SmoothHours);
        if (count < 4) return raw;
        var points = Means(raw, raw.Start.Hours, raw.Start.Hours + (count * SmoothHours), count);
        points[0] = raw.Start with { Kelvin = Math.Min(raw.Start.Kelvin, points[0].Kelvin) };
        return new(points);
    }

    // The mean of a line from moment to moment over each of so many spans, told at their middles.
    private static HeatPoint[] Means(HeatHistory log, double from, double to, int count)
    {
        var points = log.Points;
        var (bins, width) = (new HeatPoint[count], (to - from) / count);
        for (int bin = 0, i = 1; bin < count; bin++)
        {
            var (begin, end, area) = (from + (bin * width), from + ((bin + 1) * width), 0.0);
            while (i < points.Length - 1 && points[i].Hours <= begin) i++;
            for (var (k, at) = (i, begin); at < end - 1e-12; k++)
            {
                var (a, b) = (points[Math.Min(k, points.Length - 1) - 1], points[Math.Min(k, points.Length - 1)]);
                var next = k >= points.Length - 1 ? end : Math.Min(end, b.Hours);
                // Beyond its last moment a firing stays as it is.
                double At(double hours) =>
                    a.Kelvin + (Math.Clamp((hours - a.Hours) / (b.Hours - a.Hours), 0, 1) * (b.Kelvin - a.Kelvin));
                area += (next - at) * 0.5 * (At(at) + At(next));
                at = next;
            }

            bins[bin] = new(begin + (width / 2), area / width);
        }

        return bins;
    }
}
