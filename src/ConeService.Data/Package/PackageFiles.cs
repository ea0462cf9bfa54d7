namespace ConeService.Data;

/// <summary>Where a package named by a path is kept.</summary>
public static class PackageFiles
{
    /// <summary>The package at a path: the ZIP archive when the path is a file or ends in <c>.zip</c>, else the directory.</summary>
    /// <param name="path">A directory that holds <c>datapackage.json</c>, or a ZIP archive with it at its root.</param>
    public static IPackageFiles At(string path) => IsArchive(path) ? new ZipPackageFiles(path) : new DirectoryPackageFiles(path);

    internal static bool IsArchive(string path) =>
        !Directory.Exists(path) && (File.Exists(path) || path.EndsWith(".zip", StringComparison.OrdinalIgnoreCase));

    /// <summary>
    /// Whether a file is no part of a package: editors and container mounts keep their own copies under names with a leading dot.
    /// </summary>
    /// <param name="name">Name relative to the package, parts separated by <c>/</c>.</param>
    internal static bool IsHidden(string name) => name.Split('/').Any(part => part.StartsWith('.'));
}
