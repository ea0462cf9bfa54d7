using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Takes out readings that no kiln can make: a sample that differs by more than 8 K from the median of the seven
/// around it, and by more than 8 K and two and a half of their usual steps from where they point to. A spike of +20 K
/// at the top is not harmless, as the rate of bending rises about twofold in 15 K.
/// </summary>
internal static class SpikeFilter
{
    private const int Half = 3;
    private const int Window = (2 * Half) + 1;
    private const double LeastKelvin = 8;
    private const double Steps = 2.5;

    // Spikes told one by one.
    private const int MostListed = 5;

    // At an end of the log the median of a steady ramp is three steps away.
    private const double StepsAtEnd = 6;

    /// <summary>Removes spikes in place; returns how many samples stay.</summary>
    public static int Remove(Span<HeatPoint> points, List<HeatWarning> warnings)
    {
        if (points.Length < Window) return points.Length;
        var spikes = new List<int>();
        var (ahead, lastStep) = (1, 0);
        for (var i = 0; i < points.Length; i++)
        {
            Patience.Check();
            var start = Math.Clamp(i - Half, 0, points.Length - Window);
            for (; ahead < start + Window; ahead++)
            {
                if (Math.Abs(points[ahead].Kelvin - points[ahead - 1].Kelvin) > LeastKelvin / (Window - 1)) lastStep = ahead;
            }

            // Six small steps never make the least spike.
            if (lastStep <= start) continue;
            if (IsSpike(points.Slice(start, Window), i - start) && (start == i - Half || ComesBack(points, i))) spikes.Add(i);
        }

        if (spikes.Count == 0) return points.Length;
        warnings.Add(HeatWarning.At(
            WarningCodes.SpikesRejected,
            Message.Of(
                "logs.spikes",
                ("count", spikes.Count), ("where", Listed(points, spikes)), ("more", spikes.Count > MostListed ? "yes" : "no")),
            Times(points, spikes)));
        var (kept, next) = (0, 0);
        for (var i = 0; i < points.Length; i++)
        {
            Patience.Check();
            if (next < spikes.Count && spikes[next] == i) next++;
            else points[kept++] = points[i];
        }

        return kept;
    }

    private static bool IsSpike(ReadOnlySpan<HeatPoint> around, int at)
    {
        var (low, high) = (double.PositiveInfinity, double.NegativeInfinity);
        foreach (var point in around) (low, high) = (Math.Min(low, point.Kelvin), Math.Max(high, point.Kelvin));
        if (high - low <= LeastKelvin) return false;
        Span<double> sorted = stackalloc double[Window];
        Span<double> steps = stackalloc double[Window - 1];
        for (var i = 0; i < Window; i++)
        {
            sorted[i] = around[i].Kelvin;
            if (i > 0) steps[i - 1] = Math.Abs(around[i].Kelvin - around[i - 1].Kelvin);
        }

        sorted.Sort();
        steps.Sort();
        var kelvin = around[at].Kelvin;
        // The median stands by a corner of the curve, the chords by a steady ramp; a spike fails both.
        var away = Math.Abs(kelvin - sorted[Half]);
        if (at != Half) return away > Math.Max(LeastKelvin, StepsAtEnd * steps[Half]);
        return away > LeastKelvin && Math.Abs(kelvin - Pointed(around)) > Math.Max(LeastKelvin, Steps * steps[Half]);
    }

    /// <summary>Where the chords across the middle sample point to: the median of the three.</summary>
    private static double Pointed(ReadOnlySpan<HeatPoint> around)
    {
        Span<double> chords = stackalloc double[Half];
        for (var k = 1; k <= Half; k++)
        {
            var (before, after) = (around[Half - k], around[Half + k]);
            chords[k - 1] = before.Kelvin
                + ((after.Kelvin - before.Kelvin) * (around[Half].Hours - before.Hours) / (after.Hours - before.Hours));
        }

        chords.Sort();
        return chords[Half / 2];
    }

    // Near an end of the log the window is one-sided, and a kiln that was opened looks like a spike: only a sample that
    // stands out from both its neighbours counts, or the very first or last one.
    private static bool ComesBack(ReadOnlySpan<HeatPoint> points, int i) =>
        i == 0 || i == points.Length - 1 || ((points[i].Kelvin - points[i - 1].Kelvin) * (points[i].Kelvin - points[i + 1].Kelvin) > 0);

    private static List<double> Times(ReadOnlySpan<HeatPoint> points, List<int> indexes)
    {
        var times = new List<double>(indexes.Count);
        foreach (var i in indexes) times.Add(points[i].Hours);
        return times;
    }

    private static Message[] Listed(ReadOnlySpan<HeatPoint> points, List<int> indexes)
    {
        var listed = new Message[Math.Min(indexes.Count, MostListed)];
        for (var i = 0; i < listed.Length; i++)
        {
            var point = points[indexes[i]];
            listed[i] = Message.Of("logs.spike", ("celsius", point.Kelvin - Temperature.KelvinAtZero), ("minute", point.Hours * 60));
        }

        return listed;
    }
}
