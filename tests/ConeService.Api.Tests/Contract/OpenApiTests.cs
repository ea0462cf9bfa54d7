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
    [InlineData("/v1/charts", "/v1/charts")]
    [InlineData("/v1/charts/{chart}", "/v1/charts/nbs-1926")]
    [InlineData("/v1/charts/{chart}", "/v1/charts/seger-1918")]
    [InlineData("/v1/cones", "/v1/cones")]
    [InlineData("/v1/cones/{cone}", "/v1/cones/06")]
    [InlineData("/v1/cones/{cone}", "/v1/cones/42")]
    [InlineData("/v1/cones/{cone}/end-point", "/v1/cones/6/end-point")]
    [InlineData("/v1/cones/{cone}/end-point", "/v1/cones/6/end-point?rate=33.3C/h")]
    [InlineData("/v1/cones/{cone}/end-point", "/v1/cones/6/end-point?chart=seger-1914")]
    [InlineData("/v1/temperatures/{temperature}/cone", "/v1/temperatures/1000C/cone")]
    [InlineData("/v1/temperatures/{temperature}/cone", "/v1/temperatures/2015C/cone?chart=pce&rate=150C/h")]
    [InlineData("/v1/cone-facts", "/v1/cone-facts")]
    [InlineData("/v1/cone-facts", "/v1/cone-facts?topic=soak")]
    [InlineData("/v1/schedules", "/v1/schedules")]
    [InlineData("/v1/schedules/{schedule}", "/v1/schedules/gas-reduction")]
    [InlineData("/v1/schedules/{schedule}", "/v1/schedules/candle?units=F")]
    [InlineData("/v1/colorants", "/v1/colorants")]
    [InlineData("/v1/colorants/{id}", "/v1/colorants/copper")]
    [InlineData("/v1/colours", "/v1/colours")]
    [InlineData("/v1/colours", "/v1/colours?colorant=copper&percent=0.5&cone=10&kiln=electric")]
    [InlineData("/v1/processes", "/v1/processes")]
    [InlineData("/v1/processes/{id}", "/v1/processes/salt")]
    [InlineData("/v1/cautions", "/v1/cautions")]
    [InlineData("/v1/cautions/{id}", "/v1/cautions/lead-and-cadmium")]
    [InlineData("/v1/limits", "/v1/limits")]
    [InlineData("/v1/limits/{id}", "/v1/limits/silica-osha-pel")]
    [InlineData("/v1/limits/{id}", "/v1/limits/exceedance-rule-eu")]
    [InlineData("/v1/dataset", "/v1/dataset")]
    [InlineData("/v1/sources", "/v1/sources")]
    [InlineData("/v1/sources/{id}", "/v1/sources/common-practice")]
    [InlineData("/health/live", "/health/live")]
    [InlineData("/health/ready", "/health/ready")]
    public async Task An_answer_is_what_the_document_says(string route, string url)
    {
        using var response = await api.Get(url);
        var status = ((int)response.StatusCode).ToString(System.Globalization.CultureInfo.InvariantCulture);
        var body = await Support.Api.Read(response, (int)response.StatusCode);
        Assert.Empty(Document.Departures(body, Document.ResponseSchema(route, "get", status, response.Content.Headers.ContentType!.MediaType!)));
    }

    [Fact]
    public async Task A_conversion_is_what_the_document_says()
    {
        using var response = await api.Post("/v1/conversions", """{"lines":[{"cone":"6"},{"temperature":"1222C"},{"cone":0}]}""");
        Assert.Empty(Document.Departures(await Support.Api.Read(response, 200), Document.ResponseSchema("/v1/conversions", "post", "200", "application/json")));
    }

    [Theory]
    [InlineData("raku-western", """{"units":"C"}""")]
    [InlineData("gas-reduction", """{"cone":"10","units":"F","kiln":{"heat":"gas","volumeLitres":500},"start":"2026-12-07T05:00:00+01:00","tariff":{"perKilowattHour":0.1,"currency":"GBP"}}""")]
    [InlineData("mid-range-glaze", """{"cone":"6","units":"C","kiln":{"heat":"electric","volumeLitres":150,"kilowatts":6},"load":{"kilogramsWare":50}}""")]
    public async Task A_fit_is_what_the_document_says(string schedule, string body)
    {
        using var response = await api.Post($"/v1/schedules/{schedule}/fit", body);
        Assert.Empty(Document.Departures(await Support.Api.Read(response, 200), Document.ResponseSchema("/v1/schedules/{schedule}/fit", "post", "200", "application/json")));
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
                Assert.True(operation.Value.TryGetProperty(needed, out var text) && text.GetString()!.Length > 0, $"{operation.Value} lacks {needed}");
            }
        }

        foreach (var schema in Document.Root.GetProperty("components").GetProperty("schemas").EnumerateObject())
        {
            if (!schema.Value.TryGetProperty("properties", out var properties)) continue;
            foreach (var member in properties.EnumerateObject())
            {
                Assert.True(member.Value.TryGetProperty("description", out _) || member.Value.ToString().Contains("$ref", StringComparison.Ordinal), $"{schema.Name}.{member.Name} has no description");
            }
        }
    }
}
