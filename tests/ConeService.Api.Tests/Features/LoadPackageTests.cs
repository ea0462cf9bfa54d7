using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

/// <summary>A package that lacks what the load check looks up is told of before it is used.</summary>
public sealed class LoadPackageTests
{
    [Fact]
    public async Task The_check_data_verb_names_file_field_and_id_that_the_load_check_misses()
    {
        using var package = new PackageCopy();
        foreach (var table in Directory.EnumerateFiles(package.Directory, "*.csv").Where(f => File.ReadAllText(f).Contains(OldRule)))
            package.Replace(Path.GetFileName(table), OldRule, "suspect-the-zero-last");

        var (exitCode, output) = await HostProcess.Run("check-data", package.Directory);

        Assert.Equal(1, exitCode);
        Assert.Contains("load-rules.csv, field id: has no row 'suspect-the-zero-first'", output, StringComparison.Ordinal);
        Assert.Contains("(rule needed-by-computation)", output, StringComparison.Ordinal);
    }

    private const string OldRule = "suspect-the-zero-first";
}
