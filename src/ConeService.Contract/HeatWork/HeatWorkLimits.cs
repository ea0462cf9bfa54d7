namespace ConeService.Contract.HeatWork;

/// <summary>
/// What is believed of a firing in either unit, as the OpenAPI document states it: each end is the wider one of °C and °F, and the
/// readers hold the narrower one of the unit sent.
/// </summary>
public static class HeatWorkLimits
{
    /// <summary>Coldest temperature, °C; the wider end of -30 °C and -22 °F.</summary>
    public const double Coldest = -30;

    /// <summary>Hottest temperature, °F: 1500 °C.</summary>
    public const double Hottest = 2732;

    /// <summary>
    /// Slowest rate, °C/h: a degree in six weeks. Below it a clock of hours no longer tells the end of a hold from its beginning.
    /// </summary>
    public const double SlowestCelsius = 0.001;

    /// <summary>Fastest rate, °C/h.</summary>
    public const double FastestCelsius = 3000;

    /// <summary>Fastest rate, °F/h: 3000 °C/h.</summary>
    public const double Fastest = FastestCelsius * 9 / 5;

    /// <summary>Longest hold, minutes: 2000 hours.</summary>
    public const double LongestMinutes = 120_000;

    /// <summary>Most witness cones of a firing.</summary>
    public const int MostObservations = 30;

    /// <summary>Most firings to be pooled.</summary>
    public const int MostFirings = 50;

    /// <summary>Largest uploaded log, bytes: a day of samples by the second is 2 MB.</summary>
    public const int MostUploadBytes = 10 * 1024 * 1024;
}
