namespace ConeService.Firing.Tests.Support;

/// <summary>The code of Firing as it is committed, for tests of what must not be written there.</summary>
internal static class SourceFiles
{
    /// <summary>Every C# file of a directory of src/ConeService.Firing.</summary>
    public static string[] Of(string directory) =>
        Directory.GetFiles(Path.Combine(Repository.Root, "src", "ConeService.Firing", directory), "*.cs", SearchOption.AllDirectories);
}
