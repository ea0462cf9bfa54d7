using System.Collections.Concurrent;
using System.Diagnostics.CodeAnalysis;

namespace ConeService.Data;

/// <summary>
/// All files of a package, read once: the checksums and the rows then speak of the same bytes
/// even while somebody is copying files into the directory.
/// </summary>
internal sealed class PackageSnapshot : IPackageFiles
{
    private readonly ConcurrentDictionary<string, string> _hashes = new(StringComparer.Ordinal);
    private readonly HashSet<string> _unreadable = new(StringComparer.Ordinal);

    private PackageSnapshot(string label) => Label = label;

    public string Label { get; }

    public SortedDictionary<string, byte[]> Files { get; } = new(StringComparer.Ordinal);

    /// <inheritdoc />
    public IReadOnlyCollection<string> List() => Files.Keys;

    /// <inheritdoc />
    public byte[] Read(string name) => Files[name];

    /// <summary>Whether the file is there but could not be read: that fault is reported already.</summary>
    public bool IsUnreadable(string name) => _unreadable.Contains(name);

    /// <summary>SHA-256 of a file, hexadecimal; made once.</summary>
    public string Hash(string name) => _hashes.GetOrAdd(name, static (n, files) => PackageChecksum.OfFile(files[n]), Files);

    /// <summary>Null when the package cannot even be listed.</summary>
    public static PackageSnapshot? Take(IPackageFiles files, List<PackageFault> faults)
    {
        var snapshot = new PackageSnapshot(files.Label);
        if (!Try(() => files.List(), files.Label, ".", faults, out var names))
            return null;
        foreach (var name in names)
        {
            if (Try(() => files.Read(name), files.Label, name, faults, out var bytes))
                snapshot.Files[name] = bytes;
            else
                snapshot._unreadable.Add(name);
        }

        return snapshot;
    }

    private static bool Try<T>(Func<T> read, string label, string file, List<PackageFault> faults, [NotNullWhen(true)] out T? result)
        where T : class
    {
        try
        {
            result = read();
            return true;
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            faults.Add(new PackageFault(label, file, null, null, FaultRules.UnreadableFile, $"cannot be read: {e.Message}"));
            result = null;
            return false;
        }
    }
}
