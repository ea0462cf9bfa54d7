using System.IO.Compression;

namespace ConeService.Data.Tests;

public sealed class ZipTests : IDisposable
{
    private readonly TemporaryDirectory _directory = new();

    private string Archive => Path.Combine(_directory.Path, "package.zip");

    public void Dispose() => _directory.Dispose();

    [Fact]
    public void An_archive_gives_the_package_that_its_files_give()
    {
        ReleasedPackages.Zip(MinimalPackage.Create(), Archive);

        Assert.Equal(new Scenario().Load().Checksum, DatasetLoader.LoadPath(Archive).Checksum);
    }

    [Fact]
    public void Hidden_files_and_directories_are_no_part_of_it()
    {
        var package = MinimalPackage.Create();
        package.Put(".cache/charts.csv", "");
        package.Put(".charts.csv.csv", "");
        ReleasedPackages.Zip(package, Archive);
        using (var zip = ZipFile.Open(Archive, ZipArchiveMode.Update))
            zip.CreateEntry("notes/");

        Assert.Equal(new Scenario().Load().Checksum, DatasetLoader.LoadPath(Archive).Checksum);
    }

    [Fact]
    public void A_file_that_is_no_archive_is_a_fault_and_not_a_crash()
    {
        File.WriteAllText(Archive, "id,kind\n");

        AssertUnreadable("is no sound ZIP archive");
    }

    [Fact]
    public void A_file_that_stands_twice_in_an_archive_is_a_fault()
    {
        using (var zip = ZipFile.Open(Archive, ZipArchiveMode.Create))
        {
            zip.CreateEntry("charts.csv");
            zip.CreateEntry("charts.csv");
        }

        AssertUnreadable("it holds 'charts.csv' twice");
    }

    [Fact]
    public void An_archive_that_is_not_there_is_a_fault() => AssertUnreadable("package.zip");

    [Fact]
    public void A_file_that_the_archive_does_not_hold_cannot_be_read()
    {
        ReleasedPackages.Zip(MinimalPackage.Create(), Archive);

        Assert.Equal("books.csv", Assert.Throws<FileNotFoundException>(() => new ZipPackageFiles(Archive).Read("books.csv")).FileName);
    }

    private void AssertUnreadable(string reason)
    {
        var fault = Assert.Single(Assert.Throws<InvalidPackageException>(() => DatasetLoader.LoadPath(Archive)).Faults);

        Assert.Equal((FaultRules.UnreadableFile, "."), (fault.Rule, fault.File));
        Assert.Contains(reason, fault.Reason, StringComparison.Ordinal);
    }
}
