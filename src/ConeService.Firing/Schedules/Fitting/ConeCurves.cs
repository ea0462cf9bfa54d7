using ConeService.Contract.Cones;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>The curves of one chart for one rate; borrowed ones go through the printed value nearest to it. Worth keeping.</summary>
internal sealed class ConeCurves
{
    // Beyond this many pieces a table of all curves beats the exact integral.
    private const int FewPieces = 40;

    private readonly Dictionary<Cone, BendingCurve> curves = [];
    private readonly List<ChartCone> cones = [];
    private readonly Lazy<ScaleTable> table;

    /// <summary>Takes the curves of a chart.</summary>
    /// <param name="chart">The chart; it must state rates.</param>
    /// <param name="rate">The rate, °C/h.</param>
    public ConeCurves(ConeChart chart, decimal rate)
    {
        foreach (var cone in chart.Cones)
        {
            if (cone.Curve(new(rate)) is not { } curve) continue;
            curves[cone.Cone] = curve;
            cones.Add(cone);
        }

        LeftOut = [.. chart.Cones.Select(c => c.Cone).Except(curves.Keys)];
        table = new(() => new(cones.Select(c => curves[c.Cone])));
    }

    /// <summary>Cones of the chart that can't be followed.</summary>
    public IReadOnlyList<Cone> LeftOut { get; }

    /// <summary>The curve of a cone.</summary>
    public BendingCurve this[ChartCone cone] => curves[cone.Cone];

    /// <summary>True when the cone can be followed.</summary>
    public bool Has(ChartCone cone) => curves.ContainsKey(cone.Cone);

    /// <summary>What a firing does to every cone.</summary>
    public ScaleWork Measure(HeatHistory history)
    {
        if (history.Points.Length <= FewPieces)
            return new([.. cones.Select(c => Of(c, HeatIntegral.Progress(curves[c.Cone], history, out var at), at))], LeftOut);
        var (progress, down) = table.Value.Follow(history);
        return new([.. cones.Select((c, i) => Of(c, progress[i], down[i]))], LeftOut);
    }

    private ConeWork Of(ChartCone cone, double progress, double? downAt) =>
        new(cone, curves[cone.Cone], progress, HeatMargin.Of(curves[cone.Cone], progress), downAt);
}
