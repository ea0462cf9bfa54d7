using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Data;
using ConeService.Firing.Colours;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Colours;

/// <summary>Colours that sources and practice tell, held against the resolver; each row names its source.</summary>
public class ColourVectorTests
{
    private static readonly ColourReference Colours = new(new ColourCatalogue(Reference.Charts));

    private static readonly List<Dictionary<string, string>> Rows = CsvFile.Read("Vectors/colours.csv");

    public static TheoryData<string> Ids => [.. Rows.Select(r => r["id"])];

    [Fact]
    public void There_are_at_least_eighty_cases_and_each_names_a_source_of_the_bibliography()
    {
        Assert.True(Rows.Count >= 80);
        var known = Reference.Dataset.Sources.Select(s => s.Id).ToHashSet();
        Assert.All(Rows.SelectMany(r => r["source"].Split(';')), source => Assert.Contains(source, known));
    }

    [Theory]
    [MemberData(nameof(Ids))]
    public void The_colour_is_the_one_that_is_told(string id)
    {
        var row = Rows.Single(r => r["id"] == id);
        var answer = Colours.Resolve(new(
            [.. Parts(row["colorants"]).Select(p => new ColorantEntry(p.Name, SentText.Of(p.Percent)))],
            [.. Parts(row["additives"]).Select(p => new AdditiveEntry(p.Name, SentText.Of(p.Percent)))],
            row["base"], row["atmosphere"], SentText.Of(row["cone"]))).Asked!;

        Assert.True(answer.Covered == (row["covered"] == "yes"), answer.Explanation.ToString());
        foreach (var word in Words(row["words"])) Assert.Contains(word, answer.ColourWords);
        foreach (var word in Words(row["not_words"])) Assert.DoesNotContain(word, answer.ColourWords);
        var raised = answer.Warnings.Where(w => w.Standing == RuleStanding.Holds).Select(w => w.Rule).ToList();
        foreach (var rule in Words(row["raises"])) Assert.Contains(rule, raised);
        foreach (var rule in Words(row["does_not_raise"])) Assert.DoesNotContain(rule, raised);
        Assert.All(answer.Warnings.SelectMany(w => w.Cautions), c => Assert.Equal("/v1/cautions/" + c.Id, c.Href.Path));
        if (answer.Swatch is { } swatch) Assert.Equal(Confidence.Estimate, swatch.Confidence);
    }

    private static IEnumerable<(string Name, string? Percent)> Parts(string cell) =>
        Words(cell).Select(part => part.Split(':')).Select(part => (part[0], part.Length > 1 ? part[1] : null));

    private static string[] Words(string cell) => cell.Split(';', StringSplitOptions.RemoveEmptyEntries);
}
