using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Data;
using ConeService.Firing.Colours;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Colours;

/// <summary>What is told first: usual practice, and only what holds at the cone asked for. Source: practice of the trade.</summary>
public class ColourHeadlineTests
{
    private const string Lead = "lead";

    private static readonly ColourReference Colours = new(new ColourCatalogue(Reference.Charts));

    public static TheoryData<string> Colorants => [.. Reference.Dataset.Colorants.Select(c => c.Id)];

    [Theory]
    [MemberData(nameof(Colorants))]
    public void No_lead_glaze_heads_an_answer_that_nobody_asked_of_lead(string colorant)
    {
        foreach (var answer in Colours.Find(colorant).Answers)
        {
            var notes = answer.Colorants.SelectMany(c => c.ColourNotes).Select(n => n.Note).ToList();
            Assert.DoesNotContain(notes.Take(answer.RestsOn.Count), n => answer.RestsOn.Contains(n.Id) && n.Base == Lead);
            // The printed note stands below every glaze in use.
            var first = notes.FindIndex(n => n.Base == Lead);
            if (first >= 0) Assert.All(notes.Skip(first), n => Assert.Equal(Lead, n.Base));
        }
    }

    [Theory]
    [InlineData("antimony", "oxidation")]
    [InlineData("uranium", "oxidation")]
    public void What_is_told_for_lead_alone_is_told_as_history(string colorant, string atmosphere)
    {
        var answer = Colours.Find(colorant, atmosphere).Answers[0];
        Assert.Null(answer.Colour);
        Assert.False(answer.Covered);
        Assert.Contains("what is told of lead glazes is history and poisonous", answer.Explanation.ToString(), StringComparison.Ordinal);
        Assert.NotEmpty(answer.Colorants[0].ColourNotes);
    }

    [Fact]
    public void Who_asks_of_lead_is_answered_of_lead() =>
        Assert.Equal("orange brown", Colours.Find("iron", "oxidation", Lead, percent: "2.7").Answers[0].Colour!.ToString());

    [Theory]
    [InlineData("copper", "reduction", "copper red with tin")]
    [InlineData("iron", "oxidation", "tan to honey to brown")]
    [InlineData("iron", "reduction", "celadon")]
    public void Usual_practice_leads(string colorant, string atmosphere, string colour) =>
        Assert.Contains(colour, Colours.Find(colorant, atmosphere).Answers[0].Colour!.ToString(), StringComparison.Ordinal);

    [Theory]
    [InlineData("6", false)]
    [InlineData("9", true)]
    [InlineData("10", true)]
    public void Oil_spots_are_told_only_where_their_heat_is_reached(string cone, bool spots)
    {
        var answer = Colours.Find("iron", "oxidation", "calcium", cone, "9").Answers[0];
        var told = answer.Colorants[0].ColourNotes.Any(n => n.Note.Colour.Contains("oil spots", StringComparison.Ordinal));
        Assert.Equal(spots, told);
        Assert.Contains("brown to black-brown", answer.Colour!.ToString(), StringComparison.Ordinal);
        if (!spots) Assert.DoesNotContain("oil", answer.Colour!.ToString() + answer.Explanation, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("5")]
    [InlineData("6")]
    [InlineData("7")]
    public void Rutile_in_a_boron_glaze_at_mid_range_is_the_variegated_blue(string cone) => Assert.Equal(
        "variegated blue, brown where thin", Colours.Find("rutile", "oxidation", "boron", cone, "5").Answers[0].Colour!.ToString());

    [Fact]
    public void It_is_no_blue_at_low_fire() => Assert.DoesNotContain(
        "blue", Colours.Find("rutile", "oxidation", "boron", "04", "5").Answers[0].Colour!.ToString(), StringComparison.Ordinal);

    // turner-2012: too thin a coat vaporises and goes clear; a thick one is red.
    [Fact]
    public void A_red_and_what_takes_it_away_are_told_together()
    {
        var answer = Colours.Resolve(new ColourRequest(
            [new("copper", SentText.Of("0.5"))], [new("tin", SentText.Of("1"))], "calcium", "reduction", SentText.Of("10"))).Asked!;
        Assert.Equal("Copper red", answer.Colour!.ToString());
        var said = answer.Explanation.ToString();
        Assert.Contains("a thin coat goes clear, a thick one keeps its colour", said, StringComparison.Ordinal);
        Assert.DoesNotContain("is lost", said, StringComparison.Ordinal);
        Assert.All(answer.Warnings, w => Assert.DoesNotContain("Colour is lost", w.Message.ToString(), StringComparison.Ordinal));
    }

    [Theory]
    [MemberData(nameof(Colorants))]
    public void Whatever_takes_colour_away_is_told_beside_the_colour(string colorant)
    {
        foreach (var cone in (string[])["04", "6", "10"])
        {
            foreach (var answer in Colours.Find(colorant, cone: cone).Answers.Where(a => a.Colour is not null))
            {
                Assert.All(
                    answer.Interactions.Where(i => i is { Effect: ColourRuleEffect.LosesColour, Standing: RuleStanding.Holds }),
                    i => Assert.Contains(i.Outcome, answer.Explanation.ToString(), StringComparison.Ordinal));
            }
        }
    }
}
