using System.Text.Json;
using System.Text.RegularExpressions;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

/// <summary>Cards as pages: what they answer, how large they are, and what they say to a question that can't be answered.</summary>
public sealed partial class CardTests(Support.Api api)
{
    // Among them the largest: a course page on a slow line still shows it at once.
    private const int MostBytes = 15_000;

    [Fact]
    public async Task Every_card_is_a_small_page_with_language_title_and_description()
    {
        var wrong = new List<string>();
        foreach (var card in await CardAddresses.All(api))
        {
            foreach (var size in (string[])["size=full", "size=short"])
            {
                using var response = await api.Get(CardAddresses.With(card, size));
                var page = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
                if (!response.IsSuccessStatusCode) wrong.Add($"{card}: {(int)response.StatusCode}");
                if (page.Length > MostBytes) wrong.Add($"{card} {size}: {page.Length} characters");
                if (!page.Contains("<html lang=\"en\">", StringComparison.Ordinal)) wrong.Add($"{card}: no language");
                if (!Title().IsMatch(page)) wrong.Add($"{card}: no title");
                if (!page.Contains("<meta name=\"description\"", StringComparison.Ordinal)) wrong.Add($"{card}: no description");
                if (Promise().IsMatch(page)) wrong.Add($"{card}: calls something safe");
                if (Script().IsMatch(page)) wrong.Add($"{card}: runs a script");
            }
        }

        Assert.Empty(wrong);
    }

    // Orton, Temperature Equivalents, self-supporting cones at 60 °C/h: cone 6 at 1222, 06 at 998 °C; 1222 °C are 2232 °F.
    [Theory]
    [InlineData("convert?cone=6&rate=60C/h", "Cone 6 goes down at 1222 °C (2232 °F)")]
    [InlineData("convert?cone=o6&rate=60C/h", "Cone 06 goes down at 998 °C (1828 °F)")]
    [InlineData("convert?temperature=1222&unit=C&rate=60C/h", "puts down cone 6")]
    [InlineData("convert?temperature=2232&unit=F&rate=60C/h", "puts down cone 6")]
    [InlineData("convert?temperature=1222C&unit=F&rate=60C/h", "puts down cone 6")]
    [InlineData("convert?cone=6", "6 (here)")]
    public async Task The_converter_answers_on_the_same_page(string card, string answer)
    {
        var page = await Page("/cards/" + card);
        Assert.Contains(answer, Text(page), StringComparison.Ordinal);
        Assert.Contains("<form method=\"get\" action=\"/cards/convert\">", page, StringComparison.Ordinal);
    }

    // Counted in the files of the package: of 111 cells of the self-supporting chart 32 say from-memory, of all 603 there are 264.
    [Theory]
    [InlineData("/cards/cone-6")]
    [InlineData("/cards/chart")]
    [InlineData("/cards/chart?chart=nbs-1926")]
    [InlineData("/cards/convert?cone=6")]
    [InlineData("/")]
    public async Task Who_sees_cells_sees_how_many_are_from_memory(string page) => Assert.Contains(
        "32 of the 111 figures of the default chart, 264 of the 603 of all charts", Text(await Page(page)), StringComparison.Ordinal);

    [Theory]
    [InlineData("convert?cone=0")]
    [InlineData("convert?temperature=hot")]
    [InlineData("convert?temperature=1222&rate=fast")]
    [InlineData("fit?body=red-earthenware&cone=0")]
    [InlineData("colour-compare?colorant=unobtainium")]
    [InlineData("glossary?term=unobtainium")]
    [InlineData("glossary?letter=9")]
    [InlineData("chart?rate=1000C/h")]
    [InlineData("chart?chart=nope")]
    [InlineData("landmarks?phase=sideways")]
    [InlineData("cautions?for=dragons")]
    [InlineData("fit?body=nope&cone=6")]
    [InlineData("fit?body=red-earthenware&glaze=nope&cone=04")]
    public async Task What_a_form_can_not_answer_is_told_beside_the_form(string card)
    {
        using var response = await api.Get("/cards/" + card);
        Assert.Equal(400, (int)response.StatusCode);
        Assert.Equal("no-store", response.Headers.CacheControl?.ToString());
        var page = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Contains("role=\"alert\"", page, StringComparison.Ordinal);
        Assert.Contains("<form", page, StringComparison.Ordinal);
        Assert.DoesNotContain("Source: .", page, StringComparison.Ordinal);
        // What a form asks is answered in its own words, not in those of a body that is posted.
        Assert.DoesNotContain("ownBody", page, StringComparison.Ordinal);
    }

    // Forms ask by GET and send what was left empty.
    [Theory]
    [InlineData("convert?cone=6&temperature=&unit=C&rate=60C%2Fh")]
    [InlineData("chart?chart=&rate=&unit=both")]
    [InlineData("fit?body=red-earthenware&glaze=&cone=04&use=")]
    [InlineData("cone-6?theme=")]
    public async Task A_field_of_a_form_that_was_left_empty_asks_nothing(string card) => await Page("/cards/" + card);

    [Theory]
    [InlineData("/cards/ware/stonewear", 404)]
    [InlineData("/cards/process/raku", 404)]
    [InlineData("/cards/colour/coper", 404)]
    [InlineData("/cards/compare/salt", 404)]
    [InlineData("/cards/fault/craising", 404)]
    [InlineData("/cards/landmarks?phase=sideways", 400)]
    [InlineData("/cards/schedule/bisque-quick", 404)]
    [InlineData("/cards/cautions?for=dragons", 400)]
    [InlineData("/cards/chart?unit=K", 400)]
    [InlineData("/cards/cone-6?size=huge", 400)]
    [InlineData("/cards/cone-6?theme=pink", 400)]
    [InlineData("/cards/convert?kone=6", 400)]
    [InlineData("/cards/none", 404)]
    [InlineData("/cards?card=none", 404)]
    public async Task Every_refused_card_is_a_page_with_language_and_title(string url, int status)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, url);
        request.Headers.TryAddWithoutValidation("Accept", "text/html");
        using var response = await api.Client.SendAsync(request, Support.Api.Cancel);
        Assert.Equal(status, (int)response.StatusCode);
        var page = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Contains("<html lang=\"en\">", page, StringComparison.Ordinal);
        Assert.Matches(Title(), page);
        // Within a frame no other page may stand: its links open pages of their own.
        if (url.StartsWith("/cards/", StringComparison.Ordinal))
            Assert.DoesNotMatch("<a href=\"[^\"]*\">", page);
    }

    // Fetch Metadata (W3C): a page of its own is asked for as document, a frame as iframe.
    [Theory]
    [InlineData("", "iframe", "color-scheme:light;", "Sec-Fetch-Dest")]
    [InlineData("", null, "color-scheme:light;", "Sec-Fetch-Dest")]
    [InlineData("", "document", "color-scheme:light dark;", "Sec-Fetch-Dest")]
    [InlineData("?theme=dark", "iframe", "color-scheme:dark;", null)]
    [InlineData("?theme=auto", "iframe", "color-scheme:light dark;", null)]
    [InlineData("?theme=light", "document", "color-scheme:light;", null)]
    public async Task A_card_is_light_in_a_frame_unless_told(string query, string? destination, string scheme, string? varies)
    {
        using var request = new HttpRequestMessage(HttpMethod.Get, "/cards/cone-6" + query);
        if (destination is not null) request.Headers.TryAddWithoutValidation("Sec-Fetch-Dest", destination);
        using var response = await api.Client.SendAsync(request, Support.Api.Cancel);
        Assert.Contains(":root{" + scheme, await response.Content.ReadAsStringAsync(Support.Api.Cancel), StringComparison.Ordinal);
        Assert.Equal(varies is not null, response.Headers.Vary.Contains("Sec-Fetch-Dest"));
    }

    [Fact]
    public async Task The_head_of_a_card_tells_machines_what_it_is()
    {
        var page = await Page("/cards/process/raku-western");
        var block = Markup().Match(page).Groups[1].Value;
        using var markup = JsonDocument.Parse(block);
        Assert.Equal("LearningResource", markup.RootElement.GetProperty("@type").GetString());
        Assert.Equal("Western raku", markup.RootElement.GetProperty("name").GetString());
        Assert.Contains("<meta property=\"og:title\" content=\"Western raku\">", page, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_chart_marks_cones_that_differ_by_a_zero_and_begins_with_the_hottest()
    {
        var page = await Page("/cards/chart");
        Assert.Contains("06 <span class=\"mark\">not 6</span>", page, StringComparison.Ordinal);
        Assert.Contains("6 <span class=\"mark\">not 06</span>", page, StringComparison.Ordinal);
        Assert.True(page.IndexOf(">14 <", StringComparison.Ordinal) < page.IndexOf(">022<", StringComparison.Ordinal));
    }

    // The trade: Western raku is porous and no ware for food; red earthenware does not stand cone 6.
    [Theory]
    [InlineData("process/raku-western", "Not for food.")]
    [InlineData("process/raku-western", "Does not hold water.")]
    [InlineData("process/raku-western", "Not for the microwave oven.")]
    [InlineData("fit?body=red-earthenware&cone=6", "No: do not fire it so.")]
    [InlineData("fit?body=mid-range-stoneware-light&glaze=mid-range-gloss&cone=6", "They go together.")]
    [InlineData("fault/crazing", "What to change")]
    [InlineData("fault/bloating", "bisque")]
    [InlineData("glossary?term=candling", "80 to 95 °C")]
    [InlineData("glossary?term=greenware, dwell", "Soaking")]
    // Alpha and beta quartz change into each other at 573 °C.
    [InlineData("landmarks", "573")]
    [InlineData("conditions", "an electric kiln has no flame to reduce with")]
    // In a student's words where there is room: the powder as well as the fume, and one start of reduction.
    [InlineData("conditions", "Start reduction at 860 to 900 °C, and never reduce below 760 °C")]
    [InlineData("colour/manganese", "The powder meets whoever mixes dark clay or glaze")]
    [InlineData("cautions?for=nickel", "Nickel powder causes cancer when breathed")]
    [InlineData("process/raku-western", "Wear wool, cotton or leather, gloves and a face shield")]
    public async Task Cards_say_what_a_student_must_know(string card, string sentence) =>
        Assert.Contains(sentence, Text(await Page("/cards/" + card)), StringComparison.Ordinal);

    [Fact]
    public async Task The_index_gives_the_lines_to_paste_with_whole_addresses()
    {
        var page = Text(await Page("/cards?card=" + Uri.EscapeDataString("schedule/bisque-careful?cone=06")));
        var root = api.Client.BaseAddress!.ToString().TrimEnd('/');
        Assert.Contains($"<iframe src=\"{root}/cards/schedule/bisque-careful?cone=06&amp;size=short\"", page, StringComparison.Ordinal);
        Assert.Contains("width=\"320\" height=\"360\"", page, StringComparison.Ordinal);
        Assert.Contains($"<a href=\"{root}/cards/schedule/bisque-careful?cone=06\">", page, StringComparison.Ordinal);
    }

    private static string Text(string page) => System.Net.WebUtility.HtmlDecode(page);

    private async Task<string> Page(string url)
    {
        using var response = await api.Get(url);
        Assert.Equal(200, (int)response.StatusCode);
        return await response.Content.ReadAsStringAsync(Support.Api.Cancel);
    }

    [GeneratedRegex("<title>[^<]+</title>")]
    private static partial Regex Title();

    [GeneratedRegex(@"\b(food-)?safe\b", RegexOptions.IgnoreCase)]
    private static partial Regex Promise();

    [GeneratedRegex("<script(?! type=\"application/ld\\+json\")", RegexOptions.IgnoreCase)]
    private static partial Regex Script();

    [GeneratedRegex("<script type=\"application/ld\\+json\">(.*?)</script>", RegexOptions.Singleline)]
    private static partial Regex Markup();
}
