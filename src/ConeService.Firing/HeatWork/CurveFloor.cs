using System.Numerics;

namespace ConeService.Firing.HeatWork;

/// <summary>For each vector of curves the degree below which a history adds nothing that is told, and K there.</summary>
/// <param name="Rows">Row of the grid of each vector.</param>
/// <param name="Works">K of every cone at that row, K/h.</param>
internal sealed record CurveFloor(int[] Rows, double[] Works)
{
    /// <summary>Whether all cones of a vector are below their floor.</summary>
    /// <param name="row">Row of the grid.</param>
    /// <param name="at">First cone of the vector.</param>
    public bool IsBelow(int row, int at) => row < Rows[at / Vector<double>.Count];
}
