namespace ConeService.Planning.Tests.Support;

/// <summary>The repository that the tests run in.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    private static string Find()
    {
        var directory = new DirectoryInfo(AppContext.BaseDirectory);
        while (directory is not null && !File.Exists(Path.Combine(directory.FullName, "ConeService.sln"))) directory = directory.Parent;
        return directory?.FullName ?? throw new InvalidOperationException("The tests run outside the repository.");
    }
}
