using ConeService.Api.Http;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

/// <summary>A second language is rows of the table messages; who asks for it gets it, and who does not gets English.</summary>
public sealed class LanguageTests(LanguageTests.TwoLanguages service) : IClassFixture<LanguageTests.TwoLanguages>
{
    private static readonly string[] Languages = ["en", "de", "qaa"];

    [Theory]
    [InlineData(null, "There is no cone 0")]
    [InlineData("", "There is no cone 0")]
    [InlineData("de", "Einen Kegel 0 gibt es nicht")]
    [InlineData("de-AT, en;q=0.5", "Einen Kegel 0 gibt es nicht")]
    [InlineData("qaa", "[no cone 0]")]
    [InlineData("fr, *;q=0.1", "There is no cone 0")]
    [InlineData("not a ; header", "There is no cone 0")]
    public async Task A_problem_is_told_in_the_language_asked_for(string? wanted, string title)
    {
        using var response = await service.Host.Ask("/v1/cones/0", wanted);
        var problem = await Support.Api.Read(response, 400);
        Assert.Equal(title, problem.GetProperty("title").GetString());
        Assert.Equal("cone-zero", Assert.Single(problem.GetProperty("errors").EnumerateArray()).GetProperty("code").GetString());
        Assert.Contains("Accept-Language", response.Headers.Vary);
        Assert.Equal(title[0] switch { 'E' => ["de"], '[' => ["qaa"], _ => [] }, response.Content.Headers.ContentLanguage);
    }

    [Fact]
    public async Task What_is_allowed_is_told_in_it_too()
    {
        using var response = await service.Host.Ask("/problems/cone-zero?rat=60C/h", "de");
        var problem = await Support.Api.Read(response, 400);
        Assert.Equal("Die Adresse kennt keinen Parameter „rat“. Erlaubt: keine Parameter.", problem.GetProperty("detail").GetString());
    }

    [Fact]
    public async Task A_kept_page_is_kept_in_each_language()
    {
        foreach (var _ in Enumerable.Range(0, 2))
        {
            foreach (var (wanted, text, tag) in new[] { ("de", "Einen Kegel 0 gibt es nicht", "de"), ("en", "There is no cone 0", "en") })
            {
                using var response = await service.Host.Ask("/problems/cone-zero", wanted);
                var page = await response.Content.ReadAsStringAsync(Support.Api.Cancel);
                Assert.Contains($"<h1>{text}</h1>", page, StringComparison.Ordinal);
                Assert.Contains($"<html lang=\"{tag}\">", page, StringComparison.Ordinal);
                Assert.Equal(tag == "en" ? [] : [tag], response.Content.Headers.ContentLanguage);
                Assert.Contains("Accept-Language", response.Headers.Vary);
            }
        }
    }

    [Theory]
    [InlineData("/v1/cones/6", null)]
    [InlineData("/v1/cones/6/end-point?rate=60C/h", null)]
    [InlineData("/v1/conversions", """{"lines":[{"cone":0}]}""")]
    public async Task An_answer_says_that_it_may_be_had_in_other_languages(string url, string? body)
    {
        using var german = await service.Host.Ask(url, "de", body);
        using var english = await service.Host.Ask(url, null, body);
        Assert.Equal(200, (int)german.StatusCode);
        Assert.Equal(["de"], german.Content.Headers.ContentLanguage);
        Assert.Empty(english.Content.Headers.ContentLanguage);
        Assert.All([german, english], r => Assert.Contains("Accept-Language", r.Headers.Vary));
    }

    [Fact]
    public async Task A_language_does_not_reach_the_next_request()
    {
        _ = await service.Host.Text("/v1/cones/0", "de");
        Assert.Contains("There is no cone 0", await service.Host.Text("/v1/cones/0"), StringComparison.Ordinal);
    }

    // RFC 4647, section 3.4: the range is cut from its end until something matches.
    [Theory]
    [InlineData("de", "de")]
    [InlineData("DE-ch-1996", "de")]
    [InlineData("fr-CA, de;q=0.3", "de")]
    [InlineData("de;q=0.3, qaa;q=0.8", "qaa")]
    [InlineData("de;q=0", "en")]
    [InlineData("en-GB, de;q=0.9", "en")]
    [InlineData("*", "en")]
    [InlineData("fr", "en")]
    [InlineData(";;", "en")]
    public void The_header_chooses_the_language(string header, string expected) =>
        Assert.Equal(expected, Language.Choose(header, Languages));

    /// <summary>The service with a few sentences of an overlay in German, and in qaa, which ISO 639-2 keeps for private use.</summary>
    public sealed class TwoLanguages : IDisposable
    {
        private readonly Overlay overlay = new Overlay("languages").With(
            "messages",
            "http.allowed,anyone,de,Erlaubt: {allowed}.",
            "http.no-parameters,anyone,de,keine Parameter",
            "http.unknown-parameter,anyone,de,Die Adresse kennt keinen Parameter „{name}“.",
            "problems.cone-zero.title,anyone,de,Einen Kegel 0 gibt es nicht",
            "problems.cone-zero.title,anyone,qaa,[no cone 0]");

        internal OwnHost Host => field ??= new(overlays: overlay.Directory);

        public void Dispose()
        {
            Host.Dispose();
            overlay.Dispose();
        }
    }
}
