namespace ConeService.Data;

/// <summary>A version nobody wrote a line about tells a reader nothing; the newest heading must be the version.</summary>
internal sealed class VersionInChangelogRule : IPackageRule
{
    public IReadOnlyList<string> Reads => [];

    public IEnumerable<PackageFault> Check(PackageContent content) => content.Packages.Select(Check).OfType<PackageFault>();

    private static PackageFault? Check(LoadedPackage package)
    {
        PackageFault Fault(string file, int? line, string? field, string reason) =>
            new(package.Name, file, line, field, FaultRules.VersionInChangelog, reason);

        var version = package.Descriptor.Version;
        if (!SemVer.IsVersion(version))
            return Fault(PackageDescriptor.FileName, null, "version",
                $"is '{version}'; it must be a semantic version such as 1.2.0, without a build part");
        if (package.ChangeLog is null)
            return null;

        var lines = package.ChangeLog.Split('\n');
        for (var i = 0; i < lines.Length; i++)
        {
            if (SemVer.OfHeading(lines[i]) is { } newest)
                return newest == version ? null
                    : Fault(LoadedPackage.ChangeLogFile, i + 1, null,
                    $"the newest heading is {newest}; it must be the version of datapackage.json, {version}");
        }

        return Fault(LoadedPackage.ChangeLogFile, null, null, $"has no heading of the form '## {version}'");
    }
}
