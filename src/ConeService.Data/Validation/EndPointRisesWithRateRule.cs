using System.Globalization;

namespace ConeService.Data;

/// <summary>The faster a cone is heated, the hotter it is when it goes down.</summary>
internal sealed class EndPointRisesWithRateRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["end-points"];

    public IEnumerable<PackageFault> Check(PackageContent content) =>
        content.Rows(TypedTables.EndPoints)
            .Where(e => e.Row.RateCelsiusPerHour is not null)
            .GroupBy(e => (e.Row.Chart, e.Row.Cone))
            .SelectMany(g => RisingEndPoints.Check(
                g.OrderBy(e => e.Row.RateCelsiusPerHour), FaultRules.EndPointRisesWithRate,
                e => string.Create(CultureInfo.InvariantCulture, $"{e.RateCelsiusPerHour} °C/h")));
}
