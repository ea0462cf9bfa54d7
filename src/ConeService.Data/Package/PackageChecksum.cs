using System.Security.Cryptography;
using System.Text;

namespace ConeService.Data;

/// <summary>
/// Checksums of files and packages. A package's lines are those of <c>sha256sum</c> over its files by name,
/// so anybody can recompute the whole with two standard commands.
/// </summary>
internal static class PackageChecksum
{
    public static string OfFile(byte[] bytes) => Convert.ToHexStringLower(SHA256.HashData(bytes));

    public static string OfPackages(IEnumerable<PackageSnapshot> packages)
    {
        var lines = new StringBuilder();
        foreach (var (name, hash) in packages.SelectMany(p => p.Files.Keys, (p, name) => (name, p.Hash(name))))
            lines.Append(hash).Append("  ").Append(name).Append('\n');
        return OfFile(Encoding.UTF8.GetBytes(lines.ToString()));
    }
}
