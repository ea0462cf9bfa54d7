using System.Text.Json;

namespace ConeService.Api.Tests.Support;

/// <summary>What every problem document must have, whatever went wrong.</summary>
internal static class Problems
{
    /// <summary>Checks the document and returns its findings.</summary>
    public static async Task<List<JsonElement>> Findings(HttpResponseMessage response, int status, string type)
    {
        var problem = await Api.Read(response, status);
        Assert.Equal("application/problem+json", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal("no-store", response.Headers.CacheControl?.ToString());
        // RFC 9457, 3.1.1: absolute, as what is relative depends on the address that was asked.
        var page = new Uri(response.RequestMessage!.RequestUri!, "/problems/" + type);
        Assert.Equal(page.AbsoluteUri, problem.GetProperty("type").GetString());
        Assert.Equal(status, problem.GetProperty("status").GetInt32());
        Assert.NotEmpty(problem.GetProperty("title").GetString()!);
        Assert.NotEmpty(problem.GetProperty("detail").GetString()!);
        // Messages are for people: no C# type name and no stack may leak.
        Assert.DoesNotContain("ConeService.", problem.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("System.", problem.ToString(), StringComparison.Ordinal);
        return [.. problem.GetProperty("errors").EnumerateArray()];
    }

    /// <summary>Where a finding says that it is: a pointer into the body, a parameter, or a line of an upload.</summary>
    public static string Place(this JsonElement finding)
    {
        var places = ((string[])["pointer", "parameter", "line"])
            .Where(p => finding.TryGetProperty(p, out _)).ToList();
        var place = finding.GetProperty(Assert.Single(places));
        if (places[0] != "line") return place.GetString()!;
        return $"line {place.GetInt32()}" + (finding.TryGetProperty("column", out var column) ? $", {column.GetString()}" : "");
    }

    public static List<string> Strings(this JsonElement element) => [.. element.EnumerateArray().Select(e => e.GetString()!)];
}
