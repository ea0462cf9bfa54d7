namespace ConeService.Firing.Tests.Support;

/// <summary>Files as they are committed, for tests of what must not be written there and of changed packages.</summary>
internal static class SourceFiles
{
    /// <summary>Every C# file of a directory of src/ConeService.Firing.</summary>
    public static string[] Of(string directory) =>
        Directory.GetFiles(Path.Combine(Repository.Root, "src", "ConeService.Firing", directory), "*.cs", SearchOption.AllDirectories);
}
