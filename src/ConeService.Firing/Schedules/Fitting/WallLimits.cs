using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>A band of temperature with the rate that a wall allows in it.</summary>
/// <param name="Band">What happens in the ware.</param>
/// <param name="From">Lower end, °C.</param>
/// <param name="To">Upper end, °C.</param>
/// <param name="Rate">Greatest rate, °C/h.</param>
internal sealed record WallLimit(WaterBand Band, double From, double To, double Rate);

/// <summary>How fast a wall of a thickness may go, from the table thickness-limits; advice from practice, no promise.</summary>
internal static class WallLimits
{
    /// <summary>
    /// Limits while heating: of greenware every band, of fired ware the quartz inversion by the difference across the wall.
    /// </summary>
    public static List<WallLimit> Heating(ScheduleCatalogue catalogue, double thicknessMillimetres, bool greenware)
    {
        if (!greenware)
        {
            var rate = ThicknessLimit.Rate(catalogue.Default("fired-wall-difference"), thicknessMillimetres);
            return [new(WaterBand.BoundWater, 500, 650, rate)];
        }

        return [.. catalogue.Dataset.ThicknessLimits.Where(l => l.Band != WaterBand.CoolingInversion)
            .GroupBy(l => l.Band)
            .Select(g => Limit(g.Key, [.. g], thicknessMillimetres))
            .OrderBy(l => l.From)];
    }

    /// <summary>The limit while cooling through the quartz inversion; null for a wall too thin to need one.</summary>
    public static WallLimit? Cooling(ScheduleCatalogue catalogue, double? thicknessMillimetres)
    {
        if (thicknessMillimetres is not { } thickness || thickness < catalogue.Default("cooling-limit-thickness")) return null;
        var rows = catalogue.Dataset.ThicknessLimits.Where(l => l.Band == WaterBand.CoolingInversion).ToList();
        return rows.Count == 0 ? null : Limit(WaterBand.CoolingInversion, rows, thickness);
    }

    private static WallLimit Limit(WaterBand band, List<ThicknessLimitRow> rows, double thickness) =>
        new(band, (double)rows[0].FromCelsius, (double)rows[0].ToCelsius, Rate(rows, thickness));

    // Straight in ln rate against ln thickness between rows; beyond them with the inverse of the thickness.
    private static double Rate(List<ThicknessLimitRow> rows, double thickness)
    {
        var (first, last) = (rows[0], rows[^1]);
        if (thickness <= (double)first.ThicknessMillimetres)
            return (double)(first.RateCelsiusPerHour * first.ThicknessMillimetres) / thickness;
        if (thickness >= (double)last.ThicknessMillimetres)
            return (double)(last.RateCelsiusPerHour * last.ThicknessMillimetres) / thickness;
        var above = rows.FindIndex(r => (double)r.ThicknessMillimetres >= thickness);
        var (a, b) = (rows[above - 1], rows[above]);
        var share = Math.Log(thickness / (double)a.ThicknessMillimetres)
            / Math.Log((double)(b.ThicknessMillimetres / a.ThicknessMillimetres));
        return (double)a.RateCelsiusPerHour * Math.Pow((double)(b.RateCelsiusPerHour / a.RateCelsiusPerHour), share);
    }
}
