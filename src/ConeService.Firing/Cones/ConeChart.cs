using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>One published chart, ready to answer.</summary>
internal sealed class ConeChart
{
    private readonly Dictionary<Cone, ChartCone> byCone;

    /// <summary>Joins a chart's row with its cones.</summary>
    /// <param name="row">The chart.</param>
    /// <param name="cones">Its cones, in any order.</param>
    public ConeChart(ChartRow row, IEnumerable<ChartCone> cones)
    {
        Row = row;
        Cones = [.. cones.OrderBy(c => c.Cone)];
        byCone = Cones.ToDictionary(c => c.Cone);
        Rates = [.. Cones.SelectMany(c => c.Cells).Select(c => c.RateCelsiusPerHour).OfType<decimal>().Distinct().Order()];
        DefaultRate = ChooseDefault(Cones);
    }

    /// <summary>The chart's row of the data package.</summary>
    public ChartRow Row { get; }

    /// <summary>Name of the chart.</summary>
    public string Id => Row.Id;

    /// <summary>The cones that the chart prints, ascending.</summary>
    public IReadOnlyList<ChartCone> Cones { get; }

    /// <summary>The rates that the chart prints, °C/h, ascending; empty when it states none.</summary>
    public IReadOnlyList<decimal> Rates { get; }

    /// <summary>
    /// The rate taken when the caller names none: 60 °C/h where printed, else the rate printed most often; null when
    /// the chart states none.
    /// </summary>
    public HeatingRate? DefaultRate { get; }

    /// <summary>The printed rate nearest to a rate, as a ratio, °C/h; the chart must state rates.</summary>
    public decimal NearestRate(decimal rate) => Rates.MinBy(r => Math.Abs(Math.Log((double)(r / rate))));

    /// <summary>A cone of this chart, or null.</summary>
    public ChartCone? Find(Cone cone) => byCone.GetValueOrDefault(cone);

    private static HeatingRate? ChooseDefault(IReadOnlyList<ChartCone> cones)
    {
        var counts = cones.SelectMany(c => c.Cells).Select(c => c.RateCelsiusPerHour).OfType<decimal>().CountBy(r => r).ToList();
        if (counts.Count == 0) return null;
        return new(counts.Any(c => c.Key == 60m) ? 60m : counts.MaxBy(c => (c.Value, c.Key)).Key);
    }
}
