namespace ConeService.Data;

/// <summary>A rule on the meaning of the rows, beyond what datapackage.json can say.</summary>
internal interface IPackageRule
{
    /// <summary>Tables the rule reads; it is not run while one of them has faults, which would only cast shadows.</summary>
    IReadOnlyList<string> Reads { get; }

    IEnumerable<PackageFault> Check(PackageContent content);
}
