using System.Text.Json;

namespace ConeService.Api.Tests.Contract;

/// <summary>
/// From a number of any answer to where it comes from in two requests: a row of the package with its source and the place in it, or the
/// anchor of an equation.
/// </summary>
public class ProvenanceTests(Support.Api api)
{
    // What the answer counts or numbers by itself comes from nowhere else: files of the package and entries of a list.
    private static readonly string[] Own = ["answered", "refused", "moreProblems", "number", "line", "rows", "bytes", "cells", "wholeStep"];

    [Fact]
    public async Task Numbers_of_every_route_lead_to_a_place_or_to_an_equation()
    {
        var (sampled, lost) = (0, new List<string>());
        foreach (var (route, url, body) in RouteQuestions.All.Select(q => q.Data))
        {
            var types = OpenApiDocumentFile.Committed.MediaTypes(route, body is null ? "get" : "post", "200");
            if (!types.Contains("application/json")) continue;
            if (route.StartsWith("/v1/dataset", StringComparison.Ordinal)
                || route.StartsWith("/health", StringComparison.Ordinal)) continue;
            using var response = body is null ? await api.Get(url) : await api.Post(url, body);
            var numbers = Numbers(await Support.Api.Read(response, 200), "", null)
                .Where(n => !Own.Contains(n.Path.Split('.')[^1])).ToList();
            // The first, the last and some between.
            foreach (var (path, link) in numbers.Where((_, i) => i % Math.Max(1, numbers.Count / 3) == 0))
            {
                sampled++;
                if (link is null || !await Leads(link)) lost.Add($"{url} {path} → {link}");
            }
        }

        Assert.Empty(lost);
        Assert.True(sampled >= 60, $"{sampled} numbers were followed.");
    }

    private async Task<bool> Leads(string link)
    {
        var told = await api.Json(link);
        if (link == "/v1/load-rules") told = await api.Json(told.GetProperty("items")[0].GetProperty("row").GetString()!);
        if (told.TryGetProperty("page", out var page))
        {
            using var response = await api.Get(page.GetString()!.Split('#')[0]);
            var text = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
            return text.Contains($"id=\"{page.GetString()!.Split('#')[1]}\"", StringComparison.Ordinal);
        }

        if (told.TryGetProperty("row", out var row) && !told.TryGetProperty("citedSources", out _)) told = await api.Json(row.GetString()!);
        return told.GetProperty("place").GetString() is { Length: > 0 }
            && told.GetProperty("citedSources").EnumerateArray().Any(s => s.GetProperty("name").GetString() is { Length: > 0 });
    }

    // Each number with the nearest address that the object it stands in, or one around it, names.
    private static IEnumerable<(string Path, string? Link)> Numbers(JsonElement element, string path, string? link)
    {
        switch (element.ValueKind)
        {
            case JsonValueKind.Number:
                yield return (path, link);
                break;
            case JsonValueKind.Array:
                foreach (var number in element.EnumerateArray().SelectMany(e => Numbers(e, path, link))) yield return number;
                break;
            case JsonValueKind.Object:
                var own = Link(element) ?? link;
                foreach (var number in element.EnumerateObject().SelectMany(m => Numbers(m.Value, $"{path}.{m.Name}", own)))
                    yield return number;
                break;
        }
    }

    private static string? Link(JsonElement element)
    {
        foreach (var name in (string[])["explain", "row", "href", "lowestHref", "printedBy"])
        {
            if (!element.TryGetProperty(name, out var link)) continue;
            if (link.ValueKind == JsonValueKind.Array) return link[0].GetProperty("href").GetString();
            if (link.GetString()!.StartsWith("/v1/", StringComparison.Ordinal)) return link.GetString();
        }

        return null;
    }
}
