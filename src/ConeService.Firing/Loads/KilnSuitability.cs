using ConeService.Data;
using ConeService.Firing.Loads.Rules;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Which kilns suit a firing, whatever is in it.</summary>
internal static class KilnSuitability
{
    /// <summary>A kiln that a kind of firing is done in, high and wide enough for anything.</summary>
    public static Kiln Suiting(LoadTables tables, FiringNeeds needs, Atmosphere atmosphere)
    {
        var heats = Heats(tables, needs, atmosphere: null);
        var heat = atmosphere == Atmosphere.Reduction && heats.Any(h => tables.Heat(h).Reduction == KilnReduction.Usual)
            ? heats.First(h => tables.Heat(h).Reduction == KilnReduction.Usual)
            : heats[0];
        return new(heat, int.MaxValue, "14", new EnumSet<Atmosphere>(Atmospheres.OfFirings), null);
    }

    /// <summary>The heats of kilns that a firing is done in without harm to them.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="needs">What the kind of firing needs.</param>
    /// <param name="atmosphere">The atmosphere; null for any.</param>
    public static IReadOnlyList<KilnHeat> Heats(LoadTables tables, FiringNeeds needs, Atmosphere? atmosphere) =>
    [
        .. needs.Row.KilnHeats.Where(h => !KilnRule.HarmsElements(needs.Row.Id, h)
            && (atmosphere != Atmosphere.Reduction || tables.Heat(h).Reduction == KilnReduction.Usual)),
    ];

    /// <summary>True when a kiln is made for a firing.</summary>
    public static bool CanFire(LoadTables tables, Kiln kiln, PlannedFiring firing) =>
        firing.Needs.Heats.Has(kiln.Heat) && kiln.Atmospheres.Has(firing.Atmosphere) && firing.Cone.Order <= kiln.MaxOrder
        && IsHotEnough(tables, kiln, firing.Cone)
        && !(firing.IsReduction && tables.Heat(kiln.Heat).Reduction == KilnReduction.HarmsElements)
        && !KilnRule.HarmsElements(firing.Kind, kiln.Heat);

    /// <summary>False where the highest temperature of the kiln, even in °C, lies below the cone at the usual rate.</summary>
    public static bool IsHotEnough(LoadTables tables, Kiln kiln, PotterCone cone) =>
        kiln.MostDegrees is not { } most || tables.EndPoint(cone) is not { } ends || most >= ends.Usual;
}
