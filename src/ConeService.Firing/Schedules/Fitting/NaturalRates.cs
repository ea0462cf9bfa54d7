using ConeService.Contract.Quantities;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>How fast the kiln cools by itself.</summary>
/// <param name="Top">From the end of the programme, °C/h.</param>
/// <param name="Inversion">Through the quartz inversion, 650 to 500 °C, °C/h.</param>
/// <param name="Crash">In segments without a rate, by the first number of the template's segment.</param>
/// <param name="IsModelled">True when the kiln model said so, false for a guess.</param>
internal sealed record NaturalRates(double Top, double Inversion, IReadOnlyDictionary<int, double> Crash, bool IsModelled)
{
    private const double Room = 20;
    private const double Window = 50;

    /// <summary>A guess: falling with the excess over the room.</summary>
    public static NaturalRates Guess(double top, double peakCelsius) =>
        new(top, Math.Max(5, top * (575 - Room) / Math.Max(100, peakCelsius - Room)), new Dictionary<int, double>(), false);

    /// <summary>What the kiln model computed for a plan; falls back to the guess where the firing ended early.</summary>
    public static NaturalRates Of(KilnPrediction prediction, IReadOnlyList<FitStep> steps, NaturalRates guess)
    {
        if (!prediction.Completed) return guess;
        var crash = new Dictionary<int, double>();
        foreach (var (step, outcome) in steps.Zip(prediction.Segments))
        {
            if (step.Rate is null && step.From.Count > 0 && outcome.MeanRateCelsiusPerHour is { } rate and > 0) crash[step.From[0]] = rate;
        }

        var end = TemperatureAt(prediction.Chamber, prediction.HoursToEnd);
        var top = RateBelow(prediction.Chamber, prediction.HoursToEnd, end - Window) ?? guess.Top;
        // Where the programme ends hotter than the inversion, the kiln passes it by itself.
        var inversion = HistoryShape.CoolingThrough(prediction.Chamber, 575 + Temperature.KelvinAtZero, 150) ?? guess.Inversion;
        return new(top, inversion, crash, true);
    }

    /// <summary>Temperature of a history at a time, °C.</summary>
    public static double TemperatureAt(HeatHistory history, double hours)
    {
        var points = history.Points;
        var i = 1;
        while (i < points.Length - 1 && points[i].Hours < hours) i++;
        var (a, b) = (points[i - 1], points[i]);
        var share = Math.Clamp((hours - a.Hours) / (b.Hours - a.Hours), 0, 1);
        return a.Kelvin + (share * (b.Kelvin - a.Kelvin)) - Temperature.KelvinAtZero;
    }

    private static double? RateBelow(HeatHistory history, double from, double celsius)
    {
        var points = history.Points;
        for (var i = 1; i < points.Length; i++)
        {
            var (a, b) = (points[i - 1], points[i]);
            if (b.Hours <= from || b.Kelvin - Temperature.KelvinAtZero > celsius) continue;
            var crossing = a.Hours + ((celsius + Temperature.KelvinAtZero - a.Kelvin) / (b.Kelvin - a.Kelvin) * (b.Hours - a.Hours));
            return Window / (crossing - from);
        }

        return null;
    }
}
