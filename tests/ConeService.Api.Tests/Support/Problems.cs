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

    public static List<string> Strings(this JsonElement element) => [.. element.EnumerateArray().Select(e => e.GetString()!)];
}
