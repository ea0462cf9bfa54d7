namespace ConeService.Data;

/// <summary>A package whose descriptor is sound: its files, its schemas and its change log.</summary>
internal sealed record LoadedPackage(PackageSnapshot Snapshot, PackageDescriptor Descriptor, bool IsOverlay, string? ChangeLog)
{
    public const string ChangeLogFile = "CHANGELOG.md";

    private static readonly WeakReference<ReadPackage?> Kept = new(null);

    public string Name => Descriptor.Name;

    /// <summary>Whether it travels inside this assembly.</summary>
    public bool IsEmbedded { get; init; }

    /// <summary>Null when the package has no sound descriptor.</summary>
    public static LoadedPackage? Read(IPackageFiles files, bool isOverlay, List<PackageFault> faults)
    {
        if (files is not EmbeddedPackageFiles || isOverlay)
            return ReadAnew(files, isOverlay, faults);
        var embedded = Embedded();
        faults.AddRange(embedded.Faults);
        return embedded.Package;
    }

    // Its bytes never change, and a start asks for them three times: the package, and by themselves its sentences and its old ids.
    // They are let go when nobody reads any more.
    private static ReadPackage Embedded()
    {
        lock (Kept)
        {
            if (Kept.TryGetTarget(out var read))
                return read;
            var faults = new List<PackageFault>();
            var package = ReadAnew(new EmbeddedPackageFiles(), isOverlay: false, faults);
            Kept.SetTarget(read = new(package is null ? null : package with { IsEmbedded = true }, faults));
            return read;
        }
    }

    private static LoadedPackage? ReadAnew(IPackageFiles files, bool isOverlay, List<PackageFault> faults)
    {
        if (PackageSnapshot.Take(files, faults) is not { } snapshot)
            return null;
        if (DescriptorReader.Read(snapshot, isOverlay, faults) is not { } descriptor)
            return null;
        Unlisted(snapshot, descriptor, faults);
        SealCheck.Run(snapshot, descriptor, isOverlay, faults);
        return new LoadedPackage(snapshot, descriptor, isOverlay, ReadChangeLog(snapshot, descriptor, isOverlay, faults));
    }

    // A table that nobody described would be data that nobody checks.
    private static void Unlisted(PackageSnapshot snapshot, PackageDescriptor descriptor, List<PackageFault> faults)
    {
        foreach (var name in snapshot.Files.Keys.Where(n => n.EndsWith(".csv", StringComparison.OrdinalIgnoreCase)))
        {
            if (!descriptor.Tables.Any(t => t.Path == name))
                faults.Add(new PackageFault(descriptor.Name, name, null, null, FaultRules.UnlistedFile,
                    "is not described in datapackage.json; describe it or take it away"));
        }
    }

    private static string? ReadChangeLog(PackageSnapshot snapshot, PackageDescriptor descriptor, bool isOverlay, List<PackageFault> faults)
    {
        if (snapshot.Files.TryGetValue(ChangeLogFile, out var bytes))
            return TextFile.Read(bytes, (line, rule, reason) =>
                faults.Add(new PackageFault(descriptor.Name, ChangeLogFile, line, null, rule, reason)));
        if (!isOverlay && !snapshot.IsUnreadable(ChangeLogFile))
            faults.Add(new PackageFault(descriptor.Name, ChangeLogFile, null, null, FaultRules.MissingFile,
                "is missing; a package says what changed"));
        return null;
    }

    private sealed record ReadPackage(LoadedPackage? Package, IReadOnlyList<PackageFault> Faults);
}
