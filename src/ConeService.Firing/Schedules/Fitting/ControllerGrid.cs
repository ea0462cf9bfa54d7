
namespace ConeService.Firing.Schedules.Fitting;

/// <summary>
/// Numbers that one can type without a slip: rates in 5 °C/h or 10 °F/h, targets in 5 °C or 10 °F, holds in 5 minutes; only the peak, which
/// the cone decides, is in whole degrees. Values here are °C.
/// </summary>
/// <param name="fahrenheit">True for °F.</param>
internal sealed class ControllerGrid(bool fahrenheit)
{
    /// <summary>Steps of holds, minutes.</summary>
    public const double HoldMinutes = 5;

    private readonly double size = fahrenheit ? 5.0 / 9.0 : 1;
    private readonly double round = fahrenheit ? 10 : 5;

    /// <summary>True for °F.</summary>
    public bool Fahrenheit => fahrenheit;

    /// <summary>One degree of the controller, °C.</summary>
    public double Step => size;

    /// <summary>One step of a rate, °C/h.</summary>
    public double RateStep => round * size;

    /// <summary>The nearest whole degree, for a peak.</summary>
    public double Peak(double celsius) => Back(Math.Round(Units(celsius), MidpointRounding.AwayFromZero));

    /// <summary>The whole degree not below, for the peak of a cooler cone on the way.</summary>
    public double PeakAbove(double celsius) => Back(Math.Ceiling(Units(celsius) - 1e-6));

    /// <summary>The nearest round temperature.</summary>
    public double Temperature(double celsius) => Back(Math.Round(Units(celsius) / round, MidpointRounding.AwayFromZero) * round);

    /// <summary>The round temperature not above.</summary>
    public double RoundBelow(double celsius) => Back(Math.Floor((Units(celsius) / round) + 1e-9) * round);

    /// <summary>The round temperature not below.</summary>
    public double RoundAbove(double celsius) => Back(Math.Ceiling((Units(celsius) / round) - 1e-9) * round);

    /// <summary>The nearest rate on the grid, at least one step.</summary>
    public double Rate(double celsiusPerHour) =>
        Math.Max(1, Math.Round(celsiusPerHour / RateStep, MidpointRounding.AwayFromZero)) * RateStep;

    /// <summary>The fastest rate on the grid that is not above; below one step a whole number, at least one degree per hour.</summary>
    public double RateBelow(double celsiusPerHour) => celsiusPerHour >= RateStep - 1e-9
        ? Math.Floor((celsiusPerHour / RateStep) + 1e-9) * RateStep
        : Math.Max(1, Math.Floor((celsiusPerHour / size) + 1e-9)) * size;

    /// <summary>The temperature in the controller's units, as a whole number.</summary>
    public decimal WholeTemperature(double celsius) => (decimal)Math.Round(Units(celsius), MidpointRounding.AwayFromZero);

    /// <summary>The rate in the controller's units, as a whole number.</summary>
    public decimal WholeRate(double celsiusPerHour) => (decimal)Math.Round(celsiusPerHour / size, MidpointRounding.AwayFromZero);

    private double Units(double celsius) => fahrenheit ? (celsius * 1.8) + 32 : celsius;

    private double Back(double units) => fahrenheit ? (units - 32) / 1.8 : units;
}
