using Google.OrTools.Sat;

namespace ConeService.Planning.Solver;

/// <summary>A sum of variables with factors, and a number.</summary>
internal sealed class Sum
{
    private readonly List<IntVar> variables = [];
    private readonly List<long> factors = [];

    /// <summary>The number.</summary>
    public long Constant { get; private set; }

    /// <summary>True where no variable is in it.</summary>
    public bool IsConstant => variables.Count == 0;

    /// <summary>It as the solver takes it.</summary>
    public LinearExpr Expression => LinearExpr.WeightedSum(variables, factors) + Constant;

    /// <summary>Adds a variable so many times.</summary>
    public void Add(IntVar variable, long factor = 1)
    {
        if (factor == 0) return;
        variables.Add(variable);
        factors.Add(factor);
    }

    /// <summary>Adds a number.</summary>
    public void Add(long number) => Constant += number;

    /// <summary>Adds another sum so many times.</summary>
    public void Add(Sum other, long factor = 1)
    {
        for (var i = 0; i < other.variables.Count; i++) Add(other.variables[i], other.factors[i] * factor);
        Constant += other.Constant * factor;
    }
}
