namespace ConeService.Firing.HeatWork;

/// <summary>
/// How long a history stayed in each kelvin, with the mean temperature there. Reproduces the work of a cone to about
/// 1e-4 at a fraction of the cost, but has lost the order of time: for totals only.
/// </summary>
internal sealed class ResidenceHistogram
{
    private readonly int lowest;
    private readonly double[] hours;
    private readonly double[] weighted;

    /// <summary>Counts a history.</summary>
    public ResidenceHistogram(HeatHistory history)
    {
        var (low, high) = (double.PositiveInfinity, 0.0);
        foreach (var point in history.Points) (low, high) = (Math.Min(low, point.Kelvin), Math.Max(high, point.Kelvin));
        lowest = (int)Math.Floor(low);
        hours = new double[(int)Math.Floor(high) - lowest + 1];
        weighted = new double[hours.Length];
        var points = history.Points;
        for (var i = 1; i < points.Length; i++) Add(points[i - 1].Kelvin, points[i].Kelvin, points[i].Hours - points[i - 1].Hours);
    }

    /// <summary>The bins that were visited: mean temperature, K, and time, h.</summary>
    public IEnumerable<(double Kelvin, double Hours)> Bins()
    {
        for (var i = 0; i < hours.Length; i++)
        {
            if (hours[i] > 0) yield return (weighted[i] / hours[i], hours[i]);
        }
    }

    private void Add(double from, double to, double duration)
    {
        var (low, high) = from < to ? (from, to) : (to, from);
        var (first, last) = ((int)Math.Floor(low) - lowest, (int)Math.Floor(high) - lowest);
        if (first == last)
        {
            Put(first, duration, 0.5 * (low + high));
            return;
        }

        var perKelvin = duration / (high - low);
        for (var bin = first; bin <= last; bin++)
        {
            var (start, end) = (Math.Max(low, lowest + bin), Math.Min(high, lowest + bin + 1));
            Put(bin, perKelvin * (end - start), 0.5 * (start + end));
        }
    }

    private void Put(int bin, double duration, double kelvin)
    {
        hours[bin] += duration;
        weighted[bin] += duration * kelvin;
    }
}
