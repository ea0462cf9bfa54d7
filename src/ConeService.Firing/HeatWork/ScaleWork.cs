using ConeService.Contract.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>What a firing did to every cone of a chart, and how one reads that.</summary>
/// <param name="Cones">The cones that could be judged, ascending.</param>
/// <param name="LeftOut">Cones of the chart without kinetics, and none to borrow.</param>
internal sealed record ScaleWork(IReadOnlyList<ConeWork> Cones, IReadOnlyList<Cone> LeftOut)
{
    /// <summary>The hottest cone that is down together with all cooler ones; null when the first is still up.</summary>
    public ConeWork? Reached => Standing == 0 ? null : Cones[Standing - 1];

    /// <summary>The first cone that is not down; null when all are.</summary>
    public ConeWork? Next => Standing == Cones.Count ? null : Cones[Standing];

    /// <summary>Cones that are down although a cooler one is not.</summary>
    public IEnumerable<ConeWork> OutOfOrder => Cones.Skip(Standing).Where(c => c.IsDown);

    /// <summary>How far from the reached cone to the next, f = m_n/(m_n − m_{n+1}), 0 to 1; null where one of them is missing.</summary>
    public double? Fraction => Reached is { } reached && Next is { } next
        ? Math.Max(0, reached.MarginKelvin) / (Math.Max(0, reached.MarginKelvin) - next.MarginKelvin)
        : null;

    private int Standing => Cones.TakeWhile(c => c.IsDown).Count();
}
