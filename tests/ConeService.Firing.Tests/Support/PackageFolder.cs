using ConeService.Data;

namespace ConeService.Firing.Tests.Support;

/// <summary>A copy of the data package in a directory of its own, to be broken in one place.</summary>
internal sealed class PackageFolder : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("cone-package-");

    private PackageFolder()
    {
    }

    /// <summary>A copy of today's package.</summary>
    public static PackageFolder Copy()
    {
        var copy = new PackageFolder();
        foreach (var file in Directory.EnumerateFiles(Path.Combine(Repository.Root, "data")))
        {
            File.Copy(file, Path.Combine(copy.directory.FullName, Path.GetFileName(file)));
        }

        return copy;
    }

    /// <summary>The archive of an earlier version.</summary>
    public static string Archive(string version) =>
        Directory.EnumerateFiles(Path.Combine(Repository.Root, "tests"), $"*{version}*.zip", SearchOption.AllDirectories)
            .First(f => !f.Contains($"{Path.DirectorySeparatorChar}bin{Path.DirectorySeparatorChar}", StringComparison.Ordinal));

    /// <summary>Changes the text of a file.</summary>
    public void Edit(string file, Func<string, string> change)
    {
        var path = Path.Combine(directory.FullName, file);
        var (before, after) = (File.ReadAllText(path), change(File.ReadAllText(path)));
        Assert.NotEqual(before, after);
        File.WriteAllText(path, after);
    }

    /// <summary>Leaves out the lines that a test picks.</summary>
    public void Drop(string file, Func<string, bool> which) =>
        Edit(file, text => string.Join('\n', text.Split('\n').Where(line => !which(line))));

    /// <summary>Everything found wrong, by the package's own rules and by the computations.</summary>
    public IReadOnlyList<PackageFault> Faults() =>
        Assert.Throws<InvalidPackageException>(() => DatasetLoader.LoadPath(directory.FullName, requirements: [FiringReference.Faults])).Faults;

    public void Dispose() => directory.Delete(recursive: true);
}
