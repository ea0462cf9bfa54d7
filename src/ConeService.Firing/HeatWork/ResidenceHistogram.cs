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

    /// <summary>Counts a history, in a time that grows with its points and its bins and not with their product.</summary>
    public ResidenceHistogram(HeatHistory history)
    {
        var (low, high) = (double.PositiveInfinity, 0.0);
        foreach (var point in history.Points) (low, high) = (Math.Min(low, point.Kelvin), Math.Max(high, point.Kelvin));
        lowest = (int)Math.Floor(low);
        hours = new double[(int)Math.Floor(high) - lowest + 1];
        weighted = new double[hours.Length];
        // By how much the time that passes in each kelvin grows at a bin: of a piece only its first and last bin are touched.
        var crossing = new double[hours.Length + 1];
        var points = history.Points;
        for (var i = 1; i < points.Length; i++)
        {
            Add(points[i - 1].Kelvin, points[i].Kelvin, points[i].Hours - points[i - 1].Hours, crossing);
        }

        Spread(crossing);
    }

    /// <summary>The bins that were visited: mean temperature, K, and time, h.</summary>
    public IEnumerable<(double Kelvin, double Hours)> Bins()
    {
        for (var i = 0; i < hours.Length; i++)
        {
            if (hours[i] > 0) yield return (weighted[i] / hours[i], hours[i]);
        }
    }

    private void Add(double from, double to, double duration, double[] crossing)
    {
        var (low, high) = from < to ? (from, to) : (to, from);
        var (first, last) = ((int)Math.Floor(low) - lowest, (int)Math.Floor(high) - lowest);
        if (first == last)
        {
            Put(first, duration, 0.5 * (low + high));
            return;
        }

        var perKelvin = duration / (high - low);
        PutPart(first, low, lowest + first + 1, perKelvin);
        PutPart(last, lowest + last, high, perKelvin);
        if (last - first < 2) return;
        crossing[first + 1] += perKelvin;
        crossing[last] -= perKelvin;
    }

    // The whole kelvins that pieces went through.
    private void Spread(double[] crossing)
    {
        var perKelvin = 0.0;
        for (var bin = 0; bin < hours.Length; bin++)
        {
            perKelvin += crossing[bin];
            // What the rounding of the sum leaves where nothing passes is no time.
            if (perKelvin > 0) Put(bin, perKelvin, lowest + bin + 0.5);
        }
    }

    private void PutPart(int bin, double from, double to, double perKelvin) => Put(bin, perKelvin * (to - from), 0.5 * (from + to));

    private void Put(int bin, double duration, double kelvin)
    {
        hours[bin] += duration;
        weighted[bin] += duration * kelvin;
    }
}
