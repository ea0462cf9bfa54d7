using ConeService.Data;

namespace ConeService.Firing.HeatWork;

/// <summary>The tolerance of a new thermocouple, by the formula of its standard.</summary>
internal static class ThermocoupleTolerance
{
    /// <summary>How far it may read off at a temperature, ±K.</summary>
    public static double At(ThermocoupleToleranceRow row, double celsius)
    {
        var (floor, share) = ((double)row.FloorCelsius, (double)row.ShareOfCelsius);
        return row.Formula == "beyond"
            ? floor + (share * Math.Max(0, celsius - (double)row.FromCelsius!.Value))
            : Math.Max(floor, share * Math.Abs(celsius));
    }

    /// <summary>True when the standard states the tolerance at the temperature.</summary>
    public static bool Covers(ThermocoupleToleranceRow row, double celsius) =>
        celsius >= (double)row.LowestCelsius && (row.HighestCelsius is not { } highest || celsius <= (double)highest);
}
