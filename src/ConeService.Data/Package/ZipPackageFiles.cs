using System.IO.Compression;

namespace ConeService.Data;

/// <summary>
/// A package in a ZIP archive, its files at the root. The archive is read whole, once: what is listed and what is read are of one
/// moment. Hidden files are not part of it, as in a directory.
/// </summary>
public sealed class ZipPackageFiles : IPackageFiles
{
    private readonly Lazy<Dictionary<string, byte[]>> _files;

    /// <summary>An archive on disk.</summary>
    /// <param name="path">Its path.</param>
    public ZipPackageFiles(string path)
        : this(path, () => File.OpenRead(path))
    {
    }

    /// <summary>An archive from anywhere.</summary>
    /// <param name="label">What it is called in faults.</param>
    /// <param name="open">Opens it; called once, when it is first read.</param>
    public ZipPackageFiles(string label, Func<Stream> open)
    {
        Label = label;
        _files = new(() => ReadAll(label, open));
    }

    /// <inheritdoc />
    public string Label { get; }

    /// <inheritdoc />
    public IReadOnlyCollection<string> List() => _files.Value.Keys;

    /// <inheritdoc />
    public byte[] Read(string name) =>
        _files.Value.GetValueOrDefault(name) ?? throw new FileNotFoundException($"The archive has no file {name}.", name);

    private static Dictionary<string, byte[]> ReadAll(string path, Func<Stream> open)
    {
        try
        {
            using var archive = new ZipArchive(open(), ZipArchiveMode.Read);
            var files = new Dictionary<string, byte[]>(StringComparer.Ordinal);
            foreach (var entry in archive.Entries.Where(e => e.Name.Length > 0 && !PackageFiles.IsHidden(e.FullName)))
            {
                using var stream = entry.Open();
                using var bytes = new MemoryStream();
                stream.CopyTo(bytes);
                if (!files.TryAdd(entry.FullName, bytes.ToArray()))
                    throw new InvalidDataException($"it holds '{entry.FullName}' twice");
            }

            return files;
        }
        catch (InvalidDataException e)
        {
            throw new IOException($"'{path}' is no sound ZIP archive: {e.Message}", e);
        }
    }
}
