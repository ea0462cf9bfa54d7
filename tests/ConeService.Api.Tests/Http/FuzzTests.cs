using CsCheck;

namespace ConeService.Api.Tests.Http;

/// <summary>Whatever is asked, the answer is never a 500.</summary>
public class FuzzTests(Support.Api api)
{
    private static readonly string[] Pieces =
    [
        "0", "06", "6", "^", "Δ", "cone ", "½", ".5", " 1/2", "-", "C", "F", "/h", "/min", "60", "1222", "99999999999999999999",
        "NaN", "∞", "\u0000", "%", "null", "\"", "{", "}", "a", "é", "🔥", "..", "+",
    ];

    private static readonly Gen<string> Piece = Gen.Int[0, Pieces.Length - 1].Select(i => Pieces[i]);

    private static readonly Gen<string> Junk = Piece.Array[0, 5].Select(string.Concat);

    [Fact]
    public Task Any_cone_rate_chart_and_temperature_in_an_address() => Gen.Select(Junk, Junk, Junk).SampleAsync(async (a, b, c) =>
    {
        string[] urls =
        [
            $"/v1/cones/{E(a)}", $"/v1/cones/{E(a)}/end-point?rate={E(b)}&chart={E(c)}", $"/v1/temperatures/{E(a)}/cone?rate={E(b)}",
            $"/cards/cone-{E(a)}",
        ];
        foreach (var url in urls)
        {
            using var response = await api.Client.GetAsync(new Uri(url, UriKind.Relative));
            Assert.True((int)response.StatusCode < 500, url);
        }
    }, iter: 300, threads: 1);

    [Fact]
    public Task Any_body() => Gen.Select(Junk, Junk, Gen.Int[0, 5]).SampleAsync(async (a, b, shape) =>
    {
        var body = shape switch
        {
            0 => a,
            1 => $$"""{"lines":[{"cone":{{a}},"rate":"{{b}}"}]}""",
            2 => $$"""{"lines":[{"temperature":"{{a}}","chart":{{b}}}]}""",
            3 => $$"""{"{{a}}":[{{b}}]}""",
            4 => $"cone,rate\n{a},{b}\n",
            _ => $"{a},{b}\n{b},{a}\n",
        };
        using var response = await api.Post("/v1/conversions", body, shape > 3 ? "text/csv" : "application/json");
        Assert.True((int)response.StatusCode < 500, body);
    }, iter: 300, threads: 1);

    private static string E(string text) => Uri.EscapeDataString(text);
}
