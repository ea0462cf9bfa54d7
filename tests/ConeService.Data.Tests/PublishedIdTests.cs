using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace ConeService.Data.Tests;

/// <summary>Ids are a promise: tests/Vectors/published-ids.csv holds every id that a package ever had, old ones too.</summary>
public sealed class PublishedIdTests
{
    private static readonly IReadOnlyList<(string Table, string Id)> Published =
    [
        .. File.ReadAllLines(Path.Combine(Repository.Root, "tests", "Vectors", "published-ids.csv"))[1..]
            .Select(l => l.Split(',')).Select(c => (c[0], c[1])),
    ];

    private static readonly HashSet<(string Table, string Id)> Present = [.. Tables().SelectMany(t => Ids(t).Select(id => (t, id)))];

    [Fact]
    public void Every_published_id_still_finds_its_row()
    {
        var dataset = DatasetLoader.LoadEmbedded();
        var lost = Published.Where(p => !Present.Contains((p.Table, dataset.CurrentId(p.Table, p.Id)))).ToList();

        Assert.True(lost.Count == 0,
            $"Ids that find no row any more: {string.Join(", ", lost)}. Keep the row, or name its new id in data/renamed-ids.csv.");
    }

    [Fact]
    public void Every_id_of_the_package_is_published()
    {
        var missing = Present.Except(Published).Select(m => $"{m.Table},{m.Id}").Order(StringComparer.Ordinal).ToList();

        Assert.True(missing.Count == 0,
            $"Add these lines to tests/Vectors/published-ids.csv, and never remove one:\n{string.Join('\n', missing)}");
    }

    [Fact]
    public void The_list_stands_in_order_and_names_each_id_once() =>
        Assert.Equal(Published.Distinct().OrderBy(p => p.Table, StringComparer.Ordinal).ThenBy(p => p.Id, StringComparer.Ordinal),
            Published);

    [Fact]
    public void Every_renamed_id_is_published() =>
        Assert.Empty(DatasetLoader.LoadEmbedded().RenamedIds.Select(r => (r.Table, r.Old)).Except(Published));

    /// <summary>Rows whose key has several parts have an address too: a cell of a chart, a step of a schedule. From 1.7.0 on.</summary>
    [Fact]
    public void Every_published_key_still_finds_its_row_and_every_key_is_published()
    {
        var published = File.ReadAllLines(Path.Combine(Repository.Root, "tests", "Vectors", "published-keys.csv"))[1..];
        var present = DatasetLoader.LoadEmbedded().Tables
            // Sentences come and go with what they say: a caller holds on to the code of a finding, not to the key of its words.
            .Where(t => t.Key.Count > 1 && t.Name is not ("messages" or "texts"))
            .SelectMany(t => t.Rows.Select(r => Line(t.Name, r.Id))).ToList();

        Assert.Equal(published.Distinct().Order(StringComparer.Ordinal), published);
        Assert.Empty(published.Except(present));
        var missing = present.Except(published).Order(StringComparer.Ordinal).ToList();
        Assert.True(missing.Count == 0,
            $"Add these lines to tests/Vectors/published-keys.csv, and never remove one:\n{string.Join('\n', missing)}");

        static string Line(string table, string key) => key.Contains(',', StringComparison.Ordinal) ? $"{table},\"{key}\""
            : $"{table},{key}";
    }

    [Fact]
    public void Ids_of_1_4_0_have_not_left_the_list()
    {
        // Counted in the tables of version 1.4.0 of the package: rows of each table whose ids became words in 1.5.0.
        Assert.All(
            new[]
            {
                ("cautions", 41), ("load-rules", 76), ("exposure-limits", 43), ("food-contact-limits", 18),
                ("cone-facts", 40), ("disagreements", 26), ("colour-rules", 37), ("colour-notes", 156),
            },
            t => Assert.Equal(t.Item2, Published.Count(p => p.Table == t.Item1 && Regex.IsMatch(p.Id, "^[a-z]+[0-9]+$"))));
    }

    [Fact]
    public void No_id_promises_that_something_is_harmless() =>
        Assert.DoesNotContain(Present, p => p.Id.Split('-').Contains("safe"));

    private static IEnumerable<string> Tables() => JsonNode.Parse(Repository.Data("datapackage.json"))!["resources"]!.AsArray()
        .Where(r => r!["schema"]!["primaryKey"]!.AsArray() is [var only] && (string?)only == "id").Select(r => (string)r!["name"]!);

    // The id leads each row and is never quoted.
    private static IEnumerable<string> Ids(string table) =>
        File.ReadAllLines(Path.Combine(Repository.DataDirectory, table + ".csv"))[1..].Select(l => l.Split(',')[0]);
}
