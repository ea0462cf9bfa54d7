using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Nodes;

namespace ConeService.Data;

/// <summary>Seals packages: writes size and SHA-256 of every file into datapackage.json.</summary>
public static class SealWriter
{
    private const string Bytes = "bytes";
    private const string Hash = "hash";
    private const string Seal = "seal";

    private static readonly JsonSerializerOptions Written = new()
    {
        WriteIndented = true,
        NewLine = "\n",
        // As people write it: a degree sign stays one.
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>The package with a seal that fits its files; nothing is written and nothing else is checked.</summary>
    /// <param name="files">The package, sealed or not.</param>
    /// <returns>The same files but for datapackage.json: indented by two blanks, UTF-8, its members in their order.</returns>
    /// <exception cref="InvalidPackageException">There is no datapackage.json that can be read.</exception>
    /// <exception cref="IOException">A file cannot be read.</exception>
    public static IPackageFiles Write(IPackageFiles files)
    {
        var names = files.List();
        if (!names.Contains(PackageDescriptor.FileName))
            throw Unreadable(files, FaultRules.MissingFile, "is missing; it describes every table");
        var descriptor = Parse(files);
        var tables = (descriptor["resources"] as JsonArray ?? []).OfType<JsonObject>()
            .Where(r => r["path"] is JsonValue path && path.GetValueKind() == JsonValueKind.String)
            .GroupBy(r => (string)r["path"]!, StringComparer.Ordinal).ToDictionary(g => g.Key, g => g.First(), StringComparer.Ordinal);
        var others = new JsonArray();
        foreach (var name in names.Where(n => n != PackageDescriptor.FileName).Order(StringComparer.Ordinal))
        {
            var bytes = files.Read(name);
            if (tables.GetValueOrDefault(name) is { } table)
                Put(table, bytes);
            else
                others.Add((JsonNode)Put(new() { ["path"] = name }, bytes));
        }

        var blank = PackageSeal.Prefix + new string('0', 64);
        descriptor.Remove(Seal);
        descriptor[Seal] = new JsonObject { ["files"] = others, [Hash] = blank };
        descriptor[Seal]![Hash] = PackageSeal.Prefix + PackageChecksum.OfFile(Text(descriptor));
        return new Sealed(files, names, Text(descriptor));
    }

    private static JsonObject Parse(IPackageFiles files)
    {
        try
        {
            return JsonNode.Parse(files.Read(PackageDescriptor.FileName)) as JsonObject
                ?? throw Unreadable(files, FaultRules.Descriptor, "is no object");
        }
        catch (Exception e) when (e is JsonException or ArgumentException)
        {
            throw Unreadable(files, FaultRules.Descriptor, $"cannot be read: {e.Message}");
        }
    }

    private static InvalidPackageException Unreadable(IPackageFiles files, string rule, string reason) =>
        new([new PackageFault(files.Label, PackageDescriptor.FileName, null, null, rule, reason)]);

    /// <summary>Beside the path, or where they stand already.</summary>
    private static JsonObject Put(JsonObject entry, byte[] bytes)
    {
        Set(entry, Bytes, JsonValue.Create(bytes.LongLength), after: "path");
        Set(entry, Hash, JsonValue.Create(PackageSeal.Prefix + PackageChecksum.OfFile(bytes)), after: Bytes);
        return entry;
    }

    private static void Set(JsonObject entry, string name, JsonValue value, string after)
    {
        if (entry.ContainsKey(name))
            entry[name] = value;
        else
            entry.Insert(entry.IndexOf(after) + 1, name, value);
    }

    private static byte[] Text(JsonObject descriptor) =>
        [.. Encoding.UTF8.GetBytes(descriptor.ToJsonString(Written)), (byte)'\n'];

    private sealed class Sealed(IPackageFiles files, IReadOnlyCollection<string> names, byte[] descriptor) : IPackageFiles
    {
        public string Label => files.Label;

        public IReadOnlyCollection<string> List() => names;

        public byte[] Read(string name) => name == PackageDescriptor.FileName ? descriptor : files.Read(name);
    }
}
