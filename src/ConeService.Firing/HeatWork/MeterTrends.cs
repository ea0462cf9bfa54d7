using ConeService.Contract.HeatWork;
using ConeService.Contract.Texts;

namespace ConeService.Firing.HeatWork;

/// <summary>Whether the offset of a meter changes from firing to firing: a line by weighted least squares.</summary>
internal static class MeterTrends
{
    // Two points make any line.
    private const int Least = 3;

    // Chance below which a change is believed: one in twenty.
    private const double Level = 0.05;

    // The least scatter that is believed, as a share of the errors' squares: hands of a clock are not read better than to half a kelvin.
    private const double LeastScatter = 0.01;

    /// <summary>The trend; null when fewer than three firings measure the offset.</summary>
    /// <param name="estimates">The estimate of each firing in the order of time, null where its cones only bound it on one side.</param>
    public static MeterTrend? Of(IReadOnlyList<(double Offset, double Error)?> estimates)
    {
        List<(double Number, double Offset, double Weight)> points =
            [.. estimates.Index().Where(e => e.Item is not null)
                .Select(e => (e.Index + 1.0, e.Item!.Value.Offset, 1 / (e.Item.Value.Error * e.Item.Value.Error)))];
        if (points.Count < Least) return null;
        var weight = points.Sum(p => p.Weight);
        var middle = points.Sum(p => p.Weight * p.Number) / weight;
        var mean = points.Sum(p => p.Weight * p.Offset) / weight;
        var spread = points.Sum(p => p.Weight * (p.Number - middle) * (p.Number - middle));
        var change = points.Sum(p => p.Weight * (p.Number - middle) * (p.Offset - mean)) / spread;
        double At(double number) => mean + (change * (number - middle));
        var freedom = points.Count - 2;
        var scatter = Math.Max(LeastScatter, points.Sum(p => p.Weight * (p.Offset - At(p.Number)) * (p.Offset - At(p.Number))) / freedom);
        double Error(double number) => Math.Sqrt(scatter * ((1 / weight) + ((number - middle) * (number - middle) / spread)));
        var error = Math.Sqrt(scatter / spread);
        var chance = StudentDistribution.Beyond(change / error, freedom);
        var (last, drifts) = ((int)points[^1].Number, chance < Level);
        (string, object?)[] values =
        [
            ("change", Math.Abs(change)), ("direction", change >= 0 ? "hotter" : "cooler"), ("error", error), ("firings", points.Count),
            ("latest", At(last)), ("latestError", Error(last)), ("last", last), ("chance", chance),
        ];
        return new(
            ChangeCelsiusDifference: Math.Round(change, 2),
            ChangeStandardErrorCelsiusDifference: Math.Round(error, 2),
            FirstCelsiusDifference: Math.Round(At(1), 2),
            FirstStandardErrorCelsiusDifference: Math.Round(Error(1), 2),
            LatestCelsiusDifference: Math.Round(At(last), 2),
            LatestStandardErrorCelsiusDifference: Math.Round(Error(last), 2),
            LatestFiring: last,
            Chance: Math.Round(chance, 4),
            Drifts: drifts,
            Firings: points.Count,
            Message: drifts ? Message.Of("heat-work.trend", values) : Message.Of("heat-work.no-trend", values),
            Suggests: drifts ? Message.Of("heat-work.trend-suggests") : null);
    }
}
