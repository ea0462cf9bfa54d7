namespace ConeService.Data.Tests;

/// <summary>What was released under a version stays that: a changed cell needs a version of its own.</summary>
public sealed class ReleasedVersionTests
{
    private static readonly Version Now = Version.Parse(Repository.Version);

    public static TheoryData<string> Versions =>
        [.. Directory.GetFiles(Path.Combine(Repository.Root, "releases")).Select(f => Path.GetFileNameWithoutExtension(f).Split('-')[^1])];

    [Fact]
    public void No_released_version_is_later_than_the_package() =>
        Assert.All(Versions, v => Assert.True(Version.Parse(v.Data) <= Now, $"{v.Data} is released; the package says {Now}."));

    [Theory]
    [MemberData(nameof(Versions))]
    public void The_package_of_a_released_version_is_the_one_released(string version)
    {
        var released = DatasetLoader.Load(new ZipPackageFiles(ReleasedPackages.Path(version)));
        var current = DatasetLoader.LoadEmbedded();
        if (Version.Parse(version) == Now)
            Assert.Equal(released.Checksum, current.Checksum);
        else
            Assert.NotEqual(released.Checksum, current.Checksum);
    }

    // A patch corrects values: it brings no row and takes none.
    [Theory]
    [MemberData(nameof(Versions))]
    public void Between_versions_that_differ_in_their_patch_alone_no_row_comes_or_goes(string version)
    {
        var released = Version.Parse(version);
        if ((released.Major, released.Minor) != (Now.Major, Now.Minor))
        {
            Assert.True(released < Now);
            return;
        }

        Assert.Equal(Keys(DatasetLoader.Load(new ZipPackageFiles(ReleasedPackages.Path(version)))), Keys(DatasetLoader.LoadEmbedded()));
    }

    private static IEnumerable<string> Keys(Dataset dataset) => dataset.Tables.SelectMany(t => t.Rows.Select(r => $"{t.Name}/{r.Id}"));
}
