using System.Text.Json.Nodes;

namespace ConeService.Api.Tests.Support;

/// <summary>A studio overlay in a directory of its own: rows for tables of the reference package and nothing else.</summary>
internal sealed class Overlay : IDisposable
{
    private readonly JsonArray resources = [];
    private readonly string name;

    public Overlay(string name) => this.name = name;

    public string Directory { get; } = System.IO.Directory.CreateTempSubdirectory("cone-overlay-").FullName;

    /// <summary>Adds a table; its columns are those of the reference package but for the ranks of cones, which may be left out.</summary>
    /// <param name="table">Name of the table.</param>
    /// <param name="rows">Its rows as CSV, without the header.</param>
    public Overlay With(string table, params string[] rows)
    {
        var data = Path.Combine(AppContext.BaseDirectory, "data");
        var reference = JsonNode.Parse(File.ReadAllText(Path.Combine(data, "datapackage.json")))!["resources"]!.AsArray()
            .Single(r => r!["name"]!.GetValue<string>() == table)!;
        var fields = reference["schema"]!["fields"]!.AsArray();
        foreach (var rank in fields.Where(f => f!["name"]!.GetValue<string>().EndsWith("_rank", StringComparison.Ordinal)).ToList())
            fields.Remove(rank);
        // The file is another than the one sealed there.
        reference.AsObject().Remove("bytes");
        reference.AsObject().Remove("hash");
        resources.Add(reference.DeepClone());
        var header = string.Join(',', fields.Select(f => f!["name"]!.GetValue<string>()));
        File.WriteAllText(Path.Combine(Directory, table + ".csv"), string.Join('\n', [header, .. rows, ""]));
        var descriptor = new JsonObject { ["name"] = name, ["version"] = "1.0.0", ["resources"] = resources.DeepClone() };
        File.WriteAllText(Path.Combine(Directory, "datapackage.json"), descriptor.ToJsonString());
        return this;
    }

    public void Dispose() => System.IO.Directory.Delete(Directory, recursive: true);
}
