namespace ConeService.Firing.Tests.Support;

/// <summary>The repository that the tests run in.</summary>
internal static class Repository
{
    /// <summary>Its root.</summary>
    public static string Root { get; } = Find();

    private static string Find()
    {
        var root = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(root.FullName, "ConeService.sln")))
        {
            root = root.Parent ?? throw new DirectoryNotFoundException("The tests run inside the repository.");
        }

        return root.FullName;
    }
}
