namespace ConeService.Firing.HeatWork;

/// <summary>One segment of a programme: go to a temperature, then hold there.</summary>
/// <param name="RateKelvinPerHour">How fast, K/h, above 0 whether up or down; null means as fast as the kiln can, which the
/// programme limits.</param>
/// <param name="TargetKelvin">Where to, K.</param>
/// <param name="HoldHours">How long to stay there, h.</param>
internal sealed record HeatSegment(double? RateKelvinPerHour, double TargetKelvin, double HoldHours = 0);
