using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Schedules.Fitting;

/// <summary>What a limit on a rate is for.</summary>
internal enum LimitPurpose
{
    /// <summary>Free water leaves without steaming.</summary>
    Drying,

    /// <summary>Steam finds its way out of the wall.</summary>
    Steam,

    /// <summary>Bound water leaves.</summary>
    BoundWater,

    /// <summary>Carbon and sulphur burn before the body closes.</summary>
    BurnOut,

    /// <summary>The wall passes the quartz inversion nearly as one.</summary>
    Quartz,
}

/// <summary>A band of temperature with the rate that a wall allows in it.</summary>
/// <param name="Purpose">What going slowly buys.</param>
/// <param name="From">Lower end, °C.</param>
/// <param name="To">Upper end, °C.</param>
/// <param name="Rate">Greatest rate, °C/h.</param>
internal sealed record WallLimit(LimitPurpose Purpose, double From, double To, double Rate);

/// <summary>
/// How fast a wall may go, from the tables thickness-limits and landmarks; advice from practice, no promise. Steam and burn-out limit
/// every wall, where the landmarks say that they happen; elsewhere only thick walls are held back (docs/schedules.md).
/// </summary>
internal static class WallLimits
{
    // Of packages without the landmarks; their usual figures.
    private const double FreeWaterGone = 120;
    private const double BurnOutFrom = 700;
    private const double BurnOutTo = 950;
    private const double BoundWaterRate = 100;
    private const double SlowFrom = 500;
    private const double SlowTo = 650;
    private const double FlatCoolingRate = 50;

    /// <summary>
    /// Limits while heating: of greenware by band, of fired ware the quartz inversion by the difference across the wall.
    /// </summary>
    /// <param name="catalogue">The tables.</param>
    /// <param name="thicknessMillimetres">Thickness of a wall heated from both sides, mm.</param>
    /// <param name="greenware">True for ware that was never fired.</param>
    public static List<WallLimit> Heating(ScheduleCatalogue catalogue, double thicknessMillimetres, bool greenware)
    {
        if (!greenware)
        {
            var (from, to) = SlowSpan(catalogue.Dataset);
            var rate = ThicknessLimit.Rate(catalogue.Default("fired-wall-difference"), thicknessMillimetres);
            return [new(LimitPurpose.Quartz, from, to, rate)];
        }

        return [.. catalogue.Dataset.ThicknessLimits.Where(l => l.Band != WaterBand.CoolingInversion)
            .GroupBy(l => l.Band)
            .SelectMany(g => Of(catalogue, g.Key, [.. g], thicknessMillimetres))
            .Where(l => l.To > l.From)
            .OrderBy(l => l.From)];
    }

    /// <summary>Flatware goes slowly through the quartz inversion, however thin: at most as fast as thick ware.</summary>
    public static WallLimit FlatHeating(ScheduleCatalogue catalogue)
    {
        var (from, to) = SlowSpan(catalogue.Dataset);
        return new(LimitPurpose.Quartz, from, to, BoundWater(catalogue.Dataset));
    }

    /// <summary>The limit while cooling through the quartz inversion; null for a wall too thin to need one.</summary>
    /// <param name="catalogue">The tables.</param>
    /// <param name="thicknessMillimetres">Thickness of a wall heated from both sides, mm; null when nothing is known.</param>
    /// <param name="flat">True for flatware.</param>
    public static WallLimit? Cooling(ScheduleCatalogue catalogue, double? thicknessMillimetres, bool flat)
    {
        var rows = catalogue.Dataset.ThicknessLimits.Where(l => l.Band == WaterBand.CoolingInversion).ToList();
        var byWall = rows.Count > 0 && thicknessMillimetres is { } thickness && thickness >= catalogue.Default("cooling-limit-thickness")
            ? new WallLimit(LimitPurpose.Quartz, (double)rows[0].FromCelsius, (double)rows[0].ToCelsius, Rate(rows, thickness))
            : null;
        if (!flat) return byWall;
        var (from, to) = SlowSpan(catalogue.Dataset);
        var rate = (double?)Landmark(catalogue.Dataset, "quartz-down")?.RateLowCelsiusPerHour ?? FlatCoolingRate;
        return byWall?.Rate < rate ? byWall : new(LimitPurpose.Quartz, from, to, rate);
    }

    private static IEnumerable<WallLimit> Of(ScheduleCatalogue catalogue, WaterBand band, List<ThicknessLimitRow> rows, double thickness)
    {
        var (from, to) = ((double)rows[0].FromCelsius, (double)rows[0].ToCelsius);
        var (rate, eased) = (Rate(rows, thickness), Eased(catalogue, rows, thickness));
        var burnOut = Landmark(catalogue.Dataset, "carbon-sulphur");
        switch (band)
        {
            case WaterBand.Drying:
                yield return new(LimitPurpose.Drying, from, to, rate);
                break;
            case WaterBand.Steam:
                var gone = Math.Clamp((double?)Landmark(catalogue.Dataset, "free-water")?.CelsiusHigh ?? FreeWaterGone, from, to);
                yield return new(LimitPurpose.Steam, from, gone, rate);
                yield return new(LimitPurpose.Steam, gone, to, eased);
                break;
            case WaterBand.BoundWater:
                yield return new(LimitPurpose.BoundWater, from, to, Math.Max(rate, Math.Min(eased, BoundWater(catalogue.Dataset))));
                break;
            default:
                var start = Math.Max(from, (double?)burnOut?.CelsiusLow ?? BurnOutFrom);
                yield return new(LimitPurpose.BurnOut, from, start, eased);
                yield return new(LimitPurpose.BurnOut, start, (double?)burnOut?.CelsiusHigh ?? BurnOutTo, rate);
                break;
        }
    }

    // Where neither steam nor burn-out limits: the rate of thin ware up to the wall that dries as thin ware does, the table's from the
    // wall on that counts as thick, straight in ln rate against ln thickness between.
    private static double Eased(ScheduleCatalogue catalogue, List<ThicknessLimitRow> rows, double thickness)
    {
        var (thin, thick) = (catalogue.Default("drying-thickness"), catalogue.Default("cooling-limit-thickness"));
        if (thickness >= thick) return Rate(rows, thickness);
        var fast = Math.Max((double)rows[0].RateCelsiusPerHour, Rate(rows, thickness));
        if (thickness <= thin) return fast;
        var share = Math.Log(thickness / thin) / Math.Log(thick / thin);
        return fast * Math.Pow(Rate(rows, thick) / fast, share);
    }

    private static double BoundWater(Dataset dataset) =>
        (double?)Landmark(dataset, "bound-water-kaolin")?.RateHighCelsiusPerHour ?? BoundWaterRate;

    private static (double From, double To) SlowSpan(Dataset dataset) =>
        Landmark(dataset, "quartz-up") is { SlowFromCelsius: { } from, SlowToCelsius: { } to }
            ? ((double)from, (double)to)
            : (SlowFrom, SlowTo);

    private static LandmarkRow? Landmark(Dataset dataset, string id) => dataset.Landmarks.FirstOrDefault(l => l.Id == id);

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
