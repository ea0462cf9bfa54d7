using System.Text.Json;
using ConeService.Api.Http;
using ConeService.Api.Tests.Contract;
using CsvHelper;

namespace ConeService.Api.Tests.Http;

/// <summary>Every list answers CSV too: the same items, a line each, with cones that no spreadsheet takes for numbers.</summary>
public class ListCsvTests(Support.Api api)
{
    public static TheoryData<string> Lists => [.. ListAnswer.Routes.Select(r => r.Replace("{chart}", "small", StringComparison.Ordinal))];

    [Theory]
    [MemberData(nameof(Lists))]
    public async Task A_list_has_a_line_for_every_item_and_its_numbers(string url)
    {
        var table = await Table(url);
        var items = Items(await api.Json(url)).ToList();
        Assert.Equal(items.Count, table.Count - 1);
        Assert.Equal(table[0].Length, table[0].Distinct().Count());
        Assert.All(table[0], c => Assert.Matches("^[a-z][a-z0-9_]*$", c));
        Assert.All(table.Skip(1), r => Assert.Equal("1.7.0", r[^1]));
        foreach (var (item, row) in items.Zip(table.Skip(1)))
        {
            foreach (var member in item.EnumerateObject().Where(m => m.Value.ValueKind is JsonValueKind.Number or JsonValueKind.String))
            {
                var cell = row[Array.IndexOf(table[0], JsonNamingPolicy.SnakeCaseLower.ConvertName(member.Name))];
                var sent = member.Value.ValueKind == JsonValueKind.Number ? member.Value.GetRawText() : member.Value.GetString()!;
                Assert.Contains(cell, (string[])[sent, "cone " + sent, "cones " + sent]);
            }
        }
    }

    // 06, 05.5, 6 or 05-3 alone in a cell: what a spreadsheet makes a number or a day of.
    [Theory]
    [MemberData(nameof(Lists))]
    public async Task No_cell_of_a_cone_is_a_number_to_a_spreadsheet(string url)
    {
        var table = await Table(url);
        Assert.All(table.Skip(1).SelectMany(r => r), c => Assert.DoesNotMatch(@"^0[0-9]+(\.5)?a?([-–][0-9]+)?$", c));
        var cones = table[0].Index().Where(c => IsCone(c.Item)).Select(c => c.Index).ToList();
        Assert.All(table.Skip(1).SelectMany(r => cones.Select(c => r[c])), c => Assert.Matches(@"^(cone [0-9.a]+)?$", c));
    }

    // cone 06 at 60 °C/h is printed at 998 °C (chart of 2016); a bisque goes from cone 010 to cone 10 (firing-kinds).
    [Theory]
    [InlineData("/v1/cones", "cone", "cone 06", "end_point_celsius", "998")]
    [InlineData("/v1/charts/witness-self-supporting", "cone", "cone 06", "chart", "witness-self-supporting")]
    [InlineData("/v1/firing-kinds", "id", "bisque", "cones_min", "cone 010")]
    [InlineData("/v1/charts", "id", "small", "cone_form", "small")]
    [InlineData("/v1/cone-facts", "id", "dark-red-cones-hold-iron", "value_printed", "cones 05-3")]
    [InlineData("/v1/glazes", "id", "celadon", "cones_min", "cone 8")]
    [InlineData("/v1/limits", "id", "cadmium-flatware-fda", "limit_kind", "food-contact")]
    public async Task A_value_stands_under_its_member(string url, string key, string id, string column, string value)
    {
        var table = await Table(url);
        var row = table.Skip(1).First(r => r[Array.IndexOf(table[0], key)] == id);
        Assert.Equal(value, row[Array.IndexOf(table[0], column)]);
    }

    [Fact]
    public async Task What_is_asked_for_does_not_change_the_columns()
    {
        var all = await Table("/v1/schedules");
        // A pit firing reaches no cone 10 (schedule-templates): nothing is listed.
        var none = await Table("/v1/schedules?firingKind=pit&cone=10");
        Assert.Equal(all[0], Assert.Single(none));
    }

    [Fact]
    public async Task A_list_is_JSON_unless_CSV_is_asked_for_and_says_that_it_varies()
    {
        using var json = await api.Get("/v1/cones");
        using var csv = await api.Get("/v1/cones", "text/csv");
        using var other = await api.Get("/v1/cones", "image/png");
        Assert.Equal("application/json", json.Content.Headers.ContentType?.MediaType);
        Assert.Equal("text/csv", csv.Content.Headers.ContentType?.MediaType);
        Assert.Contains("Accept", json.Headers.Vary);
        Assert.NotEqual(json.Headers.ETag, csv.Headers.ETag);
        Assert.Equal(406, (int)other.StatusCode);
    }

    [Fact]
    public void The_document_names_CSV_for_the_lists_and_for_no_other_reading_address_but_a_fit()
    {
        var document = OpenApiDocumentFile.Committed;
        var named = document.Operations.Where(o => o.Method == "get")
            .Where(o => document.MediaTypes(o.Route, o.Method, "200").Contains("text/csv")).Select(o => o.Route)
            // A programme to type in, and no list of the package.
            .Where(r => r != "/v1/schedules/{schedule}/fit")
            // A column for each choice: QuestionFormatTests.
            .Where(r => r != "/v1/questions")
            // Its columns are the fields of the table: TableTests.
            .Where(r => r != "/v1/tables/{table}");
        Assert.Equal(ListAnswer.Routes, named.Order(StringComparer.Ordinal));
    }

    private static bool IsCone(string column) =>
        column is "cone" or "end_cone" or "lowest_cone" or "highest_cone" or "cone_min" or "cone_max"
            or "bisque_min" or "bisque_max" or "mature_min" or "mature_best" or "mature_max" or "range_min" or "range_best" or "range_max";

    private static JsonElement.ArrayEnumerator Items(JsonElement answer) =>
        (answer.TryGetProperty("items", out var items) ? items : answer.GetProperty("endPoints")).EnumerateArray();

    private async Task<List<string[]>> Table(string url)
    {
        using var response = await api.Get(url, "text/csv");
        var text = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.True((int)response.StatusCode == 200, text);
        using var csv = CsvReader.FromText(text, new CsvReaderOptions { Separator = ',', HasHeader = false });
        var rows = new List<string[]>();
        while (csv.Read()) rows.Add([.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)]);
        return rows;
    }
}
