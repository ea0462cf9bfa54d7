namespace ConeService.Data.Tests;

/// <summary>A directory of its own for one test, removed afterwards.</summary>
internal sealed class TemporaryDirectory : IDisposable
{
    public string Path { get; } = Directory.CreateTempSubdirectory("cone-service-").FullName;

    public static TemporaryDirectory With(InMemoryPackage package)
    {
        var directory = new TemporaryDirectory();
        foreach (var name in package.List())
            File.WriteAllBytes(System.IO.Path.Combine(directory.Path, name), package.Read(name));
        return directory;
    }

    public void Put(InMemoryPackage package, string file) =>
        File.WriteAllBytes(System.IO.Path.Combine(Path, file), package.Read(file));

    public void Dispose() => Directory.Delete(Path, recursive: true);
}
