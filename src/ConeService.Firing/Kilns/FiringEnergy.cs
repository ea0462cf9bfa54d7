namespace ConeService.Firing.Kilns;

/// <summary>
/// Specific firing energy, to compare firings: energy less that of drying, over the mass fired (practical-action-brick-energy).
/// </summary>
internal static class FiringEnergy
{
    /// <summary>Energy per kg fired, in the unit of the energies per kg; null when nothing was fired.</summary>
    /// <param name="total">Energy of fuel or current.</param>
    /// <param name="drying">Energy that drove off free water, in the same unit.</param>
    /// <param name="kilogramsFired">Mass of the ware after firing, kg.</param>
    public static double? Specific(double total, double drying, double kilogramsFired) =>
        kilogramsFired > 0 ? (total - drying) / kilogramsFired : null;
}
