using ConeService.Contract.Cones;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>Follows firings with every cone of one chart. Immutable; worth keeping, as its table takes longer to build than a firing to follow.</summary>
internal sealed class ScaleMeter
{
    // Up to here the exact integral costs less than it is worth to avoid.
    private const int FewPieces = 600;

    private readonly (ChartCone Cone, BendingCurve Curve)[] cones;
    private readonly Lazy<ScaleTable> table;

    /// <summary>Makes a meter for a chart.</summary>
    /// <param name="chart">The chart; it must state rates, or no cone can be judged.</param>
    /// <param name="rate">The rate, °C/h, whose nearest printed value borrowed curves go through.</param>
    public ScaleMeter(ConeChart chart, decimal rate)
    {
        cones = [.. chart.Cones.Select(c => (Cone: c, Curve: c.Curve(new(rate))!)).Where(c => c.Curve is not null)];
        LeftOut = [.. chart.Cones.Select(c => c.Cone).Except(cones.Select(c => c.Cone.Cone))];
        table = new(() => new(cones.Select(c => c.Curve)));
    }

    /// <summary>Cones of the chart that can't be judged: without kinetics, and without any to borrow.</summary>
    public IReadOnlyList<Cone> LeftOut { get; }

    /// <summary>The table of the curves, made on first use.</summary>
    public ScaleTable Table => table.Value;

    /// <summary>The curve that a cone is followed with; null when the chart can't judge it.</summary>
    public BendingCurve? CurveOf(Cone cone) => cones.FirstOrDefault(c => c.Cone.Cone == cone).Curve;

    /// <summary>What a firing does to every cone: exact for a programme, by <see cref="ScaleTable"/> for a long log.</summary>
    public ScaleWork Measure(HeatHistory history)
    {
        if (history.Points.Length > FewPieces)
        {
            var (progress, down) = Table.Follow(history);
            return new([.. cones.Select((c, i) => Of(c, progress[i], down[i]))], LeftOut);
        }

        return new([.. cones.Select(c => Of(c, HeatIntegral.Progress(c.Curve, history, out var at), at))], LeftOut);
    }

    private static ConeWork Of((ChartCone Cone, BendingCurve Curve) cone, double progress, double? downAt) =>
        new(cone.Cone, cone.Curve, progress, HeatMargin.Of(cone.Curve, progress), downAt);
}
