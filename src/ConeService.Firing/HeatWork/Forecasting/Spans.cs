namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>How early and how late the end and the opening may come, h from the last sample. Widths are judgement.</summary>
/// <param name="EndFrom">Earliest end.</param>
/// <param name="EndTo">Latest end.</param>
/// <param name="OpenFrom">Earliest opening.</param>
/// <param name="OpenTo">Latest opening.</param>
/// <param name="ProgressFrom">Least progress of the cone.</param>
/// <param name="ProgressTo">Most progress of the cone.</param>
internal sealed record Spans(double EndFrom, double EndTo, double OpenFrom, double OpenTo, double ProgressFrom, double ProgressTo)
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

    // What fits and advice are held to; a modelled progress is no surer.
    private const double LeastProgress = 0.05;

    // Near the top, where a cone notices, air and skin of the wall fall before the mass of the kiln does: a small empty kiln comes down
    // three times as fast there as the hours to its opening show.
    private const double GuessedFallHigh = 3;

    /// <summary>The spans about a forecast.</summary>
    /// <param name="question">The question.</param>
    /// <param name="replay">The kiln led along the log; null without one.</param>
    /// <param name="fit">What the log corrected.</param>
    /// <param name="fired">The forecast.</param>
    /// <param name="progress">Progress of the cone after a firing ahead.</param>
    public static Spans Of(
        ForecastQuestion question, KilnReplay? replay, KilnFit? fit, FiringAhead fired, Func<FiringAhead, double> progress)
    {
        var (end, open) = (fired.EndHours, fired.OpeningHours ?? fired.EndHours);
        var cooling = Math.Max(0, open - end);
        if (replay is null)
        {
            var latest = end * (1 + GuessedLag);
            double[] done = [progress(fired), .. Guesses(question).Select(progress)];
            return new(
                end, latest, end + (cooling * GuessedCoolingLow), latest + (cooling * GuessedCoolingHigh), done.Min(), done.Max());
        }

        var rest = question.Rest ?? [];
        FiringAhead strong = new KilnAhead(replay, fit!, 1 + Power, 1 - Losses).Fire(rest);
        FiringAhead weak = new KilnAhead(replay, fit!, 1 - Power, 1 + Losses).Fire(rest);
        var (from, to) = (
            Math.Min(end * (1 - LeastShare), strong.EndHours),
            Math.Max(end * (1 + LeastShare), Math.Max(weak.EndHours, strong.EndHours)));
        double[] spanned = [progress(fired), progress(strong), progress(weak)];
        return new(
            from, to,
            from + (cooling * (1 - ModelledCooling)), to + (cooling * (1 + ModelledCooling)),
            spanned.Min() - LeastProgress, spanned.Max() + LeastProgress);
    }

    // The log of a climb says nothing of how the kiln will cool, and little of where it will lag.
    private static IEnumerable<FiringAhead> Guesses(ForecastQuestion question)
    {
        var (rest, full) = (question.Rest ?? [], question.FullSpeedKelvinPerHour);
        // A programmed fall is a cooling too: no kiln falls faster than by itself.
        var slower = rest.Select((s, i) => s with
        {
            RateKelvinPerHour = s.RateKelvinPerHour
                / (s.TargetKelvin < (i == 0 ? question.Now.Kelvin : rest[i - 1].TargetKelvin) ? GuessedCoolingHigh : 1 + GuessedLag),
        }).ToList();
        ProgrammeAhead Cooled(double speed, double climb) => new(question.Now.Kelvin, full * climb, question.Cooling switch
        {
            CoolDown.Natural natural when IsGuessed(question) =>
                natural with { TimeConstantHours = natural.TimeConstantHours / speed },
            var stated => stated,
        });
        yield return Cooled(GuessedFallHigh, 1).Fire(rest);
        yield return Cooled(1 / GuessedCoolingHigh, 1 / (1 + GuessedLag)).Fire(slower);
    }

    private static bool IsGuessed(ForecastQuestion question) =>
        question.Assumed.Exists(a => a.Field.Contains("naturalCooling", StringComparison.Ordinal));
}
