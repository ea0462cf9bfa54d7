namespace ConeService.Contract.HeatWork;

/// <summary>How an uploaded log is to be read, where the log itself leaves a choice.</summary>
/// <param name="TimeColumn">Name of the time column; null: found by its name.</param>
/// <param name="TemperatureColumn">Name of the temperature column; null: found by its name, and all of several are read.</param>
/// <param name="TimeZone">IANA name of the zone whose clocks the log has; null: none is known.</param>
/// <param name="DateOrder">day-first or month-first for dates such as 03/04/2026; null: decided by the column.</param>
public sealed record LogReading(
    string? TimeColumn = null, string? TemperatureColumn = null, string? TimeZone = null, string? DateOrder = null)
{
    /// <summary>The day before the month.</summary>
    public const string DayFirst = "day-first";

    /// <summary>The month before the day.</summary>
    public const string MonthFirst = "month-first";
}
