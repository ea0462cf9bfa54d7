using System.Text.Json;
using System.Xml.Linq;

namespace ConeService.Api.Tests.Features;

/// <summary>oEmbed 1.0 (oembed.com, sections 2.2 to 4).</summary>
public sealed class OEmbedTests(Support.Api api)
{
    private string Root => api.Client.BaseAddress!.ToString().TrimEnd('/');

    [Theory]
    [InlineData("cone-6", "", "Cone 6")]
    [InlineData("process/raku-western", "&format=json", "Western raku")]
    [InlineData("schedule/bisque-careful?cone=06", "", null)]
    public async Task A_card_is_answered_as_rich_with_its_frame(string card, string more, string? title)
    {
        var answer = await api.Json($"/oembed?url={Uri.EscapeDataString($"{Root}/cards/{card}")}{more}");
        Assert.Equal("1.0", answer.GetProperty("version").GetString());
        Assert.Equal("rich", answer.GetProperty("type").GetString());
        Assert.Equal(640, answer.GetProperty("width").GetInt32());
        if (title is not null) Assert.Equal(title, answer.GetProperty("title").GetString());
        Assert.StartsWith($"<iframe src=\"{Root}/cards/{card}\"", answer.GetProperty("html").GetString(), StringComparison.Ordinal);
    }

    // 2.2.1: neither the width nor the height may exceed what was asked for.
    [Theory]
    [InlineData("&maxwidth=400", 320, 360)]
    [InlineData("&maxwidth=300", 300, 360)]
    [InlineData("&maxheight=200", 320, 200)]
    [InlineData("&maxwidth=500&maxheight=5000", 320, 360)]
    public async Task The_frame_keeps_within_the_room_there_is(string room, int width, int height)
    {
        var answer = await api.Json($"/oembed?url={Uri.EscapeDataString(Root + "/cards/cone-6")}{room}");
        Assert.Equal((width, height), (answer.GetProperty("width").GetInt32(), answer.GetProperty("height").GetInt32()));
        Assert.Contains("size=short", answer.GetProperty("html").GetString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_same_comes_as_xml()
    {
        using var response = await api.Get($"/oembed?url={Uri.EscapeDataString(Root + "/cards/cone-6")}&format=xml");
        Assert.Equal("text/xml", response.Content.Headers.ContentType?.MediaType);
        var answer = XDocument.Parse(await response.Content.ReadAsStringAsync(Support.Api.Cancel)).Root!;
        Assert.Equal("oembed", answer.Name.LocalName);
        Assert.Equal("rich", answer.Element("type")?.Value);
        Assert.Contains("/cards/cone-6", answer.Element("html")?.Value, StringComparison.Ordinal);
    }

    // 2.3.4: 404 for an address without an answer, 501 for a format that is not made. 401 is for what is private, which nothing here is.
    [Theory]
    [InlineData("?url=https%3A%2F%2Fexample.org%2Fcards%2Fcone-6", 404)]
    [InlineData("?url=%2Fv1%2Fcones%2F6", 404)]
    [InlineData("?url=%2Fcards%2Fnone", 404)]
    [InlineData("", 400)]
    [InlineData("?url=%2Fcards%2Fcone-6%3Fdataset%3D1.6.0", 409)]
    [InlineData("?url=%2Fcards%2Fcone-6%3Fkolour%3Dred", 400)]
    [InlineData("?url=%2Fcards%2Fcone-6%3Fsize%3Dhuge", 400)]
    [InlineData("?url=%2Fcards%2Fconvert%3Fcone%3D0", 400)]
    [InlineData("?url=%2Fcards%2Fcone-6&format=yaml", 501)]
    [InlineData("?url=%2Fcards%2Fcone-6&maxwidth=wide", 400)]
    public async Task What_can_not_be_answered_has_the_status_of_the_standard(string query, int status)
    {
        using var response = await api.Get("/oembed" + query);
        Assert.Equal(status, (int)response.StatusCode);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
    }

    [Fact]
    public async Task A_frame_keeps_the_package_that_its_card_is_pinned_to()
    {
        var version = (await api.Json("/v1/dataset")).GetProperty("datasetVersion").GetString();
        var answer = await api.Json($"/oembed?url={Uri.EscapeDataString($"{Root}/cards/cone-6?dataset={version}")}");
        Assert.Contains($"/cards/cone-6?dataset={version}\"", answer.GetProperty("html").GetString(), StringComparison.Ordinal);
        using var page = await api.Get("/cards/cone-6?dataset=" + version);
        Assert.Contains(
            $"href=\"/oembed?url=%2Fcards%2Fcone-6%3Fdataset%3D{version}&amp;format=json\"",
            await page.Content.ReadAsStringAsync(Support.Api.Cancel), StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_card_leads_to_its_oembed_answer_in_both_formats()
    {
        using var page = await api.Get("/cards/cone-6");
        var html = await page.Content.ReadAsStringAsync(Support.Api.Cancel);
        foreach (var (type, format) in (ReadOnlySpan<(string, string)>)[("application/json+oembed", "json"), ("text/xml+oembed", "xml")])
        {
            var link = $"<link rel=\"alternate\" type=\"{type}\" href=\"/oembed?url=%2Fcards%2Fcone-6&amp;format={format}\"";
            Assert.Contains(link, html, StringComparison.Ordinal);
        }

        var answer = await api.Json("/oembed?url=%2Fcards%2Fcone-6&format=json");
        Assert.Equal(JsonValueKind.String, answer.GetProperty("html").ValueKind);
    }
}
