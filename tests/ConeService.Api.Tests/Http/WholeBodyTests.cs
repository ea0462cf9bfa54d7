using ConeService.Api.Http;
using ConeService.Api.Http.Problems;
using ConeService.Api.Http.Reach;
using ConeService.Api.Tests.Support;
using ConeService.Contract.HeatWork;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace ConeService.Api.Tests.Http;

/// <summary>An answer that fails while it is written is one problem document, not half an answer.</summary>
public class WholeBodyTests
{
    [Theory]
    [InlineData(double.NaN)]
    [InlineData(double.PositiveInfinity)]
    [InlineData(double.NegativeInfinity)]
    public async Task A_number_that_is_not_finite_is_one_whole_problem(double number)
    {
        // The bad number stands last, after more than any buffer holds.
        var many = Enumerable.Repeat(new ProgrammeSegment(60, 1222, 10), 9000);
        var answer = new HeatWorkRequest { Segments = [.. many, new(number, 1222, 10)] };
        await using var app = await Host(() => JsonBody.Posted(answer));
        using var client = new HttpClient { BaseAddress = new(app.Urls.First()) };
        using var response = await client.PostAsync(new Uri("/answer", UriKind.Relative), null, Support.Api.Cancel);
        Assert.NotNull(response.Content.Headers.ContentLength);
        await Problems.Findings(response, 500, "internal-error");
    }

    [Fact]
    public async Task An_answer_comes_with_its_length()
    {
        await using var app = await Host(() => JsonBody.Posted(new HeatWorkRequest { Units = "C" }));
        using var client = new HttpClient { BaseAddress = new(app.Urls.First()) };
        using var response = await client.PostAsync(new Uri("/answer", UriKind.Relative), null, Support.Api.Cancel);
        Assert.Equal("C", (await Support.Api.Read(response, 200)).GetProperty("units").GetString());
        Assert.Equal((await response.Content.ReadAsByteArrayAsync(Support.Api.Cancel)).Length, response.Content.Headers.ContentLength);
        Assert.Null(response.Headers.CacheControl);
    }

    [Fact]
    public void Another_form_of_an_answer_holds_no_such_number_either()
    {
        const string svg = "image/svg+xml; charset=utf-8";
        var endless = new HeatWorkRequest { FullSpeedRate = double.PositiveInfinity };
        var plain = new HeatWorkRequest();
        Assert.Throws<ArgumentException>(() => WholeBody.Text(endless, "rate\n\u221e\n", "text/csv; charset=utf-8"));
        Assert.Throws<NotFiniteNumberException>(() => WholeBody.Text(plain, "<svg><path d=\"M3 4LNaN 5\"/></svg>", svg));
        Assert.Throws<NotFiniteNumberException>(() => WholeBody.Text(plain, "<svg><text x=\"-\u221e\">6</text></svg>", svg));
        // A kiln may have that name.
        Assert.NotNull(WholeBody.Text(new HeatWorkRequest(), "<svg><text x=\"3\">NaN</text></svg>", svg));
    }

    private static async Task<WebApplication> Host(Func<IResult> answer)
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.Logging.ClearProviders();
        builder.Services.AddSingleton<AcceptedTypes>();
        builder.Services.AddSingleton<NearPaths>();
        builder.Services.AddSingleton<ServiceAddress>();
        var app = builder.Build();
        app.Urls.Add("http://127.0.0.1:0");
        app.UseMiddleware<ProblemMiddleware>();
        app.MapPost("/answer", answer);
        await app.StartAsync(Support.Api.Cancel);
        return app;
    }
}
