using System.Net;
using System.Text.RegularExpressions;

namespace ConeService.Api.Tests.Browser;

/// <summary>What a person sees: pages of the running service in a real browser.</summary>
public sealed partial class PageTests(Support.Api api, Chromium chromium) : IClassFixture<Chromium>, IDisposable
{
    // A window that holds the whole card: in a frame too low for it the scroll bar would be a difference of its own.
    private const int WholeCard = 1800;

    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("cone-pages-");

    public void Dispose() => directory.Delete(recursive: true);

    [Fact]
    public async Task The_documentation_page_lists_every_operation_of_the_document()
    {
        var document = await api.Json("/openapi/v1.json");

        var page = await chromium.Dom(Address("/docs"), "[data-path]");

        var shown = ShownPath().Matches(page).Select(m => WebUtility.HtmlDecode(m.Groups[1].Value)).Order();
        var described = document.GetProperty("paths").EnumerateObject().SelectMany(p => p.Value.EnumerateObject().Select(_ => p.Name))
            .Order();
        Assert.Equal(described, shown);
    }

    [Fact]
    public async Task A_card_shows_the_printed_end_points_without_a_script()
    {
        var card = await chromium.Dom(Address("/cards/cone-6"));

        var cone = await api.Json("/v1/cones/6");
        var printed = cone.GetProperty("endPoints").EnumerateArray().Select(p => p.GetProperty("celsius").ToString()).ToList();
        Assert.NotEmpty(printed);
        Assert.Contains("<h1>Cone 6</h1>", card, StringComparison.Ordinal);
        Assert.All(printed, celsius => Assert.Contains($">{celsius}</td>", card, StringComparison.Ordinal));
        Assert.DoesNotMatch("<script(?! type=.application/ld)", card);
    }

    [Fact]
    public async Task A_card_in_a_course_page_that_strips_scripts_looks_as_it_does_alone()
    {
        var course = CoursePage("course.html", Address("/cards/cone-6"));
        var empty = await chromium.Screenshot(CoursePage("empty.html", "about:blank"), height: WholeCard);

        var alone = await chromium.Screenshot(Address("/cards/cone-6"), height: WholeCard);

        Assert.InRange(alone.Difference(empty), 0.01, 1);
        Assert.InRange(alone.Difference(await chromium.Screenshot(course, height: WholeCard)), 0, 0.001);
    }

    // The first page is what hangs on the kiln room's door: with the signatures, and the curve overleaf.
    [Theory]
    [MemberData(nameof(Features.ScheduleTests.Firings), MemberType = typeof(Features.ScheduleTests))]
    public async Task A_firing_sheet_prints_on_two_pages(string schedule, string body)
    {
        using var response = await api.Post($"/v1/schedules/{schedule}/fit", body, accept: "text/html");
        var file = Path.Combine(directory.FullName, "sheet.html");
        await File.WriteAllTextAsync(file, await response.Content.ReadAsStringAsync(Support.Api.Cancel), Support.Api.Cancel);
        var pdf = System.Text.Encoding.Latin1.GetString(await chromium.Pdf(new Uri(file).ToString()));
        Assert.Equal(2, Page().Count(pdf));
    }

    // Another origin than the service's, no script in the page and none allowed in the frame. The frame fills the
    // window, so that the two pictures can be compared.
    private string CoursePage(string name, string frame)
    {
        var file = Path.Combine(directory.FullName, name);
        File.WriteAllText(file, $$"""
            <!DOCTYPE html><html lang="en"><title>Course</title>
            <meta http-equiv="Content-Security-Policy" content="script-src 'none'">
            <style>body{margin:0}iframe{border:0;display:block;width:100vw;height:100vh}</style>
            <iframe sandbox src="{{frame}}" title="Cone 6"></iframe></html>
            """);
        return new Uri(file).ToString();
    }

    private string Address(string path) => new Uri(api.Client.BaseAddress!, path).ToString();

    [GeneratedRegex("data-path=\"([^\"]+)\"")]
    private static partial Regex ShownPath();

    [GeneratedRegex(@"/Type\s*/Page\b(?!s)")]
    private static partial Regex Page();
}
