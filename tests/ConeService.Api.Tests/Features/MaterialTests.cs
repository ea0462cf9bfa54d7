using ConeService.Api.Tests.Support;
using Microsoft.AspNetCore.Mvc.Testing;

namespace ConeService.Api.Tests.Features;

/// <summary>The lists of bodies and coats, with a studio's own.</summary>
public class MaterialTests(Support.Api api)
{
    [Fact]
    public async Task Glazes_are_filtered_by_cone_and_atmosphere()
    {
        // By the trade table: those whose range holds cone 6 and whose atmospheres hold oxidation.
        var list = await api.Json("/v1/glazes?cone=^6&atmosphere=oxidation");
        var ids = list.GetProperty("items").EnumerateArray().Select(g => g.GetProperty("id").GetString()!).ToList();

        Assert.Equal("6", list.GetProperty("cone").GetString());
        Assert.Contains("mid-range-gloss", ids);
        Assert.Contains("copper-red-local", ids);
        Assert.DoesNotContain("celadon", ids);
        Assert.DoesNotContain("low-fire-boron-clear", ids);
    }

    [Fact]
    public async Task Bodies_are_filtered_by_cone()
    {
        var list = await api.Json("/v1/clay-bodies?cone=06");
        var ids = list.GetProperty("items").EnumerateArray().Select(b => b.GetProperty("id").GetString()!).ToList();

        // Mature at 06 by the trade table.
        Assert.Equal(["brick-tile", "low-fire-white", "raku-body", "red-earthenware", "talc-body", "terracotta", "white-earthenware"], ids);
    }

    [Fact]
    public async Task Both_filters_wrong_are_told_at_once()
    {
        using var response = await api.Get("/v1/glazes?cone=0&atmosphere=smoke");
        var findings = await Problems.Findings(response, 400, "invalid-request");

        Assert.Equal(["cone", "atmosphere"], findings.Select(f => f.Place()));
    }

    [Fact]
    public async Task A_body_says_from_which_cone_it_is_harmed_and_where_sources_disagree()
    {
        // Best 6; melts 7 whole cones over: 13.
        var body = await api.Json("/v1/clay-bodies/mid-range-stoneware-light");

        Assert.Equal(
            ["warps 8", "bloats 9", "slumps 10", "melts 13"],
            body.GetProperty("overfireSteps").EnumerateArray()
                .Select(s => $"{s.GetProperty("step").GetString()} {s.GetProperty("cone").GetString()}"));
        var disagreement = Assert.Single(body.GetProperty("disagreements").EnumerateArray());
        Assert.Equal("bisque-of-stoneware", disagreement.GetProperty("id").GetString());
    }

    [Theory]
    [InlineData("/v1/clay-bodies/red-earthenwear", "red-earthenware")]
    [InlineData("/v1/glazes/celedon", "celadon")]
    [InlineData("/v1/load-rules/body-stands-glaze-cones", "body-stands-glaze-cone")]
    public async Task What_is_not_there_comes_with_near_matches(string url, string near)
    {
        using var response = await api.Get(url);

        Assert.Contains(near, (await Problems.Findings(response, 404, "not-found"))[0].GetProperty("allowed").Strings());
    }

    [Fact]
    public async Task A_studio_overlay_adds_its_own_bodies_and_glazes_end_to_end()
    {
        var overlay = Path.Combine(Repository.Root, "samples", "harbour-yard-overlay");
        using var factory = new WebApplicationFactory<Program>()
            .WithWebHostBuilder(b => b.UseSetting("ConeService:Data:Overlays:0", overlay));
        using var client = factory.CreateClient();
        using var content = new StringContent("""
            {"kiln":{"heat":"electric","maxCone":"8","atmospheres":["oxidation"]},
             "firing":{"firingKind":"glaze","cone":"6","atmosphere":"oxidation"},
             "pieces":[{"id":"mug","body":"harbour-yard-slipway-white","state":"bisqued","coats":[{"glaze":"harbour-yard-tide-blue"}]},
                       {"id":"dish","body":"harbour-yard-quay-red","state":"bisqued","coats":[{"glaze":"harbour-yard-tin-sail"}]}]}
            """, System.Text.Encoding.UTF8, "application/json");
        using var response = await client.PostAsync(new Uri("/v1/loads/check", UriKind.Relative), content, Support.Api.Cancel);
        var answer = await Support.Api.Read(response, 200);

        Assert.EndsWith("+harbour-yard.1.0.0", answer.GetProperty("datasetVersion").GetString(), StringComparison.Ordinal);
        Assert.Equal(["accept", "refuse"], answer.GetProperty("pieces").EnumerateArray().Select(p => p.GetProperty("verdict").GetString()));
        // Quay Red: best 04, melts 8 over; cone 6 is 9 over.
        var reasons = answer.GetProperty("pieces")[1].GetProperty("reasons").EnumerateArray().ToList();
        Assert.Contains(reasons, r =>
            r.GetProperty("message").GetString()!.StartsWith("Quay Red melts onto the shelf", StringComparison.Ordinal)
            && r.GetProperty("sources").Strings().Contains("harbour-yard-tests"));
        Assert.Equal("04", answer.GetProperty("suggestedFirings")[0].GetProperty("cone").GetString());
    }
}
