namespace ConeService.Contract.HeatWork;

/// <summary>The parts of the uncertainty of a margin that are the same for every cone, as standard deviations, K.</summary>
/// <param name="ThermocoupleCelsiusDifference">The tolerance at the peak as a rectangular distribution, a/√3.</param>
/// <param name="DriftCelsiusDifference">Drift of the thermocouple with its firings.</param>
/// <param name="ConeCelsiusDifference">Spread between cones of one number.</param>
/// <param name="GradientCelsiusDifference">Difference between the places of thermocouple and cone.</param>
public sealed record SharedUncertainty(
    double ThermocoupleCelsiusDifference, double DriftCelsiusDifference, double ConeCelsiusDifference, double GradientCelsiusDifference);
