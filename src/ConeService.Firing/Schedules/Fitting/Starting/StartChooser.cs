using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;
using ConeService.Contract.Texts;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting.Starting;

/// <summary>
/// Chooses the start of a firing. With a tariff by the clock: the earliest of the cheapest of all whole minutes that are allowed. Without:
/// the latest that ends in time, or the one that brings the peak nearest to the middle of its window.
/// </summary>
internal static class StartChooser
{
    private const int Day = 24 * 60;
    private const int Week = 7 * Day;

    // A tariff repeats itself every week: looking further ahead finds nothing cheaper, but for a change of the clocks.
    private const int MostMinutes = 2 * Week;

    // Nobody sets a timer to 17:03 who may as well set it to 17:00.
    private const int RoundMinutes = 5;

    /// <summary>The question with its start and the mean price of its energy, and what was chosen.</summary>
    /// <exception cref="RefusedException">No start does what is asked, or nothing is known of the kiln's power.</exception>
    public static (FitQuestion Question, StartChoice? Choice) Choose(
        FitQuestion question, StartWish wish, FittedSteps fitted, KilnPrediction? prediction, KilnDefaults defaults)
    {
        var energy = wish.Tariff is null || prediction is null
            ? null
            : new EnergyOverTime(prediction, question.Heat!.Value, question.RoomCelsius, defaults);
        if (wish.IsFixed)
        {
            return energy is null
                ? (question, null)
                : (question with { PricePerKilowattHour = energy.MeanPrice(0, Prices(wish, Floor(wish.NotBefore), energy.Minutes)) }, null);
        }

        if (wish is { Tariff: not null, FinishBy: null, Peak: null } && energy is null)
        {
            throw new RefusedException(new Finding(
                FindingCodes.MemberMissing, "/kiln", null, Message.Of("schedules.tariff-needs-kiln"),
                Message.Verbatim(["{\"heat\": \"electric\", \"volumeLitres\": 150}"])));
        }

        var end = prediction?.HoursToEnd ?? fitted.Hours;
        var peak = prediction?.HoursToPeak ?? fitted.Programme.ToHistory().Peak.Hours;
        var (earliest, latest) = Limits(wish, peak, end);
        if (energy is null)
            return Started(question, wish, Plain(wish, earliest, latest, peak), earliest, latest ?? earliest, peak, end, null);
        var last = latest ?? earliest.AddMinutes(wish.Tariff!.IsWeekly ? Week : Day);
        var count = (int)Math.Min(MostMinutes, (last - earliest).TotalMinutes);
        var first = Floor(wish.NotBefore) < earliest ? Floor(wish.NotBefore) : earliest;
        var lead = (int)(earliest - first).TotalMinutes;
        var prices = Prices(wish, first, lead + count + energy.Minutes + 1);
        var atOnce = energy.MeanPrice(0, prices);
        var (best, least) = (0, double.PositiveInfinity);
        for (var minute = 0; minute <= count; minute++)
        {
            var price = energy.MeanPrice(lead + minute, prices);
            if (price < least - (1e-9 * Math.Abs(least)) || double.IsPositiveInfinity(least)) (best, least) = (minute, price);
        }

        return Started(
            question with { PricePerKilowattHour = least }, wish, earliest.AddMinutes(best), earliest, earliest.AddMinutes(count),
            peak, end, Saving(question, prediction!, atOnce, least));
    }

    private static IReadOnlyList<(int Minute, double Price)> Prices(StartWish wish, DateTimeOffset from, int minutes) =>
        wish.Tariff!.Prices(wish.Zone, from, minutes);

    private static (DateTimeOffset Earliest, DateTimeOffset? Latest) Limits(StartWish wish, double peak, double end)
    {
        var (earliest, latest) = (StartReader.Up(wish.NotBefore), default(DateTimeOffset?));
        if (wish.FinishBy is { } finish) latest = Floor(finish.AddHours(-end));
        if (latest < earliest)
        {
            throw Impossible(
                wish, "/finishBy", false, end, wish.FinishBy!.Value, StartReader.Up(earliest.AddHours(end)));
        }

        if (wish.Peak is not { } window) return (earliest, latest);
        if (Floor(window.To.AddHours(-peak)) is var most && most < earliest)
        {
            throw Impossible(wish, "/peakBetween", true, peak, window.To, StartReader.Up(earliest.AddHours(peak)));
        }

        if (latest is null || most < latest) latest = most;
        if (StartReader.Up(window.From.AddHours(-peak)) is var least && least > earliest) earliest = least;
        if (latest < earliest && wish.FinishBy is { } by)
            throw Impossible(wish, "/finishBy", false, end, by, StartReader.Up(earliest.AddHours(end)));
        // A window of less than a minute holds no whole minute: its end is as good.
        return (latest < earliest ? latest.Value : earliest, latest);
    }

    private static RefusedException Impossible(
        StartWish wish, string field, bool isPeak, double hours, DateTimeOffset by, DateTimeOffset possible) => new(new Finding(
            FindingCodes.StartImpossible, field, Told(by, wish),
            Message.Of(
                "schedules.start-impossible",
                ("what", isPeak ? "peak" : "end"), ("takes", QuantityFormat.Duration(hours * 60)), ("by", Told(by, wish)),
                ("from", Told(wish.NotBefore, wish))),
            [Message.Of("schedules.possible-from", ("possible", Told(possible, wish)))]));

    private static DateTimeOffset Plain(StartWish wish, DateTimeOffset earliest, DateTimeOffset? latest, double peak)
    {
        if (latest is not { } last) return earliest;
        var wanted = wish.Peak is { } window ? window.From.AddTicks((window.To - window.From).Ticks / 2).AddHours(-peak) : last;
        if (wanted > last) wanted = last;
        var round = TimeSpan.TicksPerMinute * RoundMinutes;
        var rounded = new DateTimeOffset(wanted.Ticks - (wanted.Ticks % round), wanted.Offset);
        return rounded >= earliest ? rounded : wanted >= earliest ? Floor(wanted) : earliest;
    }

    private static (FitQuestion, StartChoice) Started(
        FitQuestion question, StartWish wish, DateTimeOffset start, DateTimeOffset earliest, DateTimeOffset latest, double peak, double end,
        StartSaving? saving)
    {
        start = MomentReader.In(wish.Zone, start);
        (string, object?)[] facts =
        [
            ("start", Told(start, wish)), ("earliest", Told(earliest, wish)), ("latest", Told(latest, wish)),
            ("peak", Told(start.AddHours(peak), wish)), ("end", Told(start.AddHours(end), wish)),
        ];
        Message why = (saving, wish) switch
        {
            (not null, _) => Message.Of("schedules.start-by-tariff", facts),
            (_, { Peak: not null }) => Message.Of("schedules.start-by-peak", facts),
            (_, { FinishBy: not null }) => Message.Of("schedules.start-by-finish", facts),
            _ => Message.Of("schedules.start-soonest", facts),
        };
        return (
            question with { Clock = question.Clock with { Start = start } },
            new(start, MomentReader.In(wish.Zone, wish.NotBefore), MomentReader.In(wish.Zone, latest), why, saving));
    }

    private static StartSaving Saving(FitQuestion question, KilnPrediction prediction, double atOnce, double chosen)
    {
        double? kilowattHours = prediction.Fuel is { } fuel ? fuel.KilowattHours : prediction.Energy.TotalKilowattHours;
        double? Amount(double price) => kilowattHours is { } k ? Math.Round(k * price, 2) : null;
        var (now, then, percent) = (Amount(atOnce), Amount(chosen), atOnce > 0 ? 100 * (atOnce - chosen) / atOnce : 0);
        (string, object?)[] facts =
        [
            ("percent", Math.Abs(percent)), ("now", now), ("then", then), ("currency", question.Currency),
            ("way", Math.Abs(percent) < 0.5 ? "same" : percent > 0 ? "less" : "more"), ("amounts", now is null ? "no" : "yes"),
        ];
        return new(
            now, then, now - then is { } saved ? Math.Round(saved, 2) : null, Math.Round(percent, 1), Math.Round(atOnce, 4),
            Math.Round(chosen, 4), question.Currency!, Message.Of("schedules.start-saving", facts));
    }

    private static string Told(DateTimeOffset moment, StartWish wish) =>
        MomentReader.In(wish.Zone, moment).ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);

    private static DateTimeOffset Floor(DateTimeOffset moment) =>
        new(moment.Ticks - (moment.Ticks % TimeSpan.TicksPerMinute), moment.Offset);
}
