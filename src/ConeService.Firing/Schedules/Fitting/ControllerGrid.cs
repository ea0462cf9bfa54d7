using ConeService.Contract.Quantities;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// What a controller can be told: whole degrees, whole degrees per hour and whole minutes, in °C or °F. Values here are °C.
/// </summary>
/// <param name="fahrenheit">True for °F.</param>
internal sealed class ControllerGrid(bool fahrenheit)
{
    private readonly double size = fahrenheit ? 5.0 / 9.0 : 1;

    /// <summary>True for °F.</summary>
    public bool Fahrenheit => fahrenheit;

    /// <summary>One degree of the controller, °C.</summary>
    public double Step => size;

    /// <summary>The nearest temperature on the grid.</summary>
    public double Temperature(double celsius) => Back(Math.Round(Units(celsius), MidpointRounding.AwayFromZero));

    /// <summary>A round temperature, a multiple of five degrees, not above.</summary>
    public double RoundBelow(double celsius) => Back(Math.Floor((Units(celsius) / 5) + 1e-9) * 5);

    /// <summary>A round temperature, a multiple of five degrees, not below.</summary>
    public double RoundAbove(double celsius) => Back(Math.Ceiling((Units(celsius) / 5) - 1e-9) * 5);

    /// <summary>The nearest rate on the grid, at least one degree per hour.</summary>
    public double Rate(double celsiusPerHour) => Math.Max(1, Math.Round(celsiusPerHour / size, MidpointRounding.AwayFromZero)) * size;

    /// <summary>The fastest rate on the grid that is not above, at least one degree per hour.</summary>
    public double RateBelow(double celsiusPerHour) => Math.Max(1, Math.Floor((celsiusPerHour / size) + 1e-9)) * size;

    /// <summary>The temperature in the controller's units, as a whole number.</summary>
    public decimal WholeTemperature(double celsius) => (decimal)Math.Round(Units(celsius), MidpointRounding.AwayFromZero);

    /// <summary>The rate in the controller's units, as a whole number.</summary>
    public decimal WholeRate(double celsiusPerHour) => (decimal)Math.Round(celsiusPerHour / size, MidpointRounding.AwayFromZero);

    private double Units(double celsius) => fahrenheit ? (celsius * 1.8) + 32 : celsius;

    private double Back(double units) => fahrenheit ? (units - 32) / 1.8 : units;
}
