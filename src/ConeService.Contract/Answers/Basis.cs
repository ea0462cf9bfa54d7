namespace ConeService.Contract.Answers;

/// <summary>What a number rests on.</summary>
public enum Basis
{
    /// <summary>A value that a chart prints.</summary>
    Printed,

    /// <summary>Between two rates that the chart prints for the cone.</summary>
    Interpolated,

    /// <summary>Beyond the rates that the chart prints for the cone; σ is widened.</summary>
    Extrapolated,

    /// <summary>
    /// The chart has no kinetics for the cone: the shape of the self-supporting curve of the same number was moved through
    /// the chart's printed value.
    /// </summary>
    Borrowed,
}
