using System.Text.RegularExpressions;

namespace ConeService.Api.Tests.Features;

/// <summary>Pages to print: what they say, and what is refused.</summary>
public sealed partial class PosterTests(Support.Api api)
{
    // Orton, self-supporting cones: cone 6 at 1222 °C (2232 °F) at 60 °C/h. The trade: never load damp ware; raku is not for food.
    [Theory]
    [InlineData("chart", "1222</td><td>2232")]
    [InlineData("cautions", "Carbon monoxide")]
    [InlineData("before-you-load", "bone dry")]
    [InlineData("before-you-load", "3 posts")]
    [InlineData("cones", "06 is not 6")]
    [InlineData("process-raku-western", "Not for food.")]
    public async Task A_poster_tells_what_hangs_on_a_wall(string poster, string text)
    {
        var page = await Page($"/posters/{poster}?paper=letter");
        Assert.Contains("@page{size:letter;margin:12mm}", page, StringComparison.Ordinal);
        Assert.Contains(text, System.Net.WebUtility.HtmlDecode(page), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Every_poster_is_offered_beside_the_cards_and_promises_nothing()
    {
        var names = Names().Matches(await Page("/cards")).Select(m => m.Groups[1].Value).ToList();
        var processes = (await api.Json("/v1/processes")).GetProperty("items").GetArrayLength();
        Assert.Equal(4 + processes, names.Count);
        foreach (var name in names)
        {
            var page = await Page("/posters/" + name);
            Assert.Contains("<html lang=\"en\">", page, StringComparison.Ordinal);
            Assert.Contains("<h1>", page, StringComparison.Ordinal);
            Assert.DoesNotMatch(Promise(), page);
            // Where people can be hurt, it defers to local codes; a chart of cones hurts nobody.
            if (name is not ("chart" or "cones")) Assert.Contains("Local codes", page, StringComparison.Ordinal);
        }
    }

    [Theory]
    [InlineData("/posters/none", 404)]
    [InlineData("/posters/process-none", 404)]
    [InlineData("/posters/chart?paper=a5", 400)]
    [InlineData("/posters/chart?size=short", 400)]
    public async Task What_is_no_poster_is_refused(string url, int status)
    {
        using var response = await api.Get(url);
        Assert.Equal(status, (int)response.StatusCode);
    }

    private async Task<string> Page(string url)
    {
        using var response = await api.Get(url);
        Assert.Equal(200, (int)response.StatusCode);
        return await response.Content.ReadAsStringAsync(Support.Api.Cancel);
    }

    [GeneratedRegex("href=\"/posters/([^\"]+)\"")]
    private static partial Regex Names();

    [GeneratedRegex(@"\b(food-)?safe\b", RegexOptions.IgnoreCase)]
    private static partial Regex Promise();
}
