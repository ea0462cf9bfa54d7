namespace ConeService.Data;

/// <summary>A range runs from its lower to its upper end: percentages, temperatures, cones, hours.</summary>
internal sealed class RangeOrderRule : IPackageRule
{
    public IReadOnlyList<string> Reads =>
        ["cones", "base-glazes", "colour-notes", "colour-rule-ingredients", "landmarks", "processes", "process-additions",
        "temperature-limits", "absorption-classes", "gas-releases", "thermocouple-ageing"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var cones = content.Rows(TypedTables.Cones).ToDictionary(c => c.Row.Id, c => c.Row.Position, StringComparer.Ordinal);
        decimal? Cone(string? id) => id is null ? null : cones[id];
        return
        [
            .. Ranges(content, TypedTables.AbsorptionClasses, "percent_to", r => (r.PercentAbove, r.PercentTo)),
            .. Ranges(content, TypedTables.BaseGlazes, "cone_max", r => (Cone(r.ConeMin), Cone(r.ConeMax))),
            .. Ranges(content, TypedTables.ColourNotes, "percent_max", r => (r.PercentMin, r.PercentMax)),
            .. Ranges(content, TypedTables.ColourRuleIngredients, "percent_max", r => (r.PercentMin, r.PercentMax)),
            .. Ranges(content, TypedTables.GasReleases, "celsius_high", r => (r.CelsiusLow, r.CelsiusHigh)),
            .. Ranges(content, TypedTables.Landmarks, "celsius_high", r => (r.CelsiusLow, r.CelsiusHigh)),
            .. Ranges(content, TypedTables.Processes, "cone_max", r => (Cone(r.ConeMin), Cone(r.ConeMax))),
            .. Ranges(content, TypedTables.Processes, "firings_max", r => (r.FiringsMin, r.FiringsMax)),
            .. Ranges(content, TypedTables.Processes, "duration_hours_max", r => (r.DurationHoursMin, r.DurationHoursMax)),
            .. Ranges(content, TypedTables.ProcessAdditions, "cone_high", r => (Cone(r.ConeLow), Cone(r.ConeHigh))),
            .. Ranges(content, TypedTables.ProcessAdditions, "celsius_high", r => (r.CelsiusLow, r.CelsiusHigh)),
            .. Ranges(content, TypedTables.TemperatureLimits, "cone_high", r => (Cone(r.ConeLow), Cone(r.ConeHigh))),
            .. Ranges(content, TypedTables.TemperatureLimits, "celsius_high", r => (r.CelsiusLow, r.CelsiusHigh)),
            .. Ranges(content, TypedTables.ThermocoupleAgeing, "celsius_high", r => (r.CelsiusLow, r.CelsiusHigh)),
        ];
    }

    private static IEnumerable<PackageFault> Ranges<T>(PackageContent content, TypedTable<T> table, string field, Func<T,
        (decimal? Low, decimal? High)> range) =>
        content.Rows(table).Where(at => range(at.Row) is var (low, high) && low > high)
            .Select(at => at.Fault(field, FaultRules.RangeOrder, "lies below the lower end of its range"));
}
