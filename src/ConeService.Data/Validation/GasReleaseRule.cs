namespace ConeService.Data;

/// <summary>
/// One thing is told with one temperature: a release of gas has the band of the landmark, and begins at the limit, that it names.
/// </summary>
internal sealed class GasReleaseRule : IPackageRule
{
    public IReadOnlyList<string> Reads => ["gas-releases", "landmarks", "temperature-limits"];

    public IEnumerable<PackageFault> Check(PackageContent content)
    {
        var landmarks = content.Rows(TypedTables.Landmarks).ToDictionary(l => l.Row.Id, l => l.Row, StringComparer.Ordinal);
        var limits = content.Rows(TypedTables.TemperatureLimits).ToDictionary(l => l.Row.Id, l => l.Row, StringComparer.Ordinal);
        foreach (var at in content.Rows(TypedTables.GasReleases))
        {
            var (low, high) = (at.Row.CelsiusLow, at.Row.CelsiusHigh);
            if (at.Row.Landmark is { } landmark && landmarks[landmark] is var told && (told.CelsiusLow, told.CelsiusHigh) != (low, high))
                yield return at.Fault("landmark", FaultRules.GasRelease,
                    FormattableString.Invariant($"tells of {told.CelsiusLow} to {told.CelsiusHigh} °C; this row must too"));
            if (at.Row.Limit is { } limit && limits[limit].CelsiusLow is var begins && begins != low)
                yield return at.Fault("limit", FaultRules.GasRelease,
                    FormattableString.Invariant($"begins at {begins} °C; this row must too"));
        }
    }
}
