namespace ConeService.Firing.Kilns.Thermal;

/// <summary>
/// Heat given to a kiln and where it stands, J. Stored parts come from the temperatures alone, so that <see cref="Missing"/> tests the
/// solver.
/// </summary>
internal readonly record struct HeatParts(
    double Given, double Ware, double Furniture, double Water, double Walls, double Chamber, double Surface, double Leak)
{
    /// <summary>Given, and neither stored nor lost: the error of the solver, J.</summary>
    public double Missing => Given - Ware - Furniture - Water - Walls - Chamber - Surface - Leak;
}
