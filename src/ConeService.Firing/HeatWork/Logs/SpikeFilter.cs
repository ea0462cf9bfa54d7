namespace ConeService.Firing.HeatWork.Logs;

/// <summary>
/// Takes out readings that no kiln can make: a sample that differs from the median of the seven around it by more than
/// 8 K and more than four of their usual steps. A spike of +20 K at the top is not harmless, as the rate of bending
/// rises about twofold in 15 K.
/// </summary>
internal static class SpikeFilter
{
    private const int Half = 3;
    private const int Window = (2 * Half) + 1;
    private const double LeastKelvin = 8;
    private const double Steps = 4;

    /// <summary>Removes spikes in place; returns how many samples stay.</summary>
    public static int Remove(Span<HeatPoint> points, List<HeatWarning> warnings)
    {
        if (points.Length < Window) return points.Length;
        var spikes = new List<int>();
        for (var i = 0; i < points.Length; i++)
        {
            var start = Math.Clamp(i - Half, 0, points.Length - Window);
            if (IsSpike(points.Slice(start, Window), points[i].Kelvin) && (start == i - Half || ComesBack(points, i))) spikes.Add(i);
        }

        if (spikes.Count == 0) return points.Length;
        warnings.Add(HeatWarning.At(
            "spikes-rejected", $"{LogCleaner.Counted(spikes.Count, "reading")} jumped away from the neighbours and back; rejected, with a straight line in place: {Listed(points, spikes)}.",
            Times(points, spikes)));
        var (kept, next) = (0, 0);
        for (var i = 0; i < points.Length; i++)
        {
            if (next < spikes.Count && spikes[next] == i) next++;
            else points[kept++] = points[i];
        }

        return kept;
    }

    private static bool IsSpike(ReadOnlySpan<HeatPoint> around, double kelvin)
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
        return Math.Abs(kelvin - sorted[Half]) > Math.Max(LeastKelvin, Steps * steps[Half - 1]);
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

    private static string Listed(ReadOnlySpan<HeatPoint> points, List<int> indexes)
    {
        var words = new List<string>();
        foreach (var i in indexes.Take(5)) words.Add(FormattableString.Invariant($"{points[i].Kelvin - 273.15:0.#} °C at minute {points[i].Hours * 60:0.#}"));
        return string.Join(", ", words) + (indexes.Count > 5 ? " and others" : "");
    }
}
