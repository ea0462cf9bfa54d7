using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Which kilns suit a firing, whatever is in it.</summary>
internal static class KilnSuitability
{
    /// <summary>A kiln that a kind of firing is done in, high and wide enough for anything.</summary>
    public static Kiln Suiting(LoadTables tables, FiringNeeds needs, Atmosphere atmosphere)
    {
        var heats = needs.Row.KilnHeats;
        var heat = atmosphere == Atmosphere.Reduction && heats.Any(h => tables.Heat(h).Reduction == KilnReduction.Usual)
            ? heats.First(h => tables.Heat(h).Reduction == KilnReduction.Usual)
            : heats[0];
        return new(heat, int.MaxValue, "14", new EnumSet<Atmosphere>(Atmospheres.OfFirings), null);
    }

    /// <summary>True when a kiln is made for a firing.</summary>
    public static bool CanFire(LoadTables tables, Kiln kiln, PlannedFiring firing) =>
        firing.Needs.Heats.Has(kiln.Heat) && kiln.Atmospheres.Has(firing.Atmosphere) && firing.Cone.Order <= kiln.MaxOrder
        && !(firing.IsReduction && tables.Heat(kiln.Heat).Reduction == KilnReduction.HarmsElements);
}
