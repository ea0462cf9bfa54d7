namespace ConeService.Firing.HeatWork;

/// <summary>How one witness cone speaks about the offset δ of the meter.</summary>
internal enum EvidenceKind
{
    /// <summary>δ is about the value: the cone leans.</summary>
    About,

    /// <summary>δ is at least about the value: the cone is down.</summary>
    AtLeast,

    /// <summary>δ is at most about the value: the cone stands.</summary>
    AtMost,

    /// <summary>δ is about between two values: the cone has started.</summary>
    Between,
}

/// <summary>What one witness cone says of the offset.</summary>
/// <param name="Kind">Value, bound or span.</param>
/// <param name="Celsius">The value, the bound, or the lower end of the span, K.</param>
/// <param name="Sigma">Its σ, K.</param>
/// <param name="Highest">The upper end of a span, K.</param>
internal readonly record struct OffsetEvidence(EvidenceKind Kind, double Celsius, double Sigma, double Highest = 0)
{
    /// <summary>The value, the bound, or the middle of the span, K.</summary>
    public double Told => Kind == EvidenceKind.Between ? 0.5 * (Celsius + Highest) : Celsius;

    /// <summary>How far δ is from what the cone says, in σ; 0 where a bound is kept.</summary>
    public double Residual(double offset) => Kind switch
    {
        EvidenceKind.AtLeast => Math.Min(0, (offset - Celsius) / Sigma),
        EvidenceKind.AtMost => Math.Max(0, (offset - Celsius) / Sigma),
        EvidenceKind.Between => (offset - Math.Clamp(offset, Celsius, Highest)) / Sigma,
        _ => (offset - Celsius) / Sigma,
    };

    /// <summary>ln of the likelihood of δ, up to a constant: a normal density for a value, Φ for a bound.</summary>
    public double LogLikelihood(double offset)
    {
        var z = (offset - Celsius) / Sigma;
        return Kind switch
        {
            EvidenceKind.AtLeast => NormalDistribution.LogBelow(z),
            EvidenceKind.AtMost => NormalDistribution.LogBelow(-z),
            EvidenceKind.Between => NormalDistribution.LogBelow(z) + NormalDistribution.LogBelow((Highest - offset) / Sigma),
            _ => -0.5 * z * z,
        };
    }
}

/// <summary>
/// The offset that a set of witness cones supports. Where a cone leans: mean and standard deviation of the likelihood over ±150 K, every
/// offset being as likely beforehand. Where all of them only bound it: the least offset that they allow, as nothing speaks for more.
/// </summary>
internal static class MeterOffsetEstimate
{
    private const double Widest = 150;
    private const double Step = 0.25;

    /// <summary>The estimate, or null when the cones bound it on one side only. Cones that contradict each other widen the error.</summary>
    public static (double Offset, double Error)? From(IReadOnlyCollection<OffsetEvidence> evidence)
    {
        if (evidence.All(w => w.Kind == EvidenceKind.AtLeast) || evidence.All(w => w.Kind == EvidenceKind.AtMost)) return null;
        var logs = new double[(int)(2 * Widest / Step) + 1];
        for (var i = 0; i < logs.Length; i++) logs[i] = evidence.Sum(w => w.LogLikelihood(At(i)));
        var highest = logs.Max();
        var (mass, mean, square) = (0.0, 0.0, 0.0);
        for (var i = 0; i < logs.Length; i++)
        {
            var likelihood = Math.Exp(logs[i] - highest);
            mass += likelihood;
            mean += likelihood * At(i);
            square += likelihood * At(i) * At(i);
        }

        mean /= mass;
        var told = IsBounded(evidence) ? Least(evidence) : mean;
        var error = Math.Sqrt(Math.Max(Step * Step, (square / mass) - (mean * mean) + ((told - mean) * (told - mean))));
        return (told, error * Scatter(evidence.Sum(w => w.Residual(told) * w.Residual(told)), evidence.Count));
    }

    /// <summary>True when no cone measures the offset, and all only bound it.</summary>
    public static bool IsBounded(IReadOnlyCollection<OffsetEvidence> evidence) =>
        evidence.All(w => w.Kind is EvidenceKind.AtLeast or EvidenceKind.AtMost);

    /// <summary>The bound set by cones that are all down, or all standing: the tightest, K.</summary>
    public static double Bound(IReadOnlyList<OffsetEvidence> evidence) => evidence[0].Kind == EvidenceKind.AtLeast
        ? evidence.Max(e => e.Celsius)
        : evidence.Min(e => e.Celsius);

    /// <summary>
    /// Several estimates pooled by inverse variance. Where they scatter more than their errors allow, the error is
    /// widened by √(χ²/(n−1)).
    /// </summary>
    public static (double Offset, double Error)? Pool(IReadOnlyCollection<(double Offset, double Error)> estimates)
    {
        if (estimates.Count == 0) return null;
        var weight = estimates.Sum(e => 1 / (e.Error * e.Error));
        var mean = estimates.Sum(e => e.Offset / (e.Error * e.Error)) / weight;
        return (mean, Math.Sqrt(1 / weight) * Scatter(
            estimates.Sum(e => (e.Offset - mean) * (e.Offset - mean) / (e.Error * e.Error)), estimates.Count));
    }

    // The offset nearest to none among those that break the bounds least, in squares of their σ.
    private static double Least(IReadOnlyCollection<OffsetEvidence> evidence)
    {
        double Pull(double offset) => evidence.Sum(w => w.Residual(offset) / w.Sigma);
        if (Pull(0) == 0) return 0;
        var (low, high) = Pull(0) > 0 ? (-Widest, 0.0) : (0.0, Widest);
        // Nearest to none is the end of the span where the pull just ends.
        var down = high == 0;
        while (high - low > 0.001)
        {
            var middle = 0.5 * (low + high);
            var pull = Pull(middle);
            if (pull > 0 || (pull == 0 && !down)) high = middle;
            else low = middle;
        }

        return down ? low : high;
    }

    // What disagrees by more than its errors has errors that are too small.
    private static double Scatter(double chiSquare, int count) => count < 2 ? 1 : Math.Sqrt(Math.Max(1, chiSquare / (count - 1)));

    private static double At(int index) => (index * Step) - Widest;
}
