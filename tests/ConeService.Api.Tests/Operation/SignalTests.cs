using System.Globalization;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Operation;

/// <summary>What who runs the service sees of it.</summary>
public class SignalTests(Support.Api api)
{
    // The example of W3C Trace Context, 3.2.
    private const string Trace = "0af7651916cd43dd8448eb211c80319c";
    private const string TraceParent = $"00-{Trace}-b7ad6b7169203331-01";

    [Fact]
    public async Task A_problem_names_the_trace_that_the_caller_began()
    {
        using var response = await api.Send(HttpMethod.Get, "/v1/cones/0", null, null, ("traceparent", TraceParent));
        Assert.Equal(Trace, (await Support.Api.Read(response, 400)).GetProperty("traceId").GetString());
    }

    [Fact]
    public async Task A_request_is_one_line_that_tells_the_route_and_nothing_that_was_sent()
    {
        using var host = new OwnHost();
        using var request = new HttpRequestMessage(HttpMethod.Get, "/v1/cones/0/end-point?rate=60C/h");
        request.Headers.Add("traceparent", TraceParent);
        using var response = await host.Client.SendAsync(request, Support.Api.Cancel);
        var bytes = (await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel)).Length;
        var line = await host.Log.Until("GET /v1/cones/{cone}/end-point 400 in ");
        var told = $" ms, problem cone-zero, {bytes.ToString(CultureInfo.InvariantCulture)} bytes, trace {Trace}";
        Assert.Contains(told, line, StringComparison.Ordinal);
        Assert.DoesNotContain("60C", line, StringComparison.Ordinal);
    }

    [Fact]
    public async Task Metrics_are_shown_where_that_is_configured_only()
    {
        using (var hidden = await api.Get("/metrics")) Assert.Equal(404, (int)hidden.StatusCode);
        using var host = new OwnHost([("ConeService:Metrics:Enabled", "true")]);
        await host.Text("/v1/loads/check", null);
        using (var posted = await host.Ask("/v1/pairings/check", null, "{}")) Assert.Equal(400, (int)posted.StatusCode);
        var text = await host.Text("/metrics");
        Assert.Contains("coneservice_dataset_info{", text, StringComparison.Ordinal);
        Assert.Contains("http_route=\"/v1/pairings/check\"", text, StringComparison.Ordinal);
        Assert.Contains("coneservice_computation_duration_seconds_count{", text, StringComparison.Ordinal);
        Assert.Contains("http_server_request_duration_seconds_count{", text, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_dataset_says_which_code_answers() =>
        Assert.Equal("1.0.0", (await api.Json("/v1/dataset")).GetProperty("codeVersion").GetString());

    [Theory]
    [InlineData("Content-Encoding", "gzip", "content-encoding-unsupported")]
    [InlineData("Content-Type", "application/json; charset=iso-8859-1", "content-type-unsupported")]
    [InlineData("Content-Type", "text/csv; charset=windows-1252", "content-type-unsupported")]
    public async Task A_body_in_a_coding_that_is_not_read_is_refused_before_it_is_misread(string header, string value, string code)
    {
        using var content = new ByteArrayContent("cone\n6\n"u8.ToArray());
        content.Headers.TryAddWithoutValidation("Content-Type", header == "Content-Type" ? value : "text/csv");
        if (header != "Content-Type") content.Headers.TryAddWithoutValidation(header, value);
        using var response = await api.Send(HttpMethod.Post, "/v1/conversions", content, null);
        await Problems.Findings(response, 415, code);
    }
}
