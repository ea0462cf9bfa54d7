using System.IO.Compression;
using System.Xml.Linq;
using CsvHelper;

namespace ConeService.Api.Tests.Features;

/// <summary>Questions in the forms that course systems and printers take.</summary>
public class QuestionFormatTests(Support.Api api)
{
    private const string Asked = "?count=40&seed=5";

    // Namespaces and types of items as QTI 2.1 and 3.0 (1EdTech) name them.
    [Theory]
    [InlineData("2.1", "http://www.imsglobal.org/xsd/imsqti_v2p1", "imsqti_item_xmlv2p1", "simpleChoice", "value")]
    [InlineData("3.0", "http://www.imsglobal.org/xsd/imsqtiasi_v3p0", "imsqti_item_xmlv3p0", "qti-simple-choice", "qti-value")]
    public async Task A_package_lists_its_items_and_each_is_well_formed_with_one_right_choice(
        string version, string space, string type, string choice, string value)
    {
        using var response = await api.Get($"/v1/questions.zip{Asked}&qti={version}");
        Assert.Equal("application/zip", response.Content.Headers.ContentType!.MediaType);
        var bytes = await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel);
        using var zip = new ZipArchive(new MemoryStream(bytes));
        var manifest = Read(zip, "imsmanifest.xml");
        var resources = manifest.Descendants().Where(e => e.Name.LocalName == "resource").ToList();
        Assert.Equal(40, resources.Count);
        Assert.All(resources, r => Assert.Equal(type, r.Attribute("type")!.Value));
        foreach (var resource in resources)
        {
            var item = Read(zip, resource.Attribute("href")!.Value);
            Assert.Equal(space, item.Name.NamespaceName);
            var choices = item.Descendants(XName.Get(choice, space)).Select(c => c.Attribute("identifier")!.Value).ToList();
            Assert.Equal(["A", "B", "C", "D"], choices);
            Assert.Contains(item.Descendants(XName.Get(value, space)).Single().Value, choices);
            // An identifier of XML: no digit first, no colon.
            Assert.Matches("^[a-z][a-z0-9-]*$", item.Attribute("identifier")!.Value);
        }

        using var again = await api.Get($"/v1/questions.zip{Asked}&qti={version}");
        Assert.Equal(bytes, await again.Content.ReadAsByteArrayAsync(Support.Api.Cancel));
    }

    [Fact]
    public async Task The_table_the_sheet_and_the_json_ask_the_same()
    {
        var questions = (await api.Json("/v1/questions" + Asked)).GetProperty("items").EnumerateArray().ToList();
        using var table = await api.Get("/v1/questions.csv" + Asked);
        using var csv = CsvReader.FromText(
            await table.Content.ReadAsStringAsync(Support.Api.Cancel), new CsvReaderOptions { Separator = ',', HasHeader = false });
        var rows = new List<string[]>();
        while (csv.Read()) rows.Add([.. Enumerable.Range(0, csv.FieldCount).Select(csv.GetString)]);
        Assert.Equal(["id", "topic", "question", "a", "b", "c", "d", "right"], rows[0].Take(8));
        rows.RemoveAt(0);
        using var sheet = await api.Get("/v1/questions.html" + Asked);
        var page = System.Net.WebUtility.HtmlDecode(await sheet.Content.ReadAsStringAsync(Support.Api.Cancel));
        Assert.Equal(questions.Count, rows.Count);
        for (var i = 0; i < rows.Count; i++)
        {
            Assert.Equal(questions[i].GetProperty("id").GetString(), rows[i][0]);
            Assert.Equal(questions[i].GetProperty("right").GetString(), rows[i][7]);
            Assert.Contains(questions[i].GetProperty("name").GetString()!, page, StringComparison.Ordinal);
        }

        Assert.Contains("<h2>Key</h2>", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Gift_text_has_a_right_answer_in_every_question()
    {
        using var response = await api.Get("/v1/questions.gift" + Asked);
        var text = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Equal(40, text.Split('\n').Count(l => l.StartsWith("::", StringComparison.Ordinal)));
        Assert.Equal(40, text.Split('\n').Count(l => l.StartsWith('=')));
        Assert.Equal(120, text.Split('\n').Count(l => l.StartsWith('~')));
    }

    [Fact]
    public async Task A_version_of_qti_that_is_not_there_is_refused()
    {
        using var response = await api.Get("/v1/questions.zip?qti=1.2");
        await Support.Problems.Findings(response, 400, "word-unknown");
    }

    private static XElement Read(ZipArchive zip, string name)
    {
        using var stream = zip.GetEntry(name)!.Open();
        return XDocument.Load(stream).Root!;
    }
}
