namespace ConeService.Data;

/// <summary>
/// The register of limits hangs together: what took the place of a limit is another limit, and a day of checking stands
/// beside what was read, and only there.
/// </summary>
internal sealed class LimitRegisterRule : IPackageRule
{
    public IReadOnlyList<string> Reads => [TypedTables.ExposureLimits.Name, TypedTables.FoodContactLimits.Name];

    public IEnumerable<PackageFault> Check(PackageContent content) =>
    [
        .. Check(content.Rows(TypedTables.ExposureLimits), r => (r.Id, r.SupersededBy, r.CheckedOn, r.SeenVia)),
        .. Check(content.Rows(TypedTables.FoodContactLimits), r => (r.Id, r.SupersededBy, r.CheckedOn, r.SeenVia)),
    ];

    private static IEnumerable<PackageFault> Check<T>(
        IReadOnlyList<Located<T>> limits, Func<T, (string Id, string? SupersededBy, string? CheckedOn, SourceVia? SeenVia)> of)
    {
        foreach (var at in limits)
        {
            var (id, by, on, via) = of(at.Row);
            if (by == id)
                yield return at.Fault(
                    "superseded_by", FaultRules.LimitRegister, $"is '{by}', the limit itself; it must be the id of another");
            if (via is not null && on is null != via is SourceVia.Memory)
                yield return at.Fault("checked_on", FaultRules.LimitRegister, on is null
                    ? "is blank, but something was read"
                    : "stands beside a limit that was only recalled");
        }
    }
}
