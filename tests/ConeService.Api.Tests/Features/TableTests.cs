using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

/// <summary>Tables, rows and printed cells by their addresses; lists that are filtered; the documentation as pages.</summary>
public class TableTests(Support.Api api)
{
    [Fact]
    public async Task Every_table_is_there_with_as_many_rows_as_are_counted()
    {
        foreach (var table in (await api.Json("/v1/tables")).GetProperty("items").EnumerateArray())
        {
            var told = await api.Json(table.GetProperty("href").GetString()!);
            Assert.Equal(table.GetProperty("rows").GetInt32(), told.GetProperty("items").GetArrayLength());
            // One row of each by its own address.
            if (told.GetProperty("items").GetArrayLength() == 0) continue;
            var row = await api.Json(told.GetProperty("items")[0].GetProperty("href").GetString()!);
            Assert.Equal(told.GetProperty("items")[0].GetProperty("id").GetString(), row.GetProperty("id").GetString());
        }
    }

    // Cone 06 at 60 °C/h: 998 °C on the chart of 2016.
    // A cell of the package is no formula either: “+ copper alkaline” is text (docs/csv.md).
    [Theory]
    [InlineData("/v1/tables/colour-notes.csv")]
    [InlineData("/v1/clay-bodies.csv")]
    [InlineData("/v1/glazes.csv")]
    [InlineData("/v1/processes.csv")]
    public async Task No_cell_is_run_by_a_spreadsheet(string url)
    {
        using var response = await api.Get(url);
        var csv = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.DoesNotMatch("(?m)(^|,)\"?[=+@][^0-9.,\"]", csv);
        if (url.Contains("colour-notes", StringComparison.Ordinal)) Assert.Contains(",'+ copper alkaline,", csv, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/v1/charts/witness-self-supporting/cells/06@60", 998)]
    [InlineData("/v1/charts/witness-self-supporting/cells/6@60", 1222)]
    public async Task A_printed_cell_names_its_source(string url, decimal celsius)
    {
        var cell = await api.Json(url);
        Assert.Equal(celsius, cell.GetProperty("celsius").GetDecimal());
        Assert.Equal(["orton-2016"], cell.GetProperty("sources").Strings());
        var row = await api.Json(cell.GetProperty("row").GetString()!);
        Assert.Equal(celsius, row.GetProperty("values").GetProperty("celsius").GetDecimal());
        Assert.Equal(cell.GetProperty("place").GetString(), row.GetProperty("place").GetString());
    }

    // A chart that states no rate; a rate that is not printed is told with those that are.
    [Fact]
    public async Task A_cell_without_a_rate_and_a_cell_that_is_not_printed()
    {
        var unstated = await api.Json("/v1/charts/seger-1918/cells/010a@unstated");
        Assert.Equal(JsonValueKind.Null, unstated.GetProperty("rateCelsiusPerHour").ValueKind);
        using var response = await api.Get("/v1/charts/small/cells/6@30");
        Assert.Equal(["6@300"], (await Problems.Findings(response, 404, "not-found"))[0].GetProperty("allowed").Strings().Take(1));
    }

    [Theory]
    [InlineData("/v1/tables/glaze", "glazes")]
    [InlineData("/v1/tables/glazes/celadn", "celadon")]
    public async Task A_slip_is_told_what_was_probably_meant(string url, string near)
    {
        using var response = await api.Get(url);
        Assert.Contains(near, (await Problems.Findings(response, 404, "not-found"))[0].GetProperty("allowed").Strings());
    }

    // Cone 2 is not probably cone 6, nor 06: a look-up that is off by a slip is never sent to another cone.
    [Theory]
    [InlineData("/v1/tables/end-points/witness-self-supporting%2F6%2F60", "")]
    [InlineData("/v1/tables/end-points/witness-self-supporting@6@61", "witness-self-supporting@6@")]
    [InlineData("/v1/charts/witness-self-supporting/cells/6@61", "6@")]
    [InlineData("/v1/charts/witness-self-supporting/cells/66@60", "")]
    public async Task No_other_cone_is_offered(string url, string same)
    {
        using var response = await api.Get(url);
        var near = (await Problems.Findings(response, 404, "not-found"))[0].GetProperty("allowed").Strings();
        Assert.Equal(same.Length > 0, near.Count > 0);
        Assert.All(near, n => Assert.StartsWith(same, n, StringComparison.Ordinal));
    }

    // The field 06 must not become a number, nor 05-3 a day, where a spreadsheet opens the file itself.
    [Theory]
    [InlineData("end-points", "witness-self-supporting,cone 06,-6,60,998,")]
    [InlineData("cones", "cone 06,-6,whole,")]
    [InlineData("cone-facts", ",cones 05-3,")]
    public async Task The_csv_of_a_table_keeps_cones_as_text(string table, string line)
    {
        using var response = await api.Get($"/v1/tables/{table}.csv");
        Assert.Contains(line, await response.Content.ReadAsStringAsync(Support.Api.Cancel), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/v1/limits?jurisdiction=eu&substance=lead", "lead-flatware-fda", "lead-fillable-ware-eu")]
    [InlineData("/v1/limits?jurisdiction=european-union", "silica-osha-pel", "exceedance-rule-eu")]
    [InlineData("/v1/limits?substance=silica", "antimony-osha-pel", "silica-osha-pel")]
    [InlineData("/v1/cautions?appliesTo=lead", "carbon-monoxide", "lead-and-cadmium")]
    [InlineData("/v1/processes?kiln=gas&atmosphere=reduction", "electric-oxidation", "salt")]
    public async Task A_list_is_filtered(string url, string without, string with)
    {
        var ids = (await api.Json(url)).GetProperty("items").EnumerateArray().Select(i => i.GetProperty("id").GetString()).ToList();
        Assert.Contains(with, ids);
        Assert.DoesNotContain(without, ids);
    }

    [Theory]
    [InlineData("/v1/limits?jurisdiction=mars", "european-union")]
    [InlineData("/v1/limits?substance=leed", "lead")]
    [InlineData("/v1/cautions?stage=mixin", "mixing")]
    [InlineData("/v1/processes?atmosphere=reducing", "reduction")]
    public async Task A_word_that_no_row_has_is_refused_with_those_that_some_have(string url, string known)
    {
        using var response = await api.Get(url);
        Assert.Contains(known, (await Problems.Findings(response, 400, "word-unknown"))[0].GetProperty("allowed").Strings());
    }

    [Fact]
    public async Task Every_equation_has_its_anchor_and_every_link_of_the_guide_an_address()
    {
        foreach (var equation in (await api.Json("/v1/equations")).GetProperty("items").EnumerateArray())
        {
            var (page, documentation) = (equation.GetProperty("page").GetString()!, equation.GetProperty("documentation").GetString()!);
            using var response = await api.Get(page.Split('#')[0]);
            var text = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
            Assert.Contains($"id=\"{page.Split('#')[1]}\"", text, StringComparison.Ordinal);
            Assert.Contains($"id=\"{documentation.Split('#')[1]}\"", text, StringComparison.Ordinal);
            var links = text.Split("href=\"")[1..].Select(l => l.Split('"')[0]);
            foreach (var link in links.Where(l => l.StartsWith("/guide/", StringComparison.Ordinal)))
            {
                using var other = await api.Get(link.Split('#')[0]);
                Assert.True(other.IsSuccessStatusCode, link);
            }
        }

        using var none = await api.Get("/guide/none");
        await Problems.Findings(none, 404, "not-found");
    }

    [Fact]
    public async Task What_is_derived_names_more_than_that()
    {
        foreach (var equation in (await api.Json("/v1/equations")).GetProperty("items").EnumerateArray())
        {
            // An order of judgement over cited rows: it rests on no equation.
            if (equation.GetProperty("restsOn").GetArrayLength() > 0)
                Assert.NotEqual(["derived"], equation.GetProperty("sources").Strings());
        }
    }
}
