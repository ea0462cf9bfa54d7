using PuppeteerSharp;

namespace ConeService.Api.Tests.Browser;

/// <summary>The optional script in a course page of another origin.</summary>
public sealed class EmbeddingTests(Support.Api api, Chromium chromium) : IClassFixture<Chromium>, IDisposable
{
    private const string Shown = "(document.querySelector('cone-service').shadowRoot?.querySelector('.card')?.innerText ?? '')";

    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("cone-course-");

    public void Dispose() => directory.Delete(recursive: true);

    [Fact]
    public async Task The_script_is_small_and_may_be_used_from_anywhere()
    {
        using var response = await api.Get("/embed/cone-service.js");
        Assert.Equal("text/javascript", response.Content.Headers.ContentType?.MediaType);
        Assert.Equal("*", Assert.Single(response.Headers.GetValues("Access-Control-Allow-Origin")));
        Assert.InRange((await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel)).Length, 1, 5_999);
    }

    // Orton, self-supporting cones at 60 °C/h: cone 06 at 998 °C.
    [Fact]
    public async Task A_card_answers_while_one_types_and_the_field_keeps_the_keyboard()
    {
        var (text, focus, sent) = await chromium.Inspect(Course("cards/convert", ""), async page =>
        {
            await Until(page, $"{Shown}.includes('Cone')");
            await page.EvaluateExpressionAsync("document.querySelector('cone-service').shadowRoot.getElementById('f-cone').focus()");
            await page.Keyboard.TypeAsync("06");
            await Until(page, $"{Shown}.includes('goes down at')");
            return (
                await page.EvaluateExpressionAsync<string>(Shown),
                await page.EvaluateExpressionAsync<string>("document.querySelector('cone-service').shadowRoot.activeElement?.value ?? ''"),
                await page.EvaluateExpressionAsync<string>(
                    "document.querySelector('cone-service').shadowRoot.querySelector('[role=status]').textContent"));
        });
        Assert.True(text.Contains("Cone 06 goes down at 998 °C", StringComparison.Ordinal), text);
        Assert.Equal("06", focus);
        // Who hears the page is told the answer too.
        Assert.Contains("998 °C", sent, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_live_card_is_as_accessible_as_the_card()
    {
        var axe = Chromium.Tool("axe-core/axe.min.js");
        var found = await chromium.Inspect(Course("cards/process/raku-western", ""), async page =>
        {
            await Until(page, $"{Shown}.includes('Western raku')");
            await page.EvaluateExpressionAsync(axe + ";0");
            return await page.EvaluateExpressionAsync<string[]>(
                "axe.run().then(r => r.violations.map(v => v.id + ': ' + v.nodes.map(n => n.html).join(' | ')))");
        });
        Assert.Empty(found);
    }

    [Fact]
    public async Task A_frame_that_stays_gets_the_height_of_its_card()
    {
        var (framed, needed) = await chromium.Inspect(Course("cards/cone-6", "frame"), async page =>
        {
            await Until(page, "parseFloat(document.querySelector('iframe').style.height) > 0");
            var height = await page.EvaluateExpressionAsync<double>("document.querySelector('iframe').getBoundingClientRect().height");
            var wide = await page.EvaluateExpressionAsync<int>("document.querySelector('iframe').clientWidth");
            await page.SetViewportAsync(new ViewPortOptions { Width = wide, Height = 100 });
            await page.GoToAsync(new Uri(api.Client.BaseAddress!, "/cards/cone-6?theme=light").ToString());
            return (height, await page.EvaluateExpressionAsync<double>("document.documentElement.scrollHeight"));
        });
        Assert.InRange(framed, needed - 2, needed + 30);
    }

    // What is no card of this service is not fetched, and where there is no answer the frame is left alone.
    [Theory]
    [InlineData("v1/cones/6")]
    [InlineData("cards/none")]
    public async Task What_can_not_be_made_live_stays_as_it_is(string path)
    {
        var isThere = await chromium.Inspect(Course(path, ""), page => page.EvaluateExpressionAsync<bool>(
            "(s => !s || !s.querySelector('slot').hidden)(document.querySelector('cone-service').shadowRoot)"));
        Assert.True(isThere);
    }

    private static Task<IJSHandle> Until(IPage page, string what) => page.WaitForExpressionAsync(what, new() { Timeout = 60_000 });

    // A course page on a disk, which allows the service and nothing else.
    private string Course(string path, string attribute)
    {
        var root = api.Client.BaseAddress!.ToString();
        var file = Path.Combine(directory.FullName, "course.html");
        File.WriteAllText(file, $"""
            <!DOCTYPE html><html lang="en"><title>Course</title>
            <meta http-equiv="Content-Security-Policy" content="default-src 'none'; script-src {root} 'unsafe-eval' 'unsafe-inline';
              connect-src {root}; frame-src {root}; img-src {root}">
            <main><h1>Course</h1><h2>Week 3</h2>
            <cone-service {attribute}><iframe src="{root}{path}" title="Card" width="500" height="100"></iframe></cone-service></main>
            <script src="{root}embed/cone-service.js" defer></script></html>
            """);
        return new Uri(file).ToString();
    }
}
