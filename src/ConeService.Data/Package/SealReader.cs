using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>Reads sizes and hashes of a descriptor.</summary>
internal static partial class SealReader
{
    public static PackageSeal Read(PackageJson json, DescriptorFaults found)
    {
        var files = new List<SealedFile>();
        foreach (var table in (json.Resources ?? []).OfType<ResourceJson>().Where(r => r.Path is not null))
            Add(table.Path!, table.Bytes, table.Hash, $"{table.Name}.hash");
        foreach (var (index, file) in (json.Seal?.Files ?? []).Index())
        {
            var at = $"seal.files[{index}]";
            Add(found.Require(file?.Path, $"{at}.path"), file?.Bytes, file?.Hash, $"{at}.hash");
        }

        return new(files, Digits(json.Seal?.Hash, "seal.hash", found));

        void Add(string path, long? bytes, string? hash, string at)
        {
            if ((bytes, hash) is not (null, null))
                files.Add(new(path, bytes, Digits(hash, at, found)));
        }
    }

    private static string? Digits(string? hash, string at, DescriptorFaults found)
    {
        if (hash is null)
            return null;
        if (Sha256().IsMatch(hash))
            return hash[PackageSeal.Prefix.Length..];
        found.Add(at, $"is '{hash}'; it must be {PackageSeal.Prefix} and 64 small hexadecimal digits");
        return null;
    }

    [GeneratedRegex("^" + PackageSeal.Prefix + @"[0-9a-f]{64}\z")]
    private static partial Regex Sha256();
}
