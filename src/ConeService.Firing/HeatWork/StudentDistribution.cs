namespace ConeService.Firing.HeatWork;

/// <summary>Student's t distribution with a whole number of degrees of freedom.</summary>
internal static class StudentDistribution
{
    /// <summary>The chance of a value at least as far from 0 on either side: Abramowitz and Stegun (1964), 26.7.3 and 26.7.4.</summary>
    /// <param name="t">The value.</param>
    /// <param name="freedom">Degrees of freedom, at least 1.</param>
    public static double Beyond(double t, int freedom)
    {
        var angle = Math.Atan(Math.Abs(t) / Math.Sqrt(freedom));
        var (sine, cosine) = (Math.Sin(angle), Math.Cos(angle));
        var odd = freedom % 2 == 1;
        var (term, sum) = (odd ? cosine : 1.0, 0.0);
        for (var power = odd ? 1 : 0; power <= freedom - 2; power += 2)
        {
            sum += term;
            term *= cosine * cosine * (power + 1) / (power + 2);
        }

        return Math.Clamp(1 - (odd ? 2 / Math.PI * (angle + (sine * sum)) : sine * sum), 0, 1);
    }
}
