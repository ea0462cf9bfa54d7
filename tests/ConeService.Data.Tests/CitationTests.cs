using System.Collections.Concurrent;
using System.Text.Json.Nodes;
using Microsoft.VisualBasic.FileIO;

namespace ConeService.Data.Tests;

/// <summary>Which rows cite a source, counted apart from the reader over the files as they are committed.</summary>
public sealed class CitationTests
{
    private static readonly Dataset Embedded = DatasetLoader.LoadEmbedded();

    private static readonly IReadOnlyList<(string Table, string File, string[] Key, string[] Fields)> Citing = Describe();

    private static readonly ConcurrentDictionary<string, List<string[]>> Read = new(StringComparer.Ordinal);

    public static TheoryData<string> Sources => [.. Embedded.Sources.Select(s => s.Id)];

    [Fact]
    public void Every_table_that_refers_to_the_bibliography_is_covered()
    {
        // Every table names sources but the bibliography itself, and those that hold no values: sentences, and ids of before.
        Assert.Equal(
            Embedded.Resources.Select(r => r.Name).Except(["sources", "messages", "texts", "renamed-ids"]).Order(StringComparer.Ordinal),
            Citing.Select(c => c.Table).Order(StringComparer.Ordinal));
        var withRows = Citing.Where(c => Rows(c.File).Count > 1).Select(c => c.Table).Order(StringComparer.Ordinal);

        Assert.Equal(withRows, Embedded.Citations.Values.SelectMany(c => c).Select(c => c.Table).Distinct().Order(StringComparer.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Sources))]
    public void A_source_is_cited_by_the_rows_that_name_it(string source)
    {
        var expected = Citing.OrderBy(c => c.Table, StringComparer.Ordinal).SelectMany(c =>
        {
            var rows = Rows(c.File);
            int Place(string field) => Array.IndexOf(rows[0], field);
            return rows.Skip(1)
                .Where(r => c.Fields.Any(f => r[Place(f)].Split(';').Contains(source)))
                .Select(r => new Citation(c.Table, string.Join('/', c.Key.Select(k => r[Place(k)]))));
        });

        Assert.Equal(expected, Embedded.Citations[source]);
    }

    [Fact]
    public void A_disagreement_cites_the_sources_of_both_sides_once_each()
    {
        var row = Embedded.Disagreements[0];

        Assert.All(row.Sources.Append(row.SourceA).Append(row.SourceB).Distinct(), id =>
            Assert.Single(Embedded.Citations[id], new Citation("disagreements", row.Id)));
    }

    [Fact]
    public void A_source_that_no_row_cites_has_no_citation()
    {
        var scenario = new Scenario();
        scenario.Base.Append("sources.csv", "unused,chart,A chart,2016,,facts only,whole");

        Assert.Empty(scenario.Load().Citations["unused"]);
    }

    [Fact]
    public void Rows_of_overlays_cite_too()
    {
        var scenario = new Scenario();
        scenario.AddOverlay();

        Assert.Equal(
            [
                new("charts", "north-shed-chart"), new("end-points", "north-shed-chart/05/60"),
                new("end-points", "north-shed-chart/04/60"),
            ],
            scenario.Load().Citations["north-shed-tests"]);
    }

    private static List<(string Table, string File, string[] Key, string[] Fields)> Describe()
    {
        var found = new List<(string, string, string[], string[])>();
        foreach (var table in JsonNode.Parse(Repository.Data("datapackage.json"))!["resources"]!.AsArray())
        {
            var schema = table!["schema"]!;
            var keys = (schema["foreignKeys"]?.AsArray() ?? []).Where(k => (string?)k!["reference"]!["resource"] == "sources")
                .Select(k => (string)k!["fields"]![0]!);
            var lists = schema["fields"]!.AsArray().Where(f => (string?)f!["itemReference"]?["resource"] == "sources")
                .Select(f => (string)f!["name"]!);
            string[] fields = [.. keys, .. lists];
            if (fields.Length > 0)
                found.Add(((string)table["name"]!, (string)table["path"]!, [.. schema["primaryKey"]!.AsArray().Select(k => (string)k!)],
                    fields));
        }

        return found;
    }

    private static List<string[]> Rows(string file) => Read.GetOrAdd(file, Parse);

    private static List<string[]> Parse(string file)
    {
        using var parser = new TextFieldParser(Path.Combine(Repository.DataDirectory, file)) { TextFieldType = FieldType.Delimited };
        parser.SetDelimiters(",");
        var rows = new List<string[]>();
        while (parser.ReadFields() is { } cells)
            rows.Add(cells);
        return rows;
    }
}
