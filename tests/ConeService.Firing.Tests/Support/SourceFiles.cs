namespace ConeService.Firing.Tests.Support;

/// <summary>Files as they are committed, for tests of what must not be written there and of changed packages.</summary>
internal static class SourceFiles
{
    /// <summary>The directory of the repository.</summary>
    public static string Root { get; } = Find();

    /// <summary>Every C# file of a directory of src/ConeService.Firing.</summary>
    public static string[] Of(string directory) =>
        Directory.GetFiles(Path.Combine(Root, "src", "ConeService.Firing", directory), "*.cs", SearchOption.AllDirectories);

    private static string Find()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "ConeService.sln")))
            root = root.Parent ?? throw new DirectoryNotFoundException("The tests run inside the repository.");
        return root.FullName;
    }
}
