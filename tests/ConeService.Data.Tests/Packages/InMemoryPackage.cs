using System.Text;
using System.Text.Json.Nodes;

namespace ConeService.Data.Tests;

/// <summary>A package whose files are strings in memory, with the edits that the breaking tests make.</summary>
internal sealed class InMemoryPackage(string label) : IPackageFiles
{
    private const string Descriptor = "datapackage.json";
    private readonly Dictionary<string, byte[]> _files = [];
    private readonly HashSet<string> _unreadable = [];

    public string Label { get; } = label;

    public IReadOnlyCollection<string> List() => [.. _files.Keys];

    public byte[] Read(string name) => _unreadable.Contains(name) ? throw new IOException("disk on fire") : _files[name];

    public string Text(string file) => Encoding.UTF8.GetString(_files[file]);

    public void Put(string file, string text) => _files[file] = Encoding.UTF8.GetBytes(text);

    public void PutBytes(string file, byte[] bytes) => _files[file] = bytes;

    public void Remove(string file) => Assert.True(_files.Remove(file));

    public void MakeUnreadable(string file) => _unreadable.Add(file);

    /// <summary>Replaces a text that must stand exactly once, or the test would not break what it says.</summary>
    public void Replace(string file, string old, string replacement)
    {
        var text = Text(file);
        Assert.Equal(2, text.Split(old).Length);
        Put(file, text.Replace(old, replacement, StringComparison.Ordinal));
    }

    public void Append(string file, string line) => Put(file, Text(file) + line + "\n");

    public void EditDescriptor(Action<JsonNode> edit)
    {
        var json = JsonNode.Parse(Text(Descriptor))!;
        edit(json);
        Put(Descriptor, json.ToJsonString());
    }

    public void EditTable(string table, Action<JsonNode> edit) => EditDescriptor(json => edit(Table(json, table)));

    public void EditField(string table, string field, Action<JsonNode> edit) =>
        EditTable(table, json => edit(json["schema"]!["fields"]!.AsArray().Single(f => (string?)f!["name"] == field)!));

    /// <summary>Takes the seal of the reference package out of a descriptor, whose files will be others.</summary>
    public static void Unseal(JsonNode package)
    {
        package.AsObject().Remove("seal");
        foreach (var table in package["resources"]!.AsArray())
            Unsealed(table!);
    }

    /// <summary>The description of a table without size and hash of its file.</summary>
    public static JsonNode Unsealed(JsonNode table)
    {
        table.AsObject().Remove("bytes");
        table.AsObject().Remove("hash");
        return table;
    }

    /// <summary>Writes a seal that fits the files.</summary>
    public void Seal() => _files[Descriptor] = SealWriter.Write(this).Read(Descriptor);

    /// <summary>
    /// Takes what came after 1.5 out of the description of a table, and the rate out of the key of end points, as a package may leave
    /// them out that was written before they came.
    /// </summary>
    /// <returns>A copy that belongs to no package.</returns>
    public static JsonNode DropLater(JsonNode table)
    {
        DropRateKey(table);
        var (name, fields) = ((string)table["name"]!, table["schema"]!["fields"]!.AsArray());
        foreach (var later in fields.Where(f => LaterColumns.Has(name, (string)f!["name"]!)).ToList())
            fields.Remove(later);
        if (table["schema"]!["foreignKeys"] is JsonArray keys)
        {
            foreach (var key in keys.Where(k => LaterColumns.Has(name, (string)k!["fields"]![0]!)).ToList())
                keys.Remove(key);
        }

        return table.DeepClone();
    }

    /// <summary>The key of end points as it was before 1.7: with the number itself, which may be blank.</summary>
    public static void DropRateKey(JsonNode table)
    {
        if ((string?)table["name"] != "end-points")
            return;
        var fields = table["schema"]!["fields"]!.AsArray();
        fields.Remove(fields.Single(f => (string?)f!["name"] == "rate"));
        table["schema"]!["primaryKey"] = new JsonArray("chart", "cone", "rate_celsius_per_hour");
    }

    /// <summary>Puts later columns of the reference package at the end of a table.</summary>
    /// <param name="table">Name of the table.</param>
    /// <param name="fields">Names of the columns.</param>
    /// <param name="rows">What stands in them, one text a row, its cells parted by commas.</param>
    public void Extend(string table, string[] fields, params string[] rows)
    {
        var reference = Table(JsonNode.Parse(Repository.Data(Descriptor))!, table)["schema"]!;
        EditTable(table, t =>
        {
            var schema = t["schema"]!;
            foreach (var field in fields)
            {
                schema["fields"]!.AsArray().Add(
                    reference["fields"]!.AsArray().Single(f => (string?)f!["name"] == field)!.DeepClone());
                foreach (var key in reference["foreignKeys"]?.AsArray().Where(k => (string?)k!["fields"]![0] == field) ?? [])
                    (schema["foreignKeys"] ??= new JsonArray()).AsArray().Add(key!.DeepClone());
            }
        });
        var lines = Text(table + ".csv").TrimEnd('\n').Split('\n')
            .Zip([string.Join(',', fields), .. rows], (line, more) => $"{line},{more}");
        Put(table + ".csv", string.Join('\n', lines) + "\n");
    }

    /// <summary>Puts the rank beside a cone that has none yet: a field of the reference package, and a cell in every row.</summary>
    /// <param name="table">Name of the table.</param>
    /// <param name="cone">The field that holds the cone.</param>
    /// <param name="ranks">The cells, one a row; no cell of the table may have quotation marks.</param>
    public void Rank(string table, string cone, params string[] ranks)
    {
        var place = 0;
        EditTable(table, t =>
        {
            var fields = t["schema"]!["fields"]!.AsArray();
            place = fields.Select(f => (string?)f!["name"]).ToList().IndexOf(cone) + 1;
            fields.Insert(place, Table(JsonNode.Parse(Repository.Data(Descriptor))!, table)["schema"]!["fields"]!.AsArray()
                .Single(f => (string?)f!["name"] == cone + "_rank")!.DeepClone());
        });
        var lines = Text(table + ".csv").TrimEnd('\n').Split('\n').Select(l => l.Split(','))
            .Zip([cone + "_rank", .. ranks], (cells, rank) => string.Join(',', [.. cells[..place], rank, .. cells[place..]]));
        Put(table + ".csv", string.Join('\n', lines) + "\n");
    }

    /// <summary>Puts the rate into the key of end points, which is without it yet.</summary>
    /// <param name="rates">The cells, one a row.</param>
    public void KeyRates(params string[] rates)
    {
        EditTable("end-points", t =>
        {
            var now = Table(JsonNode.Parse(Repository.Data(Descriptor))!, "end-points")["schema"]!;
            t["schema"]!["fields"]!.AsArray().Add(
                now["fields"]!.AsArray().Single(f => (string?)f!["name"] == "rate")!.DeepClone());
            t["schema"]!["primaryKey"] = now["primaryKey"]!.DeepClone();
        });
        var lines = Text("end-points.csv").TrimEnd('\n').Split('\n').Zip(["rate", .. rates], (line, rate) => $"{line},{rate}");
        Put("end-points.csv", string.Join('\n', lines) + "\n");
    }

    public static JsonNode Table(JsonNode package, string table) =>
        package["resources"]!.AsArray().Single(r => (string?)r!["name"] == table)!;
}
