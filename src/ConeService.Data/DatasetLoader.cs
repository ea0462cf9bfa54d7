namespace ConeService.Data;

/// <summary>
/// What a caller needs of a package beyond the package's own rules, such as a row that it looks up by name. Asked once the package
/// is otherwise valid; what it returns is reported like any other fault.
/// </summary>
/// <param name="dataset">The package; <see cref="Dataset.Fault"/> makes faults of its tables.</param>
public delegate IEnumerable<PackageFault> PackageRequirement(Dataset dataset);

/// <summary>Reads a data package with its overlays and validates all of it before anything is used.</summary>
public static class DatasetLoader
{
    /// <summary>Loads the package that travels inside this assembly.</summary>
    /// <param name="overlays">Paths of a studio's own packages, in the order in which they are added.</param>
    /// <param name="requirements">What the caller needs beyond the package's own rules.</param>
    /// <exception cref="InvalidPackageException">A package breaks rules; all faults found are listed.</exception>
    public static Dataset LoadEmbedded(IEnumerable<string>? overlays = null, IReadOnlyList<PackageRequirement>? requirements = null) =>
        Load(new EmbeddedPackageFiles(), (overlays ?? []).Select(PackageFiles.At), requirements);

    /// <summary>
    /// Loads the package that travels inside this assembly as it was sealed: that its bytes are those is seen to, and the rules, which
    /// they were held against before, are not gone through again. For programs that must be there at once.
    /// </summary>
    /// <exception cref="InvalidPackageException">Its bytes are not those that were sealed; all faults found are listed.</exception>
    public static Dataset LoadSealed() => Load(new EmbeddedPackageFiles(), [], [], againstRules: false);

    /// <summary>Loads a package from a directory or a ZIP archive, in place of the embedded one.</summary>
    /// <param name="path">The directory that holds <c>datapackage.json</c>, or the archive that holds it at its root.</param>
    /// <param name="overlays">Paths of a studio's own packages, in the order in which they are added.</param>
    /// <param name="requirements">What the caller needs beyond the package's own rules.</param>
    /// <exception cref="InvalidPackageException">A package breaks rules or cannot be read; all faults found are listed.</exception>
    public static Dataset LoadPath(
        string path, IEnumerable<string>? overlays = null, IReadOnlyList<PackageRequirement>? requirements = null) =>
        Load(PackageFiles.At(path), (overlays ?? []).Select(PackageFiles.At), requirements);

    /// <summary>Loads the package that the options name.</summary>
    /// <param name="options">Which package, with which overlays.</param>
    /// <param name="requirements">What the caller needs beyond the package's own rules.</param>
    /// <exception cref="InvalidPackageException">A package breaks rules or cannot be read; all faults found are listed.</exception>
    public static Dataset Load(DatasetOptions options, IReadOnlyList<PackageRequirement>? requirements = null) =>
        string.IsNullOrWhiteSpace(options.Path)
            ? LoadEmbedded(options.Overlays, requirements)
            : LoadPath(options.Path, options.Overlays, requirements);

    /// <summary>Loads a package and its overlays from wherever their files are kept.</summary>
    /// <param name="package">The base package.</param>
    /// <param name="overlays">A studio's own packages, in the order in which they are added.</param>
    /// <param name="requirements">What the caller needs beyond the package's own rules.</param>
    /// <exception cref="InvalidPackageException">A package breaks rules or cannot be read; all faults found are listed.</exception>
    public static Dataset Load(
        IPackageFiles package, IEnumerable<IPackageFiles>? overlays = null, IReadOnlyList<PackageRequirement>? requirements = null) =>
        Load(package, overlays ?? [], requirements ?? [], againstRules: true);

    private static Dataset Load(
        IPackageFiles package, IEnumerable<IPackageFiles> overlays, IReadOnlyList<PackageRequirement> requirements, bool againstRules)
    {
        var faults = new List<PackageFault>();
        var basePackage = LoadedPackage.Read(package, isOverlay: false, faults);
        var loaded = overlays.Select(o => LoadedPackage.Read(o, isOverlay: true, faults)).OfType<LoadedPackage>().ToList();
        // Of files that are not those that were sealed nothing more is said: the rows may be anybody's.
        if (basePackage is null || faults.Exists(f => f.Rule == FaultRules.Seal))
            throw new InvalidPackageException(InReadingOrder(faults));
        var content = PackageValidator.Check(basePackage, loaded, faults, againstRules);
        ThrowAny(faults);
        var dataset = DatasetBuilder.Build(content);
        ThrowAny([.. requirements.SelectMany(r => r(dataset))]);
        return dataset;
    }

    private static void ThrowAny(List<PackageFault> faults)
    {
        if (faults.Count > 0)
            throw new InvalidPackageException(InReadingOrder(faults));
    }

    private static List<PackageFault> InReadingOrder(List<PackageFault> faults)
    {
        var packages = faults.Select(f => f.Package).Distinct().ToList();
        return [.. faults.OrderBy(f => packages.IndexOf(f.Package)).ThenBy(f => f.File, StringComparer.Ordinal).ThenBy(f => f.Line ?? 0)];
    }
}
