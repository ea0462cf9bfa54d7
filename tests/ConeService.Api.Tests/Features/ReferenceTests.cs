using System.Net;
using System.Text.RegularExpressions;
using ConeService.Api.Tests.Contract;

namespace ConeService.Api.Tests.Features;

/// <summary>The document as pages: what stands on them to be copied is sent as it stands, and answered.</summary>
public sealed partial class ReferenceTests(Support.Api api)
{
    private static readonly OpenApiDocumentFile Document = OpenApiDocumentFile.Committed;

    public static TheoryData<string, string, string> Operations { get; } =
    [
        .. from operation in Document.Operations
           let told = Document.Operation(operation.Route, operation.Method)
           select (told.GetProperty("operationId").GetString()!, operation.Route, operation.Method),
    ];

    [Fact]
    public async Task The_index_leads_to_every_operation()
    {
        using var response = await api.Get("/reference");
        var page = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Equal(200, (int)response.StatusCode);
        foreach (var (id, route, _) in Operations.Select(o => o.Data))
        {
            Assert.Contains($"href=\"/reference/{id}\"", page, StringComparison.Ordinal);
            Assert.Contains(WebUtility.HtmlEncode(route), page, StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Operations))]
    public async Task A_page_tells_every_parameter_and_its_lines_to_copy_are_answered(string id, string route, string method)
    {
        using var response = await api.Get("/reference/" + id);
        var page = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
        Assert.Equal(200, (int)response.StatusCode);
        Assert.Contains($"<code>{method.ToUpperInvariant()} {WebUtility.HtmlEncode(route)}</code>", page, StringComparison.Ordinal);
        if (Document.Operation(route, method).TryGetProperty("parameters", out var parameters))
        {
            Assert.All(parameters.EnumerateArray(), p => Assert.Contains(
                $"<th scope=\"row\"><code>{p.GetProperty("name").GetString()}</code></th>", page, StringComparison.Ordinal));
        }

        // What is named is told on the same page.
        Assert.All(Named().Matches(page).Select(m => m.Groups["name"].Value), name =>
            Assert.Contains($"<h3 id=\"{name}\">", page, StringComparison.Ordinal));
        var lines = Copied().Matches(page).Select(m => WebUtility.HtmlDecode(m.Groups["text"].Value)).ToList();
        Assert.NotEmpty(lines);
        foreach (var line in lines)
        {
            var asked = Line().Match(line);
            Assert.True(asked.Success, line);
            using var answer = asked.Groups["body"].Success
                ? await api.Post(asked.Groups["url"].Value, asked.Groups["body"].Value.Replace("'\\''", "'", StringComparison.Ordinal),
                    asked.Groups["type"].Value)
                : await api.Get(asked.Groups["url"].Value);
            Assert.True(answer.IsSuccessStatusCode, line + "\n" + await answer.Content.ReadAsStringAsync(Support.Api.Cancel));
        }
    }

    [Fact]
    public async Task An_operation_that_is_not_there_is_told_with_its_neighbour()
    {
        using var response = await api.Get("/reference/getEndPoin");
        var problem = await Support.Api.Read(response, 404);
        Assert.Contains("getEndPoint", problem.GetProperty("errors")[0].GetProperty("likelyMistake").GetString(), StringComparison.Ordinal);
    }

    [GeneratedRegex("<pre><code>(?<text>.*?)</code></pre>", RegexOptions.Singleline)]
    private static partial Regex Copied();

    [GeneratedRegex("href=\"#(?<name>[A-Za-z0-9]+)\"")]
    private static partial Regex Named();

    [GeneratedRegex(@"^curl '(?<url>[^']+)'(?: -H 'Content-Type: (?<type>[^']+)' --data-binary '(?<body>.*)')?$", RegexOptions.Singleline)]
    private static partial Regex Line();
}
