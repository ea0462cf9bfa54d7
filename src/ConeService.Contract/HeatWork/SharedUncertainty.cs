namespace ConeService.Contract.HeatWork;

/// <summary>The parts of the uncertainty of a margin that are the same for every cone, as standard deviations, K.</summary>
/// <param name="ThermocoupleCelsius">The tolerance at the peak as a rectangular distribution, a/√3.</param>
/// <param name="DriftCelsius">Drift of the thermocouple with its firings.</param>
/// <param name="ConeCelsius">Spread between cones of one number.</param>
/// <param name="GradientCelsius">Difference between the places of thermocouple and cone.</param>
public sealed record SharedUncertainty(double ThermocoupleCelsius, double DriftCelsius, double ConeCelsius, double GradientCelsius);
