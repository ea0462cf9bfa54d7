namespace ConeService.Firing.Tests.Support;

/// <summary>The code of Firing as it is committed, for tests of what must not be written there.</summary>
internal static class SourceFiles
{
    /// <summary>Every C# file of a directory of src/ConeService.Firing.</summary>
    public static string[] Of(string directory)
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "ConeService.sln")))
            root = root.Parent ?? throw new DirectoryNotFoundException("The tests run inside the repository.");
        return Directory.GetFiles(Path.Combine(root.FullName, "src", "ConeService.Firing", directory), "*.cs", SearchOption.AllDirectories);
    }
}
