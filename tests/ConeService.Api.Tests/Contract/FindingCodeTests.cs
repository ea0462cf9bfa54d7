using System.Net;
using System.Reflection;
using ConeService.Api.Tests.Support;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Api.Tests.Contract;

/// <summary>A code that the service says is a constant, and a constant has its kind, its page and its texts.</summary>
public class FindingCodeTests(Support.Api api)
{
    private const string Finding = "ConeService.Contract.Answers.Finding";
    private static readonly string[] Warnings =
        ["ConeService.Contract.HeatWork.HeatWarning", "ConeService.Contract.Conversions.ConversionWarning"];

    private static readonly Lazy<SourceCode> Source = new(SourceCode.OfTheService);

    private static readonly Lazy<(IReadOnlySet<string> Constants, IReadOnlyList<string> Unknown)> OfFindings =
        new(() => Source.Value.Reaching(Source.Value.Parameter(Finding, "Code")));

    private static string[] Constants(Type type) =>
        [.. type.GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!)];

    [Fact]
    public void No_finding_can_be_made_with_a_code_that_is_no_constant()
    {
        var (codes, unknown) = OfFindings.Value;
        Assert.True(unknown.Count == 0, string.Join('\n', unknown));
        Assert.Empty(codes.Except(Constants(typeof(FindingCodes))));
    }

    // The one for findings of several kinds is of the problem and of no finding.
    [Fact]
    public void Every_constant_is_used()
    {
        var (codes, _) = OfFindings.Value;
        Assert.Equal([FindingCodes.InvalidRequest], Constants(typeof(FindingCodes)).Except(codes));
    }

    [Fact]
    public void No_warning_can_be_made_with_a_code_that_is_no_constant()
    {
        var found = Warnings.Select(w => Source.Value.Reaching(Source.Value.Parameter(w, "Code"))).ToList();
        Assert.All(found, f => Assert.Empty(f.Unknown));
        var codes = found.SelectMany(f => f.Constants).Distinct().Order(StringComparer.Ordinal);
        // Where a rate calls for no warning its code is blank, and none is made.
        Assert.Equal(Constants(typeof(WarningCodes)).Order(StringComparer.Ordinal), codes.Where(c => c.Length > 0));
    }

    [Fact]
    public void Codes_are_found_wherever_they_stand()
    {
        var code = new SourceCode([("Made.cs", """
            record Found(string Code, int Times = 1);
            class Maker(string given)
            {
                private readonly string kept = given;
                private static readonly (string, int) Pair = ("not-seen", 1);
                Found Direct() => new("direct");
                Found Named() => new Found(Times: 2, Code: "named");
                Found Chosen(bool first) => new(first ? "first" : Through("unused") is { } f ? "second" : throw new Exception());
                Found Through(string code) => new(code);
                Found Again() => Through("through");
                Found Kept() => new(kept);
                static Maker Start() => new("kept");
                Found Split(int i) { var (code, n) = i switch { 1 => ("split-one", 1), _ => ("split-more", 2) }; return new(code, n); }
                Found Copy(Found other) => new(other.Code);
                Found Computed(int i) => new("computed-" + i);
            }
            """)]);

        var (constants, unknown) = code.Reaching(code.Parameter("Found", "Code"));

        Assert.Equal(["direct", "first", "kept", "named", "second", "split-more", "split-one", "through", "unused"], constants);
        Assert.Contains("\"computed-\" + i", Assert.Single(unknown), StringComparison.Ordinal);
    }

    [Fact]
    public void Every_code_is_written_as_its_constant_is_named() => Assert.All(
        typeof(FindingCodes).GetFields().Concat(typeof(WarningCodes).GetFields()),
        f => Assert.Equal(f.Name, Pascal((string)f.GetRawConstantValue()!)));

    private static string Pascal(string code) => string.Concat(code.Split('-').Select(w => char.ToUpperInvariant(w[0]) + w[1..]));

    [Fact]
    public async Task Every_code_has_a_kind_a_page_and_three_texts()
    {
        Assert.Equal(Constants(typeof(FindingCodes)).Order(StringComparer.Ordinal), ProblemKinds.All.Select(k => k.Code));
        foreach (var kind in ProblemKinds.All)
        {
            Assert.All([kind.Title, kind.Meaning, kind.Remedy], m => Assert.NotEmpty(MessageBook.Embedded.Say(m)));
            using var response = await api.Get("/problems/" + kind.Code);
            Assert.Equal("text/html", response.Content.Headers.ContentType?.MediaType);
            var page = WebUtility.HtmlDecode(await response.Content.ReadAsStringAsync(Support.Api.Cancel));
            Assert.All([kind.Title, kind.Meaning, kind.Remedy], m => Assert.Contains(m.ToString(), page, StringComparison.Ordinal));
        }
    }

    [Fact]
    public void Every_text_of_a_problem_is_of_a_code()
    {
        string[] parts = ["title", "meaning", "remedy"];
        var told = EmbeddedMessages.Read().Select(r => r.Code.Split('.'))
            .Where(c => c is ["problems", not "page", var part] && parts.Contains(part));
        Assert.Equal(ProblemKinds.All.Select(k => k.Code), told.Select(c => c[1]).Distinct().Order(StringComparer.Ordinal));
    }

    // RFC 9110, section 15: what HTTP itself has a number for.
    [Theory]
    [InlineData(FindingCodes.NotFound, 404)]
    [InlineData(FindingCodes.MethodNotAllowed, 405)]
    [InlineData(FindingCodes.NotAcceptable, 406)]
    [InlineData(FindingCodes.RequestTooLarge, 413)]
    [InlineData(FindingCodes.ContentTypeUnsupported, 415)]
    [InlineData(FindingCodes.InternalError, 500)]
    [InlineData(FindingCodes.ConeZero, 400)]
    [InlineData(FindingCodes.InvalidRequest, 400)]
    public void A_kind_has_its_status(string code, int status) => Assert.Equal(status, ProblemKinds.Find(code)?.Status);
}
