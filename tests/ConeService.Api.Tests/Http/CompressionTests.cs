using System.IO.Compression;
using System.Text;

namespace ConeService.Api.Tests.Http;

/// <summary>Content codings as RFC 9110 has them: 8.4 (codings), 8.8.3.3 (tags), 12.5.3 (Accept-Encoding), 12.5.5 (Vary).</summary>
public class CompressionTests(Support.Api api)
{
    [Theory]
    [InlineData("gzip", "gzip")]
    [InlineData("br", "br")]
    [InlineData("gzip, deflate, br, zstd", "br")]
    [InlineData("br;q=0.5, gzip", "gzip")]
    [InlineData("*", "br")]
    [InlineData("br;q=0, *", "gzip")]
    [InlineData("gzip;q=0", null)]
    [InlineData("identity, gzip;q=0.5", null)]
    [InlineData("zstd", null)]
    [InlineData(";;;", null)]
    public async Task The_coding_liked_best_is_sent(string accepted, string? coding)
    {
        using var plain = await api.Get("/v1/sources");
        using var response = await Ask("/v1/sources", accepted);
        Assert.Equal(coding is null ? [] : [coding], response.Content.Headers.ContentEncoding);
        Assert.Contains("Accept-Encoding", response.Headers.Vary);
        Assert.Contains("Accept-Encoding", plain.Headers.Vary);
        Assert.Equal(await plain.Content.ReadAsByteArrayAsync(Support.Api.Cancel), await Decoded(response));
        if (coding is null) Assert.Equal(plain.Headers.ETag, response.Headers.ETag);
        else Assert.NotEqual(plain.Headers.ETag, response.Headers.ETag);
    }

    [Fact]
    public async Task A_condition_holds_for_the_coding_it_was_sent_with()
    {
        using var first = await Ask("/v1/sources", "gzip");
        var tag = first.Headers.ETag!.ToString();
        using var again = await Ask("/v1/sources", "gzip", ("If-None-Match", tag));
        Assert.Equal(304, (int)again.StatusCode);
        using var plain = await api.Send(HttpMethod.Get, "/v1/sources", null, null, ("If-None-Match", tag));
        Assert.Equal(200, (int)plain.StatusCode);
    }

    [Fact]
    public async Task Head_tells_the_length_of_the_coding()
    {
        using var get = await Ask("/v1/charts", "gzip");
        using var head = await api.Send(HttpMethod.Head, "/v1/charts", null, null, ("Accept-Encoding", "gzip"));
        Assert.Equal(["gzip"], head.Content.Headers.ContentEncoding);
        Assert.Equal((await get.Content.ReadAsByteArrayAsync(Support.Api.Cancel)).Length, head.Content.Headers.ContentLength);
        Assert.Equal(get.Headers.ETag, head.Headers.ETag);
    }

    // Computed answers, pages, problems and the document, by the framework or kept.
    [Theory]
    [InlineData("/v1/colours?colorant=copper")]
    [InlineData("/openapi/v1.json")]
    [InlineData("/problems/cone-zero")]
    [InlineData("/v1/cones/0/end-point?rate=60&chart=smal")]
    public async Task Whatever_is_long_is_compressed(string url)
    {
        // A problem names the trace of its request.
        var trace = ("traceparent", "00-0af7651916cd43dd8448eb211c80319c-b7ad6b7169203331-01");
        using var plain = await api.Send(HttpMethod.Get, url, null, null, trace);
        using var response = await Ask(url, "br", trace);
        Assert.Equal(["br"], response.Content.Headers.ContentEncoding);
        Assert.Equal(await plain.Content.ReadAsByteArrayAsync(Support.Api.Cancel), await Decoded(response));
    }

    [Fact]
    public async Task A_posted_answer_is_compressed_in_every_form()
    {
        foreach (var accept in new[] { "application/json", "text/csv", "image/svg+xml", "text/calendar", "text/html" })
        {
            using var body = new StringContent("""{"units":"C","start":"2026-12-07T05:00:00Z"}""", Encoding.UTF8, "application/json");
            using var response = await api.Send(
                HttpMethod.Post, "/v1/schedules/raku-western/fit", body, accept, ("Accept-Encoding", "gzip"));
            Assert.Equal(["gzip"], response.Content.Headers.ContentEncoding);
            Assert.NotEmpty(await Decoded(response));
        }
    }

    [Fact]
    public async Task What_fits_a_packet_stays_as_it_is()
    {
        using var line = await api.Send(
            HttpMethod.Get, "/v1/cones/6/end-point?rate=60C/h", null, "text/plain", ("Accept-Encoding", "gzip, br"));
        Assert.Empty(line.Content.Headers.ContentEncoding);
    }

    // Lists of figures shrink below 15 %. Lists of sentences do not: every sentence says something else. They stay below a third.
    [Theory]
    [InlineData("/v1/cones", 15)]
    [InlineData("/v1/charts/witness-self-supporting", 15)]
    [InlineData("/v1/colours", 15)]
    [InlineData("/v1/limits", 15)]
    [InlineData("/v1/colorants", 33)]
    [InlineData("/v1/clay-bodies", 33)]
    [InlineData("/v1/glazes", 33)]
    [InlineData("/v1/schedules", 33)]
    [InlineData("/v1/load-rules", 33)]
    [InlineData("/v1/cautions", 33)]
    [InlineData("/v1/processes", 33)]
    [InlineData("/v1/sources", 33)]
    [InlineData("/v1/disagreements", 33)]
    [InlineData("/v1/cone-facts", 33)]
    public async Task A_list_shrinks_with_gzip(string url, int percent)
    {
        using var plain = await api.Get(url);
        using var packed = await Ask(url, "gzip");
        var (whole, small) = ((await plain.Content.ReadAsByteArrayAsync(Support.Api.Cancel)).Length, packed.Content.Headers.ContentLength);
        Assert.True(small * 100 < whole * percent, $"{url}: {small} of {whole} bytes, {100.0 * small / whole:0.0} %");
    }

    private Task<HttpResponseMessage> Ask(string url, string accepted, params (string, string)[] headers) =>
        api.Send(HttpMethod.Get, url, null, null, [("Accept-Encoding", accepted), .. headers]);

    private static async Task<byte[]> Decoded(HttpResponseMessage response)
    {
        await using var body = await response.Content.ReadAsStreamAsync(Support.Api.Cancel);
        await using Stream plain = response.Content.Headers.ContentEncoding.SingleOrDefault() switch
        {
            "gzip" => new GZipStream(body, CompressionMode.Decompress),
            "br" => new BrotliStream(body, CompressionMode.Decompress),
            _ => body,
        };
        using var into = new MemoryStream();
        await plain.CopyToAsync(into, Support.Api.Cancel);
        return into.ToArray();
    }
}
