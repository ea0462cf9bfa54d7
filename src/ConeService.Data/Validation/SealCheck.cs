using System.Globalization;
using System.Text;

namespace ConeService.Data;

/// <summary>
/// The files are those that were sealed. Rules find what contradicts itself; a lost line or a changed digit need not, and would
/// answer.
/// </summary>
internal static class SealCheck
{
    private const string Remedy = "where the change is meant, seal the package anew: check-data DIRECTORY --seal";

    /// <summary>Holds the files against the seal. An overlay, or a package of before 1.7.0, may have none or a part of one.</summary>
    public static void Run(PackageSnapshot snapshot, PackageDescriptor descriptor, bool isOverlay, List<PackageFault> faults)
    {
        void Fault(string file, string? field, string reason) =>
            faults.Add(new PackageFault(descriptor.Name, file, null, field, FaultRules.Seal, $"{reason}; {Remedy}"));

        var seal = descriptor.Seal;
        if (!isOverlay && descriptor.Minor >= PackageSeal.Since && Unsealed(descriptor) is { Count: > 0 } unsealed)
            Fault(PackageDescriptor.FileName, "seal",
                $"has no bytes and hash of {string.Join(", ", unsealed)}; packages of 1.7.0 and newer are sealed");
        if (seal.Own is { } own && Own(snapshot.Files[PackageDescriptor.FileName], own) != own)
            Fault(PackageDescriptor.FileName, "seal.hash", "is another: the file was changed or damaged after it was sealed");
        foreach (var file in seal.Files)
        {
            if (Difference(snapshot, descriptor, file) is { } difference)
                Fault(file.Path, null, difference);
        }
    }

    /// <summary>SHA-256 of a descriptor in which the digits of its own hash stand as zeros.</summary>
    public static string Own(byte[] descriptor, string digits)
    {
        var blank = (byte[])descriptor.Clone();
        var sought = Encoding.ASCII.GetBytes(digits);
        for (int at = 0, found; (found = blank.AsSpan(at).IndexOf(sought)) >= 0; at += found + sought.Length)
            blank.AsSpan(at + found, sought.Length).Fill((byte)'0');
        return PackageChecksum.OfFile(blank);
    }

    private static List<string> Unsealed(PackageDescriptor descriptor)
    {
        var whole = descriptor.Seal.Files.Where(f => f is { Bytes: not null, Hash: not null }).Select(f => f.Path);
        var needed = descriptor.Tables.Select(t => t.Path).Append(LoadedPackage.ChangeLogFile).Except(whole, StringComparer.Ordinal);
        return descriptor.Seal.Own is null ? [.. needed, PackageDescriptor.FileName] : [.. needed];
    }

    private static string? Difference(PackageSnapshot snapshot, PackageDescriptor descriptor, SealedFile file)
    {
        if (!snapshot.Files.TryGetValue(file.Path, out var bytes))
        {
            // Said already of a file that cannot be read, of a table and of the change log.
            var isSaid = snapshot.IsUnreadable(file.Path) || file.Path == LoadedPackage.ChangeLogFile
                || descriptor.Tables.Any(t => t.Path == file.Path);
            return isSaid ? null : "is missing; datapackage.json seals it";
        }

        if (file.Bytes is { } size && size != bytes.Length)
            return string.Create(CultureInfo.InvariantCulture, $"has {bytes.Length} bytes, sealed were {size}");
        return file.Hash is { } hash && hash != snapshot.Hash(file.Path)
            ? $"has the SHA-256 {snapshot.Hash(file.Path)}, sealed was {hash}"
            : null;
    }
}
