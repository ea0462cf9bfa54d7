namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>How early and how late the end and the opening may come, h from the last sample. Widths are judgement.</summary>
/// <param name="EndFrom">Earliest end.</param>
/// <param name="EndTo">Latest end.</param>
/// <param name="OpenFrom">Earliest opening.</param>
/// <param name="OpenTo">Latest opening.</param>
internal sealed record Spans(double EndFrom, double EndTo, double OpenFrom, double OpenTo)
{
    // The model claims its energies within ±20 %; half of that stays when the log has corrected it.
    private const double Power = 0.1;
    private const double Losses = 0.3;
    private const double LeastShare = 0.02;
    private const double ModelledCooling = 0.2;

    // Kilns that nobody described may cool half or twice as fast, and a kiln lags its programme but never leads it.
    private const double GuessedLag = 0.25;
    private const double GuessedCoolingLow = 0.5;
    private const double GuessedCoolingHigh = 2;

    /// <summary>The spans about a forecast.</summary>
    public static Spans Of(ForecastQuestion question, KilnReplay? replay, KilnFit? fit, FiringAhead fired)
    {
        var (end, open) = (fired.EndHours, fired.OpeningHours ?? fired.EndHours);
        var cooling = Math.Max(0, open - end);
        if (replay is null)
        {
            var latest = end * (1 + GuessedLag);
            return new(end, latest, end + (cooling * GuessedCoolingLow), latest + (cooling * GuessedCoolingHigh));
        }

        var rest = question.Rest ?? [];
        FiringAhead strong = new KilnAhead(replay, fit!, 1 + Power, 1 - Losses).Fire(rest);
        FiringAhead weak = new KilnAhead(replay, fit!, 1 - Power, 1 + Losses).Fire(rest);
        var (from, to) = (
            Math.Min(end * (1 - LeastShare), strong.EndHours),
            Math.Max(end * (1 + LeastShare), Math.Max(weak.EndHours, strong.EndHours)));
        return new(from, to, from + (cooling * (1 - ModelledCooling)), to + (cooling * (1 + ModelledCooling)));
    }
}
