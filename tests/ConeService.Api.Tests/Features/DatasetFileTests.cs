using System.IO.Compression;
using System.Security.Cryptography;
using System.Text.Json;
using ConeService.Api.Tests.Support;
using ConeService.Data;

namespace ConeService.Api.Tests.Features;

/// <summary>The package to take away: what /v1/dataset lists is there, is what it says, and never changes.</summary>
public class DatasetFileTests(Support.Api api)
{
    [Fact]
    public async Task Every_download_has_the_size_and_checksum_it_is_listed_with_and_is_kept_for_ever()
    {
        var downloads = (await api.Json("/v1/dataset")).GetProperty("downloads").EnumerateArray().ToList();
        Assert.Equal(
            ["application/zip", "application/json", "application/vnd.sqlite3", "application/json"],
            downloads.Select(d => d.GetProperty("mediaType").GetString()!));
        foreach (var download in downloads)
        {
            using var response = await api.Get(download.GetProperty("href").GetString()!);
            var bytes = await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel);
            Assert.Equal(download.GetProperty("sha256").GetString(), Convert.ToHexStringLower(SHA256.HashData(bytes)));
            Assert.Equal(download.GetProperty("bytes").GetInt64(), bytes.LongLength);
            Assert.Equal("public, max-age=31536000, immutable", response.Headers.CacheControl!.ToString());
        }
    }

    [Fact]
    public async Task Every_table_lies_beside_the_descriptor_under_the_path_that_it_names()
    {
        using var descriptor = await api.Get("/data/1.7.0/datapackage.json");
        using var json = JsonDocument.Parse(await descriptor.Content.ReadAsStringAsync(Support.Api.Cancel));
        foreach (var table in json.RootElement.GetProperty("resources").EnumerateArray())
        {
            using var response = await api.Get("/data/1.7.0/" + table.GetProperty("path").GetString());
            var bytes = await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel);
            Assert.Equal(table.GetProperty("hash").GetString(), "sha256:" + Convert.ToHexStringLower(SHA256.HashData(bytes)));
            Assert.Equal("text/csv", response.Content.Headers.ContentType!.MediaType);
        }
    }

    [Fact]
    public async Task The_archive_holds_the_package()
    {
        using var response = await api.Get("/data/1.7.0/cone-service-data-1.7.0.zip");
        using var zip = new ZipArchive(await response.Content.ReadAsStreamAsync(Support.Api.Cancel));
        Assert.Contains(zip.Entries, e => e.FullName == "datapackage.json");
        Assert.Contains(zip.Entries, e => e.FullName == "CITATION.cff");
        // Nothing of when or by what it was packed.
        Assert.All(zip.Entries, e => Assert.Equal((1980, e.Length), (e.LastWriteTime.Year, e.CompressedLength)));
    }

    // Made with the build, and what the package makes of itself.
    [Theory]
    [InlineData("zip")]
    [InlineData("json")]
    public async Task What_was_made_with_the_build_is_what_the_package_makes_today(string form)
    {
        var dataset = DatasetLoader.LoadEmbedded();
        var today = form == "zip" ? PackageArchive.Zip(dataset.Files) : PackageJsonWriter.Write(dataset);
        using var response = await api.Get($"/data/1.7.0/cone-service-data-1.7.0.{form}");

        Assert.Equal(today, await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel));
        Assert.Contains("package." + form, typeof(ConeServiceHost).Assembly.GetManifestResourceNames());
    }

    // Cone 06 at 60 °C/h is printed at 998 °C (chart of 2016); zeros are kept, numbers are numbers.
    [Fact]
    public async Task The_document_has_every_row()
    {
        using var response = await api.Get("/data/1.7.0/cone-service-data-1.7.0.json");
        using var json = JsonDocument.Parse(await response.Content.ReadAsStringAsync(Support.Api.Cancel));
        var tables = json.RootElement.GetProperty("tables");
        var dataset = await api.Json("/v1/dataset");
        Assert.Equal(dataset.GetProperty("rows").GetInt32(), tables.EnumerateObject().Sum(t => t.Value.GetArrayLength()));
        var cell = tables.GetProperty("end-points").EnumerateArray().Single(r =>
            r.GetProperty("chart").GetString() == "witness-self-supporting" && r.GetProperty("cone").GetString() == "06"
            && r.GetProperty("rate").GetString() == "60");
        Assert.Equal(998, cell.GetProperty("celsius").GetInt32());
    }

    [Theory]
    [InlineData("/data/1.6.0/datapackage.json")]
    [InlineData("/data/1.7.0/none.csv")]
    public async Task What_is_not_served_is_not_found(string url)
    {
        using var response = await api.Get(url);
        await Problems.Findings(response, 404, "not-found");
    }

    // 1.7.0 brought procedures, and took the composition of the key of end points from a number that may be blank.
    [Fact]
    public async Task What_changed_since_a_version_is_told_by_table()
    {
        var changes = (await api.Json("/v1/dataset/changes?from=1.6.0")).GetProperty("items").EnumerateArray().ToList();
        var procedures = changes.Single(t => t.GetProperty("id").GetString() == "procedures");
        Assert.True(procedures.GetProperty("isNew").GetBoolean());
        var cells = changes.Single(t => t.GetProperty("id").GetString() == "end-points");
        Assert.Equal("rate", cells.GetProperty("fieldsAdded").Strings().Last());
        Assert.Empty(cells.GetProperty("rowsRemoved").EnumerateArray());
        // Both parts of the rule have been practice since 1.7.0: CHANGELOG.md.
        var rule = changes.Single(t => t.GetProperty("id").GetString() == "load-rules").GetProperty("cells").EnumerateArray().Single(c =>
            c.GetProperty("row").GetString() == "open-bodies-for-raku" && c.GetProperty("fieldName").GetString() == "confidence");
        Assert.Equal("common-practice", rule.GetProperty("after").GetString());
    }

    [Theory]
    [InlineData("/v1/dataset/changes", "member-missing")]
    [InlineData("/v1/dataset/changes?from=1.2.0", "word-unknown")]
    public async Task A_version_that_was_not_released_is_refused(string url, string code)
    {
        using var response = await api.Get(url);
        await Problems.Findings(response, 400, code);
    }

    [Fact]
    public async Task Every_page_of_figures_says_how_many_are_from_memory()
    {
        // 32 of the 111 cells of the default chart, counted in data/end-points.csv.
        foreach (var url in (string[])["/", "/cards/cone-6", "/cards/cone-022"])
        {
            using var response = await api.Get(url, "text/html");
            Assert.Contains(
                "32 of the 111 figures of the default chart", await response.Content.ReadAsStringAsync(Support.Api.Cancel),
                StringComparison.Ordinal);
        }
    }

    [Fact]
    public async Task The_home_page_describes_the_data_set_for_search_engines()
    {
        using var response = await api.Get("/", "text/html");
        var page = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        const string Start = "<script type=\"application/ld+json\">";
        var at = page.IndexOf(Start, StringComparison.Ordinal) + Start.Length;
        using var json = JsonDocument.Parse(page[at..page.IndexOf("</script>", at, StringComparison.Ordinal)]);
        Assert.Equal("Dataset", json.RootElement.GetProperty("@type").GetString());
        Assert.Equal("1.7.0", json.RootElement.GetProperty("version").GetString());
        var told = json.RootElement.GetProperty("distribution").EnumerateArray().ToList();
        Assert.Contains(told, d => d.GetProperty("encodingFormat").GetString() == "application/vnd.sqlite3");
        foreach (var download in told)
        {
            using var file = await api.Get(download.GetProperty("contentUrl").GetString()!);
            Assert.Equal(200, (int)file.StatusCode);
            var bytes = await file.Content.ReadAsByteArrayAsync(Support.Api.Cancel);
            Assert.Equal(download.GetProperty("sha256").GetString(), Convert.ToHexStringLower(SHA256.HashData(bytes)));
        }
    }
}
