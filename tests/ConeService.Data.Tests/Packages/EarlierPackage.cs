using System.Text.Json.Nodes;
using CsvHelper;

namespace ConeService.Data.Tests;

/// <summary>
/// The reference package as it stood at 1.4.0, before ids became words: old ids in keys and references, in the order of the
/// old ids, without the tables and columns that came later.
/// </summary>
internal static class EarlierPackage
{
    // The forms that datapackage.json of version 1.4.0 asked for; limits, colour notes and colour rules gained rows since, which
    // have words alone.
    private static readonly Dictionary<string, string> Forms = new(StringComparer.Ordinal)
    {
        ["cautions"] = "caut[0-9]{2}",
        ["cone-facts"] = "f[0-9]{2}",
    };

    /// <summary>Tables that came with 1.5, and the texts on its rows, which came with 1.7.</summary>
    public static IReadOnlyList<string> LaterTables { get; } = ["renamed-ids", "messages", "texts"];

    /// <summary>Columns that came with 1.5, with their table; the ranks of cones came with 1.6, the rate in the key with 1.7.</summary>
    public static IReadOnlyList<(string Table, string Field)> LaterColumns { get; } =
        [("charts", "reduction_sensitive"), ("charts", "bends_later"), ("bending-energies", "oddity")];

    private static bool IsLater(string table, string field) =>
        LaterColumns.Contains((table, field)) || (table, field) == ("end-points", "rate")
        || field.EndsWith("_rank", StringComparison.Ordinal);

    public static InMemoryPackage Create()
    {
        var old = DatasetLoader.LoadEmbedded().RenamedIds
            // Segments stand in the order of their schedules' names; the archives of the real packages have the old ones.
            .Where(r => r.Table != "schedule-templates")
            // A row may have been renamed more than once: the earliest package has its first id.
            .GroupBy(r => (r.Table, r.New)).ToDictionary(g => g.Key, g => g.MinBy(r => r.Since, StringComparer.Ordinal)!.Old);
        var package = new InMemoryPackage("earlier");
        var json = JsonNode.Parse(Repository.Data("datapackage.json"))!;
        InMemoryPackage.Unseal(json);
        json["version"] = "1.4.0";
        foreach (var later in LaterTables)
            json["resources"]!.AsArray().Remove(InMemoryPackage.Table(json, later));
        foreach (var table in json["resources"]!.AsArray())
        {
            var (name, path) = ((string)table!["name"]!, (string)table["path"]!);
            var schema = table["schema"]!;
            var lines = Repository.Data(path).TrimEnd('\n').Split('\n');
            var kept = Cells(lines[0]).Index().Where(c => !IsLater(name, c.Item)).Select(c => c.Index).ToList();
            var described = schema["fields"]!.AsArray();
            foreach (var place in Enumerable.Range(0, described.Count).Except(kept).OrderDescending())
                described.RemoveAt(place);
            if (name == "end-points")
                schema["primaryKey"] = new JsonArray("chart", "cone", "rate_celsius_per_hour");
            var fields = described.Select(f => Target(name, schema, f!)).ToList();
            var all = lines.Select(Cells).Select(c => kept.Select(i => c[i]).ToArray()).ToList();
            var rows = all.Skip(1).Select(c => c.Select((cell, i) => Old(cell, fields[i], old)).ToArray());
            if (schema["primaryKey"]!.AsArray() is [var only] && (string?)only == "id" && old.Keys.Any(k => k.Table == name))
                (rows, table["rowOrder"]) = (rows.OrderBy(r => r[0], StringComparer.Ordinal), new JsonArray("id"));
            else if (name == "colour-rule-ingredients")
                rows = rows.OrderBy(r => r[0], StringComparer.Ordinal).ThenBy(r => r[1], StringComparer.Ordinal);
            if (Forms.TryGetValue(name, out var form))
                schema["fields"]!.AsArray()[0]!["constraints"]!["pattern"] = form;
            package.Put(path, string.Join(',', all[0]) + "\n" + string.Concat(rows.Select(r => string.Join(',', r.Select(Quoted)) + "\n")));
        }

        package.Put("datapackage.json", json.ToJsonString());
        var changes = Repository.Data("CHANGELOG.md");
        package.Put("CHANGELOG.md", "# Change log\n\n" + changes[changes.IndexOf("## 1.4.0", StringComparison.Ordinal)..]);
        return package;
    }

    /// <summary>The table whose ids a field holds, or null; <c>*</c> where each item names its table itself.</summary>
    private static string? Target(string table, JsonNode schema, JsonNode field)
    {
        var name = (string?)field["name"];
        if (table == "disagreements" && name == "concerns")
            return "*";
        var key = schema["foreignKeys"]?.AsArray().FirstOrDefault(k => (string?)k!["fields"]![0] == name);
        return name == "id" ? table : (string?)key?["reference"]!["resource"] ?? (string?)field["itemReference"]?["resource"];
    }

    private static string Old(string cell, string? target, Dictionary<(string, string), string> old)
    {
        if (target is null)
            return cell;
        return string.Join(';', cell.Split(';').Select(item =>
            target == "*" && item.Split('/') is [var table, var id]
                ? $"{table}/{old.GetValueOrDefault((table, id), id)}"
                : old.GetValueOrDefault((target, item), item)));
    }

    private static string[] Cells(string line)
    {
        using var reader = CsvReader.FromText(line, new CsvReaderOptions { Separator = ',', HasHeader = false });
        Assert.True(reader.Read());
        return [.. Enumerable.Range(0, reader.FieldCount).Select(reader.GetString)];
    }

    private static string Quoted(string cell) =>
        cell.IndexOfAny([',', '"']) < 0 ? cell : $"\"{cell.Replace("\"", "\"\"", StringComparison.Ordinal)}\"";
}
