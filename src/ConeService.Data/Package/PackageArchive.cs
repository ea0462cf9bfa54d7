using System.IO.Compression;

namespace ConeService.Data;

/// <summary>Packs a data package into one file. The same package gives the same bytes, whatever packs it.</summary>
public static class PackageArchive
{
    // The first moment that an archive can tell: what is packed tells its date in the change log.
    private static readonly DateTimeOffset Stamp = new(1980, 1, 1, 0, 0, 0, TimeSpan.Zero);

    /// <summary>
    /// A ZIP archive with every file at its root, in the order of their names, without compression: what a compressor makes of a file
    /// changes with its version, and the transfer is compressed anyway.
    /// </summary>
    /// <param name="files">The package.</param>
    public static byte[] Zip(IPackageFiles files)
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var name in files.List().Order(StringComparer.Ordinal))
            {
                var entry = zip.CreateEntry(name, CompressionLevel.NoCompression);
                entry.LastWriteTime = Stamp;
                using var stream = entry.Open();
                stream.Write(files.Read(name));
            }
        }

        return bytes.ToArray();
    }
}
