using System.Text.Json;

namespace ConeService.Api.Tests.Contract;

public class OpenApiTests(Support.Api api)
{
    private static readonly OpenApiDocumentFile Document = OpenApiDocumentFile.Committed;

    [Fact]
    public async Task The_document_served_is_the_one_committed()
    {
        var served = await api.Json("/openapi/v1.json");
        Assert.True(JsonElement.DeepEquals(Document.Root, served), "Build the host and commit openapi/v1.json.");
    }

    [Theory]
    [MemberData(nameof(RouteQuestions.All), MemberType = typeof(RouteQuestions))]
    public async Task An_answer_is_what_the_document_says_in_every_media_type_it_names(string route, string url, string? body)
    {
        var method = body is null ? "get" : "post";
        foreach (var type in Document.MediaTypes(route, method, "200"))
        {
            using var response = body is null ? await api.Get(url, type) : await api.Post(url, body, accept: type);
            Assert.True(response.IsSuccessStatusCode, $"{url}: {await response.Content.ReadAsStringAsync(Support.Api.Cancel)}");
            Assert.Equal(type, response.Content.Headers.ContentType?.MediaType);
            var schema = Document.ResponseSchema(route, method, "200", type);
            if (type == "application/json") Assert.Empty(Document.Departures(await Support.Api.Read(response, 200), schema));
            else Assert.NotEmpty(await response.Content.ReadAsStringAsync(Support.Api.Cancel));
        }
    }

    [Fact]
    public void Every_route_of_the_document_is_asked()
    {
        var asked = RouteQuestions.All.Select(q => (q.Data.Item1, Method: q.Data.Item3 is null ? "get" : "post")).Distinct().Order();
        Assert.Equal(Document.Operations.Order(), asked);
    }

    [Theory]
    [InlineData("/v1/cones/{cone}", "/v1/cones/0", "400")]
    [InlineData("/v1/charts/{chart}", "/v1/charts/none", "404")]
    public async Task A_problem_is_what_the_document_says(string route, string url, string status)
    {
        using var response = await api.Get(url);
        var body = await Support.Api.Read(response, int.Parse(status, System.Globalization.CultureInfo.InvariantCulture));
        Assert.Empty(Document.Departures(body, Document.ResponseSchema(route, "get", status, "application/problem+json")));
    }

    // To a client a sentence is text; its code and values are the service's own affair.
    [Fact]
    public void A_message_is_text_wherever_it_stands()
    {
        var schemas = Document.Root.GetProperty("components").GetProperty("schemas");
        Assert.False(schemas.TryGetProperty("Message", out _));
        var finding = schemas.GetProperty("Finding").GetProperty("properties");
        Assert.Equal("string", finding.GetProperty("message").GetProperty("type").GetString());
        Assert.Equal("string", finding.GetProperty("allowed").GetProperty("items").GetProperty("type").GetString());
        var mistake = finding.GetProperty("likelyMistake").GetProperty("type").EnumerateArray().Select(t => t.GetString());
        Assert.Equal(["null", "string"], mistake.Order());
        var problem = schemas.GetProperty("Problem").GetProperty("properties");
        Assert.All(["title", "detail"], m => Assert.Equal("string", problem.GetProperty(m).GetProperty("type").GetString()));
    }

    // So must the handler that holds every tested answer against the document.
    [Theory]
    [InlineData("/v1/cones/6", 200, "application/json", """{"datasetVersion":1}""")]
    [InlineData("/v1/dataset", 200, "image/svg+xml", "<p>")]
    [InlineData("/v1/dataset", 418, "application/json", "{}")]
    public async Task An_answer_that_the_document_does_not_tell_fails_the_test_that_got_it(
        string path, int status, string type, string body)
    {
        using var handler = new ContractHandler { InnerHandler = new Canned(status, type, body) };
        using var client = new HttpClient(handler) { BaseAddress = new("http://localhost") };
        await Assert.ThrowsAnyAsync<Xunit.Sdk.XunitException>(() => client.GetAsync(path, Support.Api.Cancel));
    }

    // The checker must be able to fail: the same answer against another route's schema.
    [Fact]
    public async Task An_answer_is_not_what_the_document_says_of_another_route()
    {
        var body = await api.Json("/v1/cones/6");
        Assert.NotEmpty(Document.Departures(body, Document.ResponseSchema("/v1/charts", "get", "200", "application/json")));
    }

    [Fact]
    public void Every_operation_has_a_name_a_summary_and_a_description_and_so_has_every_member()
    {
        foreach (var operation in Document.Root.GetProperty("paths").EnumerateObject().SelectMany(p => p.Value.EnumerateObject()))
        {
            foreach (var needed in new[] { "operationId", "summary", "description" })
            {
                var told = operation.Value.TryGetProperty(needed, out var text) && text.GetString()!.Length > 0;
                Assert.True(told, $"{operation.Value} lacks {needed}");
            }
        }

        foreach (var schema in Document.Root.GetProperty("components").GetProperty("schemas").EnumerateObject())
        {
            if (!schema.Value.TryGetProperty("properties", out var properties)) continue;
            foreach (var member in properties.EnumerateObject())
            {
                var told = member.Value.TryGetProperty("description", out _)
                    || member.Value.ToString().Contains("$ref", StringComparison.Ordinal);
                Assert.True(told, $"{schema.Name}.{member.Name} has no description");
            }
        }
    }

    private sealed class Canned(int status, string type, string body) : HttpMessageHandler
    {
        protected override Task<HttpResponseMessage> SendAsync(HttpRequestMessage request, CancellationToken cancellationToken) =>
            Task.FromResult(new HttpResponseMessage((System.Net.HttpStatusCode)status)
            {
                Content = new StringContent(body, System.Text.Encoding.UTF8, type),
            });
    }
}
