using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Kilns that nobody named.</summary>
internal static class Kilns
{
    /// <summary>A kiln that a kind of firing is done in, high and wide enough for anything.</summary>
    public static Kiln Suiting(LoadBook book, KindNeeds needs, Atmosphere atmosphere)
    {
        var heats = needs.Row.KilnHeats;
        var heat = atmosphere == Atmosphere.Reduction && heats.Any(h => book.Heat(h).Reduction == KilnReduction.Usual)
            ? heats.First(h => book.Heat(h).Reduction == KilnReduction.Usual)
            : heats[0];
        return new(heat, int.MaxValue, "14", new WordSet<Atmosphere>(Atmospheres.OfFirings), null);
    }

    /// <summary>True when a kiln is made for a firing, whatever is in it.</summary>
    public static bool CanFire(LoadBook book, Kiln kiln, Firing firing) =>
        firing.Needs.Heats.Has(kiln.Heat) && kiln.Atmospheres.Has(firing.Atmosphere) && firing.Cone.Order <= kiln.MaxOrder
        && !(firing.IsReduction && book.Heat(kiln.Heat).Reduction == KilnReduction.HarmsElements);
}
