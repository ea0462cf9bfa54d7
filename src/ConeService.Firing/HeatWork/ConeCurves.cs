using ConeService.Contract.Cones;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>
/// The curves of one chart for one rate, and what firings do to its cones. Immutable; worth keeping, as its table takes
/// longer to build than a firing to follow.
/// </summary>
internal sealed class ConeCurves
{
    /// <summary>Up to so many pieces a firing is followed by the exact integral unless the caller says otherwise.</summary>
    public const int ExactPieces = 600;

    private readonly (ChartCone Cone, BendingCurve Curve)[] cones;
    private readonly Dictionary<Cone, BendingCurve> byCone;
    private readonly Lazy<ScaleTable> table;
    private readonly int exactPieces;

    /// <summary>Takes the curves of a chart.</summary>
    /// <param name="chart">The chart; it must state rates, or no cone can be judged.</param>
    /// <param name="rate">The rate, °C/h, whose nearest printed value borrowed curves go through.</param>
    /// <param name="exactPieces">Longest history, in pieces, that is followed by the exact integral; longer ones by the table.</param>
    public ConeCurves(ConeChart chart, decimal rate, int exactPieces = ExactPieces)
    {
        this.exactPieces = exactPieces;
        cones = [.. chart.Cones.Select(c => (Cone: c, Curve: c.Curve(new(rate))!)).Where(c => c.Curve is not null)];
        byCone = cones.ToDictionary(c => c.Cone.Cone, c => c.Curve);
        LeftOut = [.. chart.Cones.Select(c => c.Cone).Except(byCone.Keys)];
        table = new(() => new(cones.Select(c => c.Curve)));
    }

    /// <summary>Cones of the chart that can't be judged: without kinetics, and without any to borrow.</summary>
    public IReadOnlyList<Cone> LeftOut { get; }

    /// <summary>The table of the curves, made on first use.</summary>
    public ScaleTable Table => table.Value;

    /// <summary>The curve of a cone that can be judged.</summary>
    public BendingCurve this[ChartCone cone] => byCone[cone.Cone];

    /// <summary>True when the cone can be judged.</summary>
    public bool Has(ChartCone cone) => byCone.ContainsKey(cone.Cone);

    /// <summary>The curve that a cone is followed with; null when the chart can't judge it.</summary>
    public BendingCurve? Find(Cone cone) => byCone.GetValueOrDefault(cone);

    /// <summary>What a firing does to every cone: exact for a programme, by <see cref="ScaleTable"/> for a long log.</summary>
    public ScaleWork Measure(HeatHistory history)
    {
        if (history.Points.Length > exactPieces)
        {
            var (progress, down) = Table.Follow(history);
            return new([.. cones.Select((c, i) => Of(c, history, progress[i], down[i]))], LeftOut);
        }

        return new([.. cones.Select(c => Of(c, history, HeatIntegral.Progress(c.Curve, history, out var at), at))], LeftOut);
    }

    private static ConeWork Of((ChartCone Cone, BendingCurve Curve) cone, HeatHistory history, double progress, double? downAt)
    {
        var work = new ConeWork(cone.Cone, cone.Curve, progress, HeatMargin.Of(cone.Curve, progress), downAt);
        if (!work.IsDown || downAt is not null) return work;
        // Down by a hair: when it came so near.
        HeatIntegral.Progress(cone.Curve, history, HeatMargin.JustDown(cone.Curve), out var near);
        return work with { DownAtHours = near ?? history.End.Hours };
    }
}
