using System.Text.Json;
using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>Reads datapackage.json into checked schemas; every oddity is a fault of the rule <c>descriptor</c>.</summary>
internal static partial class DescriptorReader
{
    /// <summary>Null when the descriptor cannot be relied on.</summary>
    public static PackageDescriptor? Read(PackageSnapshot snapshot, bool isOverlay, List<PackageFault> faults)
    {
        if (!snapshot.Files.TryGetValue(PackageDescriptor.FileName, out var bytes))
        {
            if (!snapshot.IsUnreadable(PackageDescriptor.FileName))
                faults.Add(new PackageFault(snapshot.Label, PackageDescriptor.FileName, null, null, FaultRules.MissingFile,
                    "is missing; it describes every table"));
            return null;
        }

        var json = Parse(bytes, new DescriptorFaults(snapshot.Label, faults));
        if (json is null)
            return null;

        var found = new DescriptorFaults(json.Name ?? snapshot.Label, faults);
        var name = found.Require(json.Name, "name");
        if (name.Length > 0 && !KebabCase().IsMatch(name))
            found.Add("name", $"'{name}' must be kebab-case: small letters and digits joined by hyphens");
        var version = found.Require(json.Version, "version");
        // An overlay is known by its name; the title and licence of the dataset are those of the base package.
        var title = isOverlay ? json.Title : found.Require(json.Title, "title");
        var license = isOverlay ? null : License(json, found);
        var tables = (json.Resources ?? []).Select((r, i) => TableSchemaReader.Read(r, i, found)).OfType<TableSchema>().ToList();
        if (json.Resources is null or [])
            found.Add("resources", "is missing; it must list at least one table");
        Repeated(tables.Select(t => t.Name), "name", found);
        Repeated(tables.Select(t => t.Path), "path", found);
        if (!isOverlay)
            ReferenceTargets.Check(tables, found);
        var seal = SealReader.Read(json, found);
        return found.Any ? null : new PackageDescriptor(name, version, title, license, tables, seal);
    }

    private static PackageJson? Parse(byte[] bytes, DescriptorFaults found)
    {
        try
        {
            var json = JsonSerializer.Deserialize(bytes, DescriptorJsonContext.Default.PackageJson);
            if (json is null)
                found.Add(null, "is null; it must be an object");
            return json;
        }
        catch (JsonException e)
        {
            found.Add(e.Path is null or "$" ? null : e.Path, $"cannot be read: {e.Message}", (int?)e.LineNumber + 1);
            return null;
        }
    }

    private static string? License(PackageJson json, DescriptorFaults found)
    {
        if (json.Licenses is [{ Name.Length: > 0 } only])
            return only.Name;
        found.Add("licenses", $"has {json.Licenses?.Length ?? 0} entries; it must hold exactly one, with the SPDX id as name");
        return null;
    }

    private static void Repeated(IEnumerable<string> values, string what, DescriptorFaults found)
    {
        foreach (var group in values.GroupBy(v => v, StringComparer.Ordinal).Where(g => g.Key.Length > 0 && g.Count() > 1))
            found.Add("resources", $"the {what} '{group.Key}' is used by {group.Count()} tables; it must be used once");
    }

    [GeneratedRegex(@"^[a-z0-9]+(-[a-z0-9]+)*\z")]
    private static partial Regex KebabCase();
}
