using System.Runtime.CompilerServices;

namespace ConeService.Planning.Tests.Solver;

/// <summary>The native solver is known to one folder only.</summary>
public sealed class SolverFolderTests
{
    [Fact]
    public void No_type_of_the_solver_is_named_outside_its_folder()
    {
        var planning = Path.Combine(Root(), "src", "ConeService.Planning");
        var sources = Directory.EnumerateFiles(planning, "*.cs", SearchOption.AllDirectories)
            .Where(f => !f.Contains($"{Path.DirectorySeparatorChar}obj{Path.DirectorySeparatorChar}", StringComparison.Ordinal)).ToList();
        var naming = sources.Where(f => File.ReadAllText(f).Contains("OrTools", StringComparison.Ordinal)).ToList();

        Assert.NotEmpty(naming);
        Assert.All(naming, f => Assert.Equal("Solver", Path.GetFileName(Path.GetDirectoryName(f))));
    }

    private static string Root([CallerFilePath] string file = "") =>
        Path.GetFullPath(Path.Combine(Path.GetDirectoryName(file)!, "..", "..", ".."));
}
