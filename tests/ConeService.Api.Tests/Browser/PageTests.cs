using System.Net;
using System.Text.RegularExpressions;

namespace ConeService.Api.Tests.Browser;

/// <summary>What a person sees: pages of the running service in a real browser.</summary>
public sealed partial class PageTests(Support.Api api) : IDisposable
{
    // A window that holds the whole card: in a frame too low for it the scroll bar would be a difference of its own.
    private const int WholeCard = 1800;

    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("cone-pages-");

    public void Dispose() => directory.Delete(recursive: true);

    [Fact]
    public async Task The_documentation_page_lists_every_operation_of_the_document()
    {
        var chromium = Chromium.Require();
        var document = await api.Json("/openapi/v1.json");

        var page = await chromium.Dom(Address("/docs"));

        var shown = ShownPath().Matches(page).Select(m => WebUtility.HtmlDecode(m.Groups[1].Value)).Order();
        var described = document.GetProperty("paths").EnumerateObject().SelectMany(p => p.Value.EnumerateObject().Select(_ => p.Name)).Order();
        Assert.Equal(described, shown);
    }

    [Fact]
    public async Task A_card_shows_the_printed_end_points_without_a_script()
    {
        var card = await Chromium.Require().Dom(Address("/cards/cone-6"));

        var cone = await api.Json("/v1/cones/6");
        var printed = cone.GetProperty("endPoints").EnumerateArray().Select(p => p.GetProperty("celsius").ToString()).ToList();
        Assert.NotEmpty(printed);
        Assert.Contains("<h1>Cone 6</h1>", card, StringComparison.Ordinal);
        Assert.All(printed, celsius => Assert.Contains($">{celsius}</td>", card, StringComparison.Ordinal));
        Assert.DoesNotContain("<script", card, StringComparison.OrdinalIgnoreCase);
    }

    [Fact]
    public async Task A_card_in_a_course_page_that_strips_scripts_looks_as_it_does_alone()
    {
        var chromium = Chromium.Require();

        var course = CoursePage("course.html", Address("/cards/cone-6"));
        var empty = await chromium.Screenshot(CoursePage("empty.html", "about:blank"), height: WholeCard);

        // On a busy machine a picture may be taken before the frame has painted; a frame that stays empty never matches.
        var difference = 1.0;
        for (var look = 0; look < 6 && difference > 0.001; look++)
        {
            var alone = await chromium.Screenshot(Address("/cards/cone-6"), height: WholeCard);
            Assert.InRange(alone.Difference(empty), 0.01, 1);
            difference = alone.Difference(await chromium.Screenshot(course, height: WholeCard));
        }

        Assert.InRange(difference, 0, 0.001);
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
}
