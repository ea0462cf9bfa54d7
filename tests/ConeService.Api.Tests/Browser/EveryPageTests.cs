namespace ConeService.Api.Tests.Browser;

/// <summary>Every page of the service that is no card and no poster, as it is seen on a phone, a tablet and a screen.</summary>
public sealed class EveryPageTests(Support.Api api, Chromium chromium) : IClassFixture<Chromium>
{
    // One of each kind: pages of lists, of single answers, of refusals, of the documentation, and those made by hand.
    [Theory]
    [InlineData("/")]
    [InlineData("/v1.html")]
    [InlineData("/v1/cones/6.html")]
    [InlineData("/v1/processes.html")]
    [InlineData("/v1/faults/bloating.html")]
    [InlineData("/v1/tables/end-points.html")]
    [InlineData("/v1/search.html?q=black%20core")]
    [InlineData("/v1/questions.html?count=10&seed=1")]
    [InlineData("/v1/cones/0.html")]
    [InlineData("/problems")]
    [InlineData("/problems/cone-zero")]
    [InlineData("/guide/heat-work")]
    [InlineData("/guide/http")]
    [InlineData("/reference")]
    [InlineData("/reference/getEndPoint")]
    [InlineData("/reference/fitSchedule")]
    public async Task Axe_finds_nothing_and_nothing_scrolls_sideways(string url) => Nothing(await Faults(url));

    // Swagger UI is not ours: what our stylesheet can mend is mended, its headings and landmarks are as it makes them (/reference is ours).
    [Fact]
    public async Task The_pages_of_the_document_that_a_script_makes_have_the_contrast_and_the_names_that_people_need() =>
        Nothing([.. (await Faults("/docs/index.html")).Where(f =>
            !f.Contains(": heading-order:", StringComparison.Ordinal) && !f.Contains(": region:", StringComparison.Ordinal))]);

    private static void Nothing(List<string> faults) => Assert.True(faults.Count == 0, string.Join('\n', faults));

    private Task<List<string>> Faults(string url) => Looks.Faults(chromium, new Uri(api.Client.BaseAddress!, url).ToString());
}
