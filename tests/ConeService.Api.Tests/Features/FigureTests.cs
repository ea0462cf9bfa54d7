using System.Xml.Linq;

namespace ConeService.Api.Tests.Features;

/// <summary>Figures for course pages: SVG that stands alone, with title and description, and with the printed values.</summary>
public sealed class FigureTests(Support.Api api)
{
    // Orton, self-supporting cones at 60 °C/h: cone 6 at 1222 °C, 06 at 998 °C. The trade: red earthenware, cone 06 to 02.
    [Theory]
    [InlineData("chart", "1222 °C  2232 °F")]
    [InlineData("chart", "998 °C  1828 °F")]
    [InlineData("colours", "Copper")]
    [InlineData("ware", "06 to 02")]
    // Data package, facts of cones: the end point is a bend of 90 degrees, called 6 o'clock.
    [InlineData("bending-cone", "6 o'clock90°")]
    [InlineData("cone-6", "1222 °C")]
    [InlineData("cone-06", "998 °C")]
    [InlineData("schedule-mid-range-glaze", "Chart witness-self-supporting")]
    public async Task A_figure_tells_what_the_tables_print(string figure, string text)
    {
        using var response = await api.Get($"/figures/{figure}.svg");
        Assert.Equal(200, (int)response.StatusCode);
        Assert.Equal("image/svg+xml", response.Content.Headers.ContentType?.MediaType);
        var svg = XDocument.Parse(await response.Content.ReadAsStringAsync(Support.Api.Cancel)).Root!;
        Assert.NotEmpty(svg.Element(svg.Name.Namespace + "title")!.Value);
        Assert.NotEmpty(svg.Element(svg.Name.Namespace + "desc")!.Value);
        Assert.Contains(text, svg.Value, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", svg.ToString(), StringComparison.Ordinal);
    }

    // PNG (ISO/IEC 15948): signature, then IHDR with width and height. Letters come with the service: without any, a figure would be
    // paths alone, and a tenth of the bytes.
    [Theory]
    [InlineData("chart", 1280)]
    [InlineData("colours", 1280)]
    [InlineData("ware", 1280)]
    [InlineData("bending-cone", 1280)]
    [InlineData("cone-6", 1280)]
    [InlineData("schedule-mid-range-glaze", 1520)]
    public async Task Every_figure_is_a_picture_too(string figure, int width)
    {
        using var response = await api.Get($"/figures/{figure}.png");
        Assert.Equal(200, (int)response.StatusCode);
        Assert.Equal("image/png", response.Content.Headers.ContentType?.MediaType);
        var png = await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel);
        Assert.Equal("\x89PNG\r\n\x1a\n", System.Text.Encoding.Latin1.GetString(png, 0, 8));
        Assert.Equal(width, System.Buffers.Binary.BinaryPrimitives.ReadInt32BigEndian(png.AsSpan(16)));
        Assert.InRange(png.Length, 40_000, 600_000);
    }

    [Fact]
    public async Task The_picture_in_the_head_of_every_card_is_there()
    {
        var pictures = new HashSet<string>();
        foreach (var card in await Support.CardAddresses.All(api))
        {
            using var response = await api.Get("/cards/" + card);
            var page = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
            var picture = System.Text.RegularExpressions.Regex.Match(page, "og:image\" content=\"([^\"]+)\\.png\"");
            Assert.True(picture.Success, card);
            Assert.Matches("og:image:alt\" content=\"[^\"]{20,}\"", page);
            pictures.Add(picture.Groups[1].Value);
        }

        foreach (var picture in pictures)
        {
            using var response = await api.Get(picture + ".svg");
            Assert.True(response.IsSuccessStatusCode, picture);
        }
    }

    [Theory]
    [InlineData("/figures/none.png", 404)]
    [InlineData("/figures/none.svg", 404)]
    [InlineData("/figures/chart", 404)]
    [InlineData("/figures/schedule-none.svg", 404)]
    [InlineData("/figures/cone-0.svg", 400)]
    public async Task What_is_no_figure_is_refused(string url, int status)
    {
        using var response = await api.Get(url);
        Assert.Equal(status, (int)response.StatusCode);
    }

    [Fact]
    public async Task The_index_offers_each_figure_with_its_alternative_text()
    {
        using var response = await api.Get("/cards");
        var page = System.Net.WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync(Support.Api.Cancel));
        foreach (var name in (string[])["chart", "colours", "ware", "bending-cone", "cone-6", "schedule-mid-range-glaze"])
            Assert.Matches($"/figures/{name}\\.svg\" alt=\"[^\"]{{20,}}\"", page);
    }
}
