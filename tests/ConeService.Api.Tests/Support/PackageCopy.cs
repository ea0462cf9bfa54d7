using ConeService.Data;

namespace ConeService.Api.Tests.Support;

/// <summary>A copy of the reference package in a directory of its own, to be changed by a test.</summary>
internal sealed class PackageCopy : IDisposable
{
    public PackageCopy()
    {
        Directory = System.IO.Directory.CreateTempSubdirectory("cone-data-").FullName;
        foreach (var file in System.IO.Directory.EnumerateFiles(Path.Combine(AppContext.BaseDirectory, "data")))
            File.Copy(file, Path.Combine(Directory, Path.GetFileName(file)));
    }

    public string Directory { get; }

    /// <summary>Changes a file and seals the package anew, as a contributor does.</summary>
    public void Replace(string file, string what, string by)
    {
        Damage(file, what, by);
        File.WriteAllBytes(
            Path.Combine(Directory, "datapackage.json"), SealWriter.Write(PackageFiles.At(Directory)).Read("datapackage.json"));
    }

    /// <summary>Changes a file and leaves the seal as it was.</summary>
    public void Damage(string file, string what, string by)
    {
        var path = Path.Combine(Directory, file);
        var text = File.ReadAllText(path);
        Assert.Contains(what, text, StringComparison.Ordinal);
        File.WriteAllText(path, text.Replace(what, by, StringComparison.Ordinal));
    }

    public void Dispose() => System.IO.Directory.Delete(Directory, recursive: true);
}
