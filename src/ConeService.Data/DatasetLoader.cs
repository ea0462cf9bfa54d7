namespace ConeService.Data;

/// <summary>Reads a data package with its overlays and validates all of it before anything is used.</summary>
public static class DatasetLoader
{
    /// <summary>Loads the package that travels inside this assembly.</summary>
    /// <param name="overlayDirectories">Directories of a studio's own packages, in the order in which they are added.</param>
    /// <exception cref="InvalidPackageException">A package breaks rules; all faults found are listed.</exception>
    public static Dataset LoadEmbedded(IEnumerable<string>? overlayDirectories = null) =>
        Load(new EmbeddedPackageFiles(), Directories(overlayDirectories));

    /// <summary>Loads a package from a directory, in place of the embedded one.</summary>
    /// <param name="directory">The directory that holds <c>datapackage.json</c>.</param>
    /// <param name="overlayDirectories">Directories of a studio's own packages, in the order in which they are added.</param>
    /// <exception cref="InvalidPackageException">A package breaks rules or cannot be read; all faults found are listed.</exception>
    public static Dataset LoadDirectory(string directory, IEnumerable<string>? overlayDirectories = null) =>
        Load(new DirectoryPackageFiles(directory), Directories(overlayDirectories));

    /// <summary>Loads a package and its overlays from wherever their files are kept.</summary>
    /// <param name="package">The base package.</param>
    /// <param name="overlays">A studio's own packages, in the order in which they are added.</param>
    /// <exception cref="InvalidPackageException">A package breaks rules or cannot be read; all faults found are listed.</exception>
    public static Dataset Load(IPackageFiles package, IEnumerable<IPackageFiles>? overlays = null)
    {
        var faults = new List<PackageFault>();
        var basePackage = LoadedPackage.Read(package, isOverlay: false, faults);
        var loaded = (overlays ?? []).Select(o => LoadedPackage.Read(o, isOverlay: true, faults)).OfType<LoadedPackage>().ToList();
        if (basePackage is null)
            throw new InvalidPackageException(faults);
        var content = PackageValidator.Check(basePackage, loaded, faults);
        return faults.Count == 0 ? DatasetBuilder.Build(content) : throw new InvalidPackageException(InReadingOrder(faults));
    }

    private static List<PackageFault> InReadingOrder(List<PackageFault> faults)
    {
        var packages = faults.Select(f => f.Package).Distinct().ToList();
        return [.. faults.OrderBy(f => packages.IndexOf(f.Package)).ThenBy(f => f.File, StringComparer.Ordinal).ThenBy(f => f.Line ?? 0)];
    }

    private static IEnumerable<IPackageFiles> Directories(IEnumerable<string>? directories) =>
        (directories ?? []).Select(d => new DirectoryPackageFiles(d));
}
