
namespace ConeService.Firing.HeatWork;

/// <summary>A moment of a firing. Between two moments the temperature runs straight.</summary>
/// <param name="Hours">Time since the start, h.</param>
/// <param name="Kelvin">Temperature, K.</param>
internal readonly record struct HeatPoint(double Hours, double Kelvin);
