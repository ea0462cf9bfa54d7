using System.Net;
using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Features;

/// <summary>Faults, landmarks and terms as JSON, CSV and pages.</summary>
public class StudyTests(Support.Api api)
{
    [Fact]
    public async Task Every_fault_landmark_and_term_has_its_address_and_what_it_names_answers()
    {
        var hrefs = new HashSet<string>();
        foreach (var list in (string[])["/v1/faults", "/v1/landmarks", "/v1/glossary"])
        {
            foreach (var item in (await api.Json(list)).GetProperty("items").EnumerateArray())
            {
                var detail = await api.Json($"{list}/{item.GetProperty("id").GetString()}");
                Assert.Equal(item.GetProperty("name").GetString(), detail.GetProperty("name").GetString());
                Gather(detail, hrefs);
            }
        }

        foreach (var href in hrefs)
        {
            using var response = await api.Get(href);
            Assert.True(response.IsSuccessStatusCode, $"{href} answers {(int)response.StatusCode}.");
        }
    }

    // Manganese(III) oxide gives off oxygen near 1080 °C, 1976 °F, and bodies black with manganese bloat by it.
    [Fact]
    public async Task A_fault_leads_to_the_gases_that_feed_it()
    {
        var gases = (await api.Json("/v1/faults/bloating")).GetProperty("gasReleases").EnumerateArray().ToList();
        var manganese = gases.Single(g => g.GetProperty("id").GetString() == "manganese-sesquioxide");
        Assert.Equal(1080, manganese.GetProperty("temperatureCelsius").GetProperty("min").GetDecimal());
        Assert.Equal(1976, manganese.GetProperty("temperatureFahrenheit").GetProperty("max").GetDecimal());
        var row = await api.Json(manganese.GetProperty("row").GetString()!);
        Assert.Contains(row.GetProperty("citedSources").EnumerateArray(), s => s.GetProperty("id").GetString() == "physical-constants");
        Assert.Equal(["carbon-of-clay", "iron-oxide-in-melt", "manganese-sesquioxide", "pyrite", "sulphates-of-clay"],
            gases.Select(g => g.GetProperty("id").GetString()));
        Assert.Empty((await api.Json("/v1/faults/dunting")).GetProperty("gasReleases").EnumerateArray());

        Assert.Equal(["potash", "soda"],
            (await api.Json("/v1/faults/crazing")).GetProperty("oxides").EnumerateArray().Select(o => o.GetProperty("id").GetString()));
        using var card = await api.Get("/cards/fault/bloating");
        var text = WebUtility.HtmlDecode(await card.Content.ReadAsStringAsync(Support.Api.Cancel));
        Assert.Contains("near 1080 °C (1976 °F)", text, StringComparison.Ordinal);
        Assert.Contains("from 1000 °C (1832 °F) on", text, StringComparison.Ordinal);
    }

    // Talc is named by no cause of a fault: only what it gives off ties it to pinholes.
    [Theory]
    [InlineData("talc", "pinholes")]
    [InlineData("altitude", "derating")]
    [InlineData("off-gassing", "gas-release")]
    public async Task What_is_heated_is_found_by_its_name(string query, string id) => Assert.Contains(
        (await api.Json("/v1/search?q=" + query)).GetProperty("items").EnumerateArray(), h => h.GetProperty("id").GetString() == id);

    // Both twins of a range inside a flat detail: 573 °C is 1063.4 °F, 50 °C/h is 90 °F/h.
    [Fact]
    public async Task A_landmark_answers_its_band_in_both_units()
    {
        var landmark = await api.Json("/v1/landmarks/quartz-down");
        Assert.Equal(573, landmark.GetProperty("temperatureCelsius").GetProperty("min").GetDecimal());
        Assert.Equal(1063.4m, landmark.GetProperty("temperatureFahrenheit").GetProperty("min").GetDecimal());
        Assert.Equal(50, landmark.GetProperty("greatestRateCelsiusPerHour").GetProperty("min").GetDecimal());
        Assert.Equal(90, landmark.GetProperty("greatestRateFahrenheitPerHour").GetProperty("min").GetDecimal());
        Assert.Equal(JsonValueKind.Null, landmark.GetProperty("holdMinutes").ValueKind);
    }

    [Theory]
    [InlineData("/v1/faults/bloating.html", "Bloating", "next cone is down too")]
    [InlineData("/v1/faults.html", "Black core", "burn-out of carbon")]
    [InlineData("/v1/landmarks/carbon-sulphur.html", "burn out", "Black core")]
    [InlineData("/v1/glossary/greenware.html", "Greenware", "leather-hard")]
    [InlineData("/v1/glossary.html", "Candling", "overnight")]
    public async Task Each_has_a_page_with_its_title(string url, params string[] words)
    {
        using var response = await api.Get(url);
        Assert.Equal("text/html", response.Content.Headers.ContentType!.MediaType);
        var page = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Contains("<h1>", page, StringComparison.Ordinal);
        Assert.All(words, w => Assert.Contains(w, page, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_slip_in_an_id_is_told_what_was_probably_meant()
    {
        using var response = await api.Get("/v1/faults/bloting");
        Assert.Contains("bloating", (await Problems.Findings(response, 404, "not-found"))[0].GetProperty("allowed").Strings());
    }

    [Fact]
    public async Task What_is_found_has_an_address_that_answers_and_a_page_with_a_form()
    {
        foreach (var query in (string[])["glaze", "soak", "reduction", "shelf", "hotter 012 or 06", "2232F"])
        {
            foreach (var hit in (await api.Json("/v1/search?q=" + Uri.EscapeDataString(query))).GetProperty("items").EnumerateArray())
            {
                using var response = await api.Get(hit.GetProperty("href").GetString()!);
                Assert.True(response.IsSuccessStatusCode, $"{hit} answers {(int)response.StatusCode}.");
            }
        }

        using var page = await api.Get("/v1/search.html?q=black%20%3Ccore%3E");
        var text = await page.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Contains("<label for=\"q\">", text, StringComparison.Ordinal);
        Assert.Contains("<a href=\"/v1/faults/black-core\">Black core</a>", text, StringComparison.Ordinal);
        Assert.DoesNotContain("<core>", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_search_for_nothing_is_refused_by_the_parameter()
    {
        using var response = await api.Get("/v1/search");
        Assert.Equal("q", (await Problems.Findings(response, 400, "member-missing"))[0].GetProperty("parameter").GetString());
    }

    private static void Gather(JsonElement element, HashSet<string> into)
    {
        if (element.ValueKind == JsonValueKind.Array)
        {
            foreach (var item in element.EnumerateArray()) Gather(item, into);
        }
        else if (element.ValueKind == JsonValueKind.Object)
        {
            foreach (var member in element.EnumerateObject())
            {
                if (member.Name is "href" or "row" && member.Value.ValueKind == JsonValueKind.String) into.Add(member.Value.GetString()!);
                else Gather(member.Value, into);
            }
        }
    }
}
