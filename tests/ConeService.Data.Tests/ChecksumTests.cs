using System.Security.Cryptography;
using System.Text;

namespace ConeService.Data.Tests;

/// <summary>Checksums computed here from the bytes on disk, as two runs of sha256sum would.</summary>
public sealed class ChecksumTests
{
    [Fact]
    public void A_table_has_the_checksum_of_its_file() => Assert.All(DatasetLoader.LoadEmbedded().Resources, r =>
        Assert.Equal(Sha256(File.ReadAllBytes(Path.Combine(Repository.DataDirectory, r.Path))), r.Sha256));

    [Fact]
    public void The_package_has_the_checksum_of_its_checksum_list() =>
        Assert.Equal(Sha256(Encoding.UTF8.GetBytes(List(Repository.DataDirectory))), DatasetLoader.LoadEmbedded().Checksum);

    [Fact]
    public void An_overlay_adds_its_list()
    {
        using var overlay = TemporaryDirectory.With(MinimalOverlay.Create());

        var expected = Sha256(Encoding.UTF8.GetBytes(List(Repository.DataDirectory) + List(overlay.Path)));

        Assert.Equal(expected, DatasetLoader.LoadEmbedded([overlay.Path]).Checksum);
    }

    private static string List(string directory)
    {
        var names = Directory.GetFiles(directory).Select(path => Path.GetFileName(path)).Order(StringComparer.Ordinal);
        return string.Concat(names.Select(name => $"{Sha256(File.ReadAllBytes(Path.Combine(directory, name)))}  {name}\n"));
    }

    private static string Sha256(byte[] bytes) =>
        string.Concat(SHA256.HashData(bytes).Select(b => b.ToString("x2", System.Globalization.CultureInfo.InvariantCulture)));
}
