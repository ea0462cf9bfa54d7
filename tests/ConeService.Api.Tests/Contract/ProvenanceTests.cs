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
        var followed = new Dictionary<string, bool>(StringComparer.Ordinal);
        var listed = (await Lists()).Where(u => !u.StartsWith("/v1/tables", StringComparison.Ordinal)).Select(u => ("", u, (string?)null));
        IEnumerable<(string, string, string?)> questions = [.. RouteQuestions.All.Select(q => q.Data), .. listed];
        foreach (var (route, url, body) in questions)
        {
            var types = route.Length == 0
                ? ["application/json"]
                : OpenApiDocumentFile.Committed.MediaTypes(route, body is null ? "get" : "post", "200");
            if (!types.Contains("application/json")) continue;
            if (route.StartsWith("/v1/dataset", StringComparison.Ordinal)
                || route.StartsWith("/health", StringComparison.Ordinal)) continue;
            using var response = body is null ? await api.Get(url) : await api.Post(url, body);
            var numbers = Numbers(await Support.Api.Read(response, 200), "", null)
                .Where(n => !Own.Contains(n.Path.Split('.')[^1])).ToList();
            // The first, the last and some between.
            foreach (var (path, link) in numbers.Where((_, i) => i % Math.Max(1, numbers.Count / 12) == 0))
            {
                sampled++;
                if (link is null || !(followed.TryGetValue(link, out var leads) ? leads : followed[link] = await Leads(link)))
                    lost.Add($"{url} {path} → {link}");
            }
        }

        Assert.Empty(lost);
        Assert.True(sampled >= 600, $"{sampled} numbers were followed.");
    }

    // Every answer of the questions above, every colorant in both atmospheres, and every equation, kiln and table as they are listed.
    [Fact]
    public async Task No_answer_names_derived_alone_for_its_source()
    {
        var (named, alone) = (0, new List<string>());
        foreach (var (route, url, body) in RouteQuestions.All.Select(q => q.Data))
        {
            var types = OpenApiDocumentFile.Committed.MediaTypes(route, body is null ? "get" : "post", "200");
            if (!types.Contains("application/json")) continue;
            using var response = body is null ? await api.Get(url) : await api.Post(url, body);
            Look(url, await Support.Api.Read(response, 200));
        }

        foreach (var url in await Lists()) Look(url, await api.Json(url));
        Assert.Empty(alone);
        Assert.True(named > 5000, $"{named} lists of sources were seen.");

        void Look(string url, JsonElement element)
        {
            if (element.ValueKind == JsonValueKind.Array)
            {
                foreach (var item in element.EnumerateArray()) Look(url, item);
            }
            else if (element.ValueKind == JsonValueKind.Object)
            {
                foreach (var member in element.EnumerateObject())
                {
                    if (member.Name is "sources" or "source")
                    {
                        named++;
                        // A row of the table of equations rests on others, which have sources.
                        var rests = element.TryGetProperty("rests_on", out var on) && on.ValueKind == JsonValueKind.Array;
                        if (!rests && Words(member.Value) is ["derived"]) alone.Add($"{url}: {element.GetRawText()}");
                    }

                    Look(url, member.Value);
                }
            }
        }

        static string[] Words(JsonElement value) => value.ValueKind == JsonValueKind.Array
            ? [.. value.EnumerateArray().Select(v => v.ToString())]
            : [value.ToString()];
    }

    private async Task<List<string>> Lists()
    {
        var urls = new List<string>();
        foreach (var colorant in (await api.Json("/v1/colorants")).GetProperty("items").EnumerateArray())
        {
            var id = colorant.GetProperty("id").GetString();
            urls.Add("/v1/colorants/" + id);
            urls.AddRange(((string[])["oxidation", "reduction"]).Select(a => $"/v1/colours?colorant={id}&atmosphere={a}"));
        }

        foreach (var list in (string[])["tables", "equations", "faults", "schedules"])
        {
            var items = (await api.Json("/v1/" + list)).GetProperty("items");
            urls.AddRange(items.EnumerateArray().Select(i => $"/v1/{list}/{i.GetProperty("id")}"));
        }

        return urls;
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
