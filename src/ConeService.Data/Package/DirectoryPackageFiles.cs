namespace ConeService.Data;

/// <summary>
/// A package in a directory. Hidden files and directories (names with a leading dot) are not part of it:
/// editors and container mounts keep their own copies there.
/// </summary>
/// <param name="directory">The directory that holds <c>datapackage.json</c>.</param>
public sealed class DirectoryPackageFiles(string directory) : IPackageFiles
{
    private static readonly EnumerationOptions Everything = new() { RecurseSubdirectories = true, AttributesToSkip = 0 };

    /// <inheritdoc />
    public string Label => directory;

    /// <inheritdoc />
    public IReadOnlyCollection<string> List()
    {
        if (!Directory.Exists(directory))
            throw new DirectoryNotFoundException($"There is no directory '{directory}'.");
        return [.. Directory.EnumerateFiles(directory, "*", Everything)
            .Select(path => Path.GetRelativePath(directory, path).Replace(Path.DirectorySeparatorChar, '/'))
            .Where(name => !PackageFiles.IsHidden(name))];
    }

    /// <inheritdoc />
    public byte[] Read(string name) => File.ReadAllBytes(Path.Combine(directory, name));
}
