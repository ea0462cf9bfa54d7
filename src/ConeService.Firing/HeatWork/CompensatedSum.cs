namespace ConeService.Firing.HeatWork;

/// <summary>A sum that carries its rounding error along (Neumaier's form of Kahan summation).</summary>
internal struct CompensatedSum
{
    private double sum;
    private double lost;

    /// <summary>The sum.</summary>
    public readonly double Value => sum + lost;

    /// <summary>Adds a term.</summary>
    public void Add(double term)
    {
        var next = sum + term;
        lost += Math.Abs(sum) >= Math.Abs(term) ? sum - next + term : term - next + sum;
        sum = next;
    }
}
