using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Study;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Study;

/// <summary>Five hundred questions as they are drawn, and some held against the print.</summary>
public class QuestionTests
{
    private static readonly StudyReference Study = FiringReference.Open(Reference.Dataset).Study;

    private static readonly IReadOnlyList<Question> FiveHundred =
        [.. Enumerable.Range(1, 50).SelectMany(seed => Study.Questions(count: "10", seed: $"{seed}").Items)];

    [Fact]
    public void Of_five_hundred_each_has_one_right_answer_a_reason_and_a_source_that_was_seen()
    {
        Assert.Equal(500, FiveHundred.Count);
        var seen = Reference.Dataset.Sources.Where(s => s.Seen is "whole" or "in-part").Select(s => s.Id).ToHashSet();
        Assert.All(FiveHundred, q =>
        {
            Assert.Equal(4, q.Choices.Select(c => c.Text).Distinct().Count());
            Assert.Equal(["A", "B", "C", "D"], q.Choices.Select(c => c.Letter));
            Assert.Single(q.Choices, c => c.Letter == q.Right);
            Assert.NotEmpty(q.Why);
            Assert.Contains(q.Sources, seen.Contains);
            Assert.DoesNotContain(q.Confidence, (Confidence[])[Confidence.FromMemory, Confidence.Estimate]);
        });
    }

    [Fact]
    public void Every_topic_has_questions_and_none_twice_on_a_sheet()
    {
        var topics = Study.Questions().Topics;
        Assert.Equal(7, topics.Count);
        Assert.All(topics, t => Assert.NotEmpty(Study.Questions(t, "100").Items));
        var sheet = Study.Questions(count: "100", seed: "9").Items;
        Assert.Equal(sheet.Count, sheet.Select(q => q.Id).Distinct().Count());
    }

    [Fact]
    public void A_seed_draws_the_same_again_and_another_draws_others()
    {
        Assert.Equal(Told(Study.Questions(seed: "7")), Told(Study.Questions(seed: "7")));
        Assert.NotEqual(Told(Study.Questions(seed: "7")), Told(Study.Questions(seed: "8")));
        Assert.Contains(Study.Questions().Items[0].Right, "ABCD", StringComparison.Ordinal);
        Assert.True(FiveHundred.Select(q => q.Right).Distinct().Count() == 4, "The right answer always stands in the same place.");
    }

    // Orton 2016, self-supporting cones at 60 °C/h: 06 998 °C (1828 °F), 6 1222 °C.
    [Fact]
    public void The_mix_up_and_the_other_unit_are_among_the_wrong_answers()
    {
        var question = Study.Questions("cones-to-temperatures", "100").Items.Single(q => q.Id == "cones-to-temperatures-06-60");
        var choices = question.Choices.ToDictionary(c => c.Text, c => c.Letter);
        Assert.Equal(choices["998 °C"], question.Right);
        Assert.Contains("1222 °C", choices.Keys);
        Assert.Contains("1828 °C", choices.Keys);
    }

    // Of cones that are asked to be compared the right one is hotter by more than a chart and a rate could turn round.
    [Fact]
    public void The_hottest_cone_is_the_hottest_by_the_print()
    {
        var charted = Reference.Dataset.EndPoints.Where(e => e.Chart == "witness-self-supporting")
            .ToDictionary(e => (e.Cone, e.Rate), e => e.Celsius);
        foreach (var q in Study.Questions("hotter-or-cooler", "100").Items)
        {
            var rate = q.Id.Split('-')[^1];
            var heats = q.Choices.ToDictionary(c => c.Letter, c => charted[(c.Text["cone ".Length..], rate)]);
            Assert.All(heats.Where(h => h.Key != q.Right), h => Assert.True(heats[q.Right] - h.Value >= 15, q.Name));
        }
    }

    // A colour that the package tells anywhere for the same colorant and atmosphere is no wrong answer.
    [Fact]
    public void No_wrong_colour_is_told_elsewhere_of_the_same_glaze()
    {
        foreach (var q in Study.Questions("colours-by-atmosphere", "100").Items)
        {
            var note = Reference.Dataset.ColourNotes.Single(n => q.Id == "colours-by-atmosphere-" + n.Id);
            var told = Reference.Dataset.ColourNotes
                .Where(n => n.Colorant == note.Colorant && n.Atmosphere == note.Atmosphere).Select(n => n.Colour).ToList();
            Assert.All(q.Choices.Where(c => c.Letter != q.Right), c => Assert.DoesNotContain(c.Text, told));
        }
    }

    // Of what is breathed or touched, another protection against such is no wrong answer: gloves are right against every powder.
    [Fact]
    public void No_wrong_answer_on_a_powder_or_fume_is_a_protection_against_another()
    {
        HazardKind[] matter = [HazardKind.FumeOrGas, HazardKind.ToxicMaterial, HazardKind.Dust, HazardKind.Caustic];
        var cautions = Reference.Dataset.Cautions;
        foreach (var q in Study.Questions("cautions", "100").Items)
        {
            var asked = cautions.Single(c => q.Id == "cautions-" + c.Id);
            if (!matter.Contains(asked.Kind)) continue;
            var wrong = q.Choices.Where(c => c.Letter != q.Right).Select(c => c.Text).ToList();
            Assert.DoesNotContain(cautions, c => matter.Contains(c.Kind) && wrong.Contains(c.Control));
        }
    }

    [Fact]
    public void Lead_glazes_are_not_asked() => Assert.DoesNotContain(
        Study.Questions("colours-by-atmosphere", "100").Items, q => q.Name.Contains("Lead", StringComparison.Ordinal));

    [Fact]
    public void What_can_not_be_drawn_is_refused_with_all_that_is_wrong()
    {
        var refused = Assert.Throws<RefusedException>(() => Study.Questions("cone", "0", "x"));
        Assert.Equal(
            [FindingCodes.TopicUnknown, FindingCodes.NumberOutOfRange, FindingCodes.NumberOutOfRange],
            refused.Findings.Select(f => f.Code));
        Assert.Equal(["count", "seed"], Study.Questions().Assumed.Select(a => a.Field));
    }

    private static string Told(QuestionList list) =>
        string.Join('|', list.Items.Select(q => $"{q.Id} {q.Right} {string.Join('/', q.Choices)}"));
}
