using System.Text;

namespace ConeService.Data.Tests;

/// <summary>The embedded package opened as it was sealed, without going through its rules again.</summary>
public sealed class SealedPackageTests
{
    private static readonly Dataset Checked = DatasetLoader.LoadEmbedded();
    private static readonly Dataset Sealed = DatasetLoader.LoadSealed();

    [Fact]
    public void It_is_the_same_package()
    {
        Assert.Equal(Checked.VersionId, Sealed.VersionId);
        Assert.Equal(Checked.Checksum, Sealed.Checksum);
        Assert.Equal(Checked.ChangeLog, Sealed.ChangeLog);
        Assert.Equal(Checked.Resources, Sealed.Resources);
    }

    [Fact]
    public void Every_row_is_the_same_with_its_corrections_and_renamings() => Assert.Equal(
        Encoding.UTF8.GetString(PackageJsonWriter.Write(Checked)), Encoding.UTF8.GetString(PackageJsonWriter.Write(Sealed)));
}
