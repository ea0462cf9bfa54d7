
namespace ConeService.Data.Tests;

public sealed class DirectoryTests
{
    [Fact]
    public void A_directory_that_is_not_there_is_a_fault_and_not_a_crash()
    {
        var missing = Path.Combine(Path.GetTempPath(), "cone-service-not-there");

        var fault = Assert.Single(Assert.Throws<InvalidPackageException>(() => DatasetLoader.LoadPath(missing)).Faults);

        Assert.Equal((FaultRules.UnreadableFile, "."), (fault.Rule, fault.File));
        Assert.Contains(missing, fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void Hidden_files_and_directories_are_no_part_of_a_package()
    {
        using var directory = TemporaryDirectory.With(MinimalPackage.Create());
        var before = DatasetLoader.LoadPath(directory.Path).Checksum;
        Directory.CreateDirectory(Path.Combine(directory.Path, "..data"));
        File.WriteAllText(Path.Combine(directory.Path, "..data", "charts.csv"), "");
        File.WriteAllText(Path.Combine(directory.Path, ".charts.csv.csv"), "");

        Assert.Equal(before, DatasetLoader.LoadPath(directory.Path).Checksum);
    }

    [Fact]
    public void A_table_in_a_directory_below_must_be_described_too()
    {
        using var directory = TemporaryDirectory.With(MinimalPackage.Create());
        Directory.CreateDirectory(Path.Combine(directory.Path, "old"));
        File.WriteAllText(Path.Combine(directory.Path, "old", "charts.csv"), "");

        var fault = Assert.Single(Assert.Throws<InvalidPackageException>(() => DatasetLoader.LoadPath(directory.Path)).Faults);

        Assert.Equal((FaultRules.UnlistedFile, "old/charts.csv"), (fault.Rule, fault.File));
    }
}
