using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting.Starting;

/// <summary>Which share of the energy of a firing goes in at which minute, by the predicted power.</summary>
internal sealed class EnergyOverTime
{
    private readonly double[] before;

    /// <summary>Takes a prediction.</summary>
    /// <param name="prediction">The firing.</param>
    /// <param name="heat">What heats the kiln: a flame loses more up the flue the hotter the kiln.</param>
    /// <param name="roomCelsius">Temperature of the room, °C.</param>
    /// <param name="defaults">Where the flue's loss comes from.</param>
    public EnergyOverTime(KilnPrediction prediction, KilnHeat heat, double roomCelsius, KilnDefaults defaults)
    {
        var curve = prediction.Curve;
        var flue = new FlueLoss(defaults["flue-loss"], defaults["flue-loss-slope"]);
        before = new double[(int)Math.Ceiling(prediction.HoursToEnd * 60) + 1];
        for (int minute = 1, i = 1; minute < before.Length; minute++)
        {
            while (i < curve.Count - 1 && curve[i].Hours < (minute - 0.5) / 60) i++;
            var (sample, kilowatts) = (curve[i], curve[i].Kilowatts);
            if (heat != KilnHeat.Electric) kilowatts /= flue.Available(sample.ChamberCelsius, roomCelsius);
            before[minute] = before[minute - 1] + kilowatts;
        }

        var all = before[^1];
        for (var minute = 0; minute < before.Length && all > 0; minute++) before[minute] /= all;
    }

    /// <summary>How long energy goes in, minutes.</summary>
    public int Minutes => before.Length - 1;

    /// <summary>Mean price of the kWh of a firing.</summary>
    /// <param name="start">Its first minute.</param>
    /// <param name="prices">The prices, from minute 0 on.</param>
    public double MeanPrice(int start, IReadOnlyList<(int Minute, double Price)> prices)
    {
        var sum = 0.0;
        for (var i = 0; i < prices.Count; i++)
        {
            var to = i + 1 < prices.Count ? prices[i + 1].Minute : int.MaxValue;
            if (to <= start) continue;
            if (prices[i].Minute >= start + Minutes) break;
            sum += prices[i].Price * (Before(to == int.MaxValue ? Minutes : to - start) - Before(prices[i].Minute - start));
        }

        return sum;
    }

    private double Before(int minute) => before[Math.Clamp(minute, 0, Minutes)];
}
