namespace ConeService.Data.Tests;

/// <summary>The files of the repository as they are committed, beside what is embedded.</summary>
internal static class Repository
{
    public static string Root { get; } = Find();

    public static string DataDirectory => Path.Combine(Root, "data");

    public static string Data(string file) => File.ReadAllText(Path.Combine(DataDirectory, file));

    /// <summary>The version of the package as committed.</summary>
    public static string Version => (string)System.Text.Json.Nodes.JsonNode.Parse(Data("datapackage.json"))!["version"]!;

    private static string Find()
    {
        var directory = new DirectoryInfo(AppContext.BaseDirectory);
        while (!File.Exists(Path.Combine(directory.FullName, "ConeService.sln")))
            directory = directory.Parent ?? throw new DirectoryNotFoundException("The tests run inside the repository.");
        return directory.FullName;
    }
}
