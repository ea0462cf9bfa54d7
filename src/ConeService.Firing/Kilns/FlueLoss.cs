
namespace ConeService.Firing.Kilns;

/// <summary>
/// Available heat: the share of natural gas's net heating value that stays when the flue gas leaves at the chamber's
/// temperature, perfectly burnt without excess air. Real kilns keep less, so fuel reckoned from it is a lower bound.
/// </summary>
/// <param name="PerKelvin">Share lost per K above the room.</param>
/// <param name="Growth">Growth of that share per K.</param>
internal readonly record struct FlueLoss(double PerKelvin, double Growth)
{
    private const double Least = 0.05;

    /// <summary>The share that stays.</summary>
    /// <param name="celsius">Temperature of the chamber, °C.</param>
    /// <param name="roomCelsius">Temperature of the room, °C.</param>
    public double Available(double celsius, double roomCelsius) =>
        Math.Clamp(1 - ((PerKelvin + (Growth * celsius)) * (celsius - roomCelsius)), Least, 1);
}
