using System.Globalization;

namespace ConeService.Data;

/// <summary>Within a band a thicker wall never goes faster, and all rows of a band state the same band.</summary>
internal sealed class ThicknessLimitRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["thickness-limits"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var rows = content.Rows(TypedTables.ThicknessLimits);
        foreach (var (above, at) in rows.Zip(rows.Skip(1)).Where(p => p.First.Row.Band == p.Second.Row.Band))
        {
            if (at.Row.RateCelsiusPerHour > above.Row.RateCelsiusPerHour)
                yield return at.Fault("rate_celsius_per_hour", FaultRules.ThicknessLimit,
                    string.Create(CultureInfo.InvariantCulture,
                    $"is {at.Row.RateCelsiusPerHour}; it must not exceed {above.Row.RateCelsiusPerHour}, the rate of a thinner wall"));
            if ((at.Row.FromCelsius, at.Row.ToCelsius) != (above.Row.FromCelsius, above.Row.ToCelsius))
                yield return at.Fault("from_celsius", FaultRules.ThicknessLimit,
                    "and to_celsius must be those of the row above: a band has one span");
        }
    }
}
