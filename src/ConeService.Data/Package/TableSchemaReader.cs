using System.Text.Encodings.Web;

namespace ConeService.Data;

/// <summary>Reads one resource of a descriptor.</summary>
internal static class TableSchemaReader
{
    public static TableSchema? Read(ResourceJson? json, int index, DescriptorFaults found)
    {
        if (json is null)
        {
            found.Add($"resources[{index}]", "is null; it must be an object");
            return null;
        }

        var name = found.Require(json.Name, $"resources[{index}].name");
        var at = name.Length > 0 ? name : $"resources[{index}]";
        var path = found.Require(json.Path, $"{at}.path");
        var title = found.Require(json.Title, $"{at}.title");
        var description = found.Require(json.Description, $"{at}.description");
        Format(json, at, found);
        var fields = (json.Schema?.Fields ?? []).Select((f, i) => FieldSchemaReader.Read(f, at, i, found)).OfType<FieldSchema>().ToList();
        if (fields.Count == 0)
            found.Add($"{at}.schema.fields", "is missing; a table has at least one field");
        foreach (var group in fields.GroupBy(f => f.Name, StringComparer.Ordinal).Where(g => g.Key.Length > 0 && g.Count() > 1))
            found.Add($"{at}.schema.fields", $"the field '{group.Key}' stands {group.Count()} times; it must stand once");

        var key = json.Schema?.PrimaryKey ?? [];
        if (key.Length == 0)
            found.Add($"{at}.primaryKey", "is missing; every row needs a key");
        var table = new TableSchema(name, path, title, description, json.Overlay, fields, key, ForeignKeys(json, at, found),
            json.RowOrder ?? []);
        Known(table, table.PrimaryKey, $"{at}.primaryKey", found);
        Known(table, table.RowOrder, $"{at}.rowOrder", found);
        Known(table, [.. table.ForeignKeys.SelectMany(k => k.Fields)], $"{at}.foreignKeys", found);
        return table;
    }

    // Only one dialect is read; another one named in the descriptor must not be misread silently.
    private static void Format(ResourceJson json, string at, DescriptorFaults found)
    {
        Only(json.Encoding, "utf-8", $"{at}.encoding", found);
        Only(json.Dialect?.Delimiter, ",", $"{at}.dialect.delimiter", found);
        Only(json.Dialect?.LineTerminator, "\n", $"{at}.dialect.lineTerminator", found);
        if (json.Dialect?.Header == false)
            found.Add($"{at}.dialect.header", "is false; every table has a header row");
        if (json.Schema?.MissingValues is { } missing && missing is not [""])
            found.Add($"{at}.missingValues", "must be the empty text alone: a blank cell is the only missing value");
        if (json.Schema?.UniqueKeys is not null)
            found.Add($"{at}.uniqueKeys", "is not supported; use primaryKey or the constraint unique");
    }

    private static void Only(string? value, string allowed, string where, DescriptorFaults found)
    {
        if (value is not null && value != allowed)
            found.Add(where, $"is {JavaScriptEncoder.Default.Encode(value)}; only {JavaScriptEncoder.Default.Encode(allowed)} is read");
    }

    private static List<ForeignKey> ForeignKeys(ResourceJson json, string at, DescriptorFaults found)
    {
        var keys = new List<ForeignKey>();
        foreach (var key in json.Schema?.ForeignKeys ?? [])
        {
            if (key is { Fields: { Length: > 0 } fields, Reference: { Resource: { Length: > 0 } resource, Fields: { } targets } }
                && fields.Length == targets.Length)
                keys.Add(new ForeignKey(fields, resource, targets));
            else
                found.Add($"{at}.foreignKeys", "needs fields, reference.resource and as many reference.fields");
        }

        return keys;
    }

    private static void Known(TableSchema table, IReadOnlyList<string> names, string where, DescriptorFaults found)
    {
        foreach (var name in names.Where(n => table.IndexOf(n) < 0))
            found.Add(where, $"names '{name}', which is not a field of the table");
    }
}
