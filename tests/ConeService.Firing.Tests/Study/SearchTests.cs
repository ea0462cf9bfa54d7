using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Study;

/// <summary>Everyday words lead where somebody who fires kilns would send the one who asks.</summary>
public class SearchTests
{
    private static readonly StudyReference Study = FiringReference.Open(Reference.Dataset).Study;

    [Theory]
    [InlineData("candling", "glossary/candling")]
    [InlineData("how long to candle?", "glossary/candling")]
    [InlineData("greenware", "glossary/greenware")]
    [InlineData("crawling", "faults/crawling")]
    [InlineData("the glaze crawled", "faults/crawling")]
    [InlineData("black core", "faults/black-core")]
    [InlineData("why did my pot blow up in the kiln", "faults/bursting")]
    [InlineData("tiny holes in my glaze", "faults/pinholes")]
    [InlineData("glaze stuck to the shelf", "faults/running")]
    [InlineData("crackled glaze", "faults/crazing")]
    [InlineData("shiverring", "faults/shivering")]
    [InlineData("china paint", "glossary/china-paint")]
    [InlineData("what is heat work", "glossary/heat-work")]
    [InlineData("can I put lustre in the microwave?", "cautions/lustre-in-microwave")]
    [InlineData("carbon monoxide", "cautions/carbon-monoxide")]
    [InlineData("what colour does copper give in reduction", "colours/copper-reduction")]
    [InlineData("what color is cobalt in oxidation", "colours/cobalt-oxidation")]
    [InlineData("what is soaking", "glossary/soaking")]
    [InlineData("difference between bisque and glaze firing", "glossary/bisque")]
    public void Everyday_words_lead_to_what_they_are_about(string asked, string expected)
    {
        var first = Study.Search(asked).Items[0];
        Assert.Equal(expected, $"{first.List}/{first.Id}");
    }

    // Words that look alike and are not: a near match would send the one who asks elsewhere.
    [Theory]
    [InlineData("tin foil hat")]
    [InlineData("dragon glaze for hamsters")]
    [InlineData("candy")]
    [InlineData("crawlspace")]
    public void What_is_not_here_finds_nothing_and_offers_nothing(string asked)
    {
        var answer = Study.Search(asked);
        Assert.Empty(answer.Items);
        Assert.Empty(answer.Probably);
        Assert.NotEmpty(answer.UnknownWords);
    }

    [Theory]
    [InlineData("cndling", "candling")]
    [InlineData("crzing", "crazing")]
    [InlineData("greenwear", "greenware")]
    public void A_slip_of_the_pen_is_offered_back(string asked, string meant) => Assert.Contains(meant, Study.Search(asked).Probably);

    [Fact]
    public void Candling_is_never_told_as_china_paint() =>
        Assert.DoesNotContain(Study.Search("candling").Items, i => i.Id.Contains("paint", StringComparison.Ordinal));

    // Orton 2016, self-supporting cones at 60 °C/h:
    // 012 861 °C (1582 °F), 06 998 °C (1828 °F), 6 1222 °C (2232 °F), 01 1119 °C, 1 1137 °C.
    [Theory]
    [InlineData("hotter 012 or 06", "Cone 06 is hotter than cone 012: 998 °C (1828 °F) against 861 °C (1582 °F)")]
    [InlineData("which is hotter, 06 or 6?", "Cone 6 is hotter than cone 06: 1222 °C (2232 °F) against 998 °C (1828 °F)")]
    [InlineData("is 1 cooler than 01", "Cone 1 is hotter than cone 01: 1137 °C (2079 °F) against 1119 °C (2046 °F)")]
    [InlineData("what temperature is cone 04", "Cone 04 goes down at 1063 °C (1945 °F)")]
    [InlineData("^6", "Cone 6 goes down at 1222 °C (2232 °F)")]
    [InlineData("o6", "Cone 06 goes down at 998 °C (1828 °F)")]
    [InlineData("1222C", "to 1222 °C (2232 °F) brings cone 6 down and leaves cone 7 standing")]
    [InlineData("which cone is 1000 degrees C", "to 1000 °C (1832 °F) brings cone 06 down")]
    public void Cones_and_temperatures_are_answered_in_a_sentence(string asked, string expected)
    {
        var answer = Study.Search(asked);
        Assert.Contains(expected, answer.Answer!.ToString(), StringComparison.Ordinal);
        Assert.Contains(answer.Items[0].List, (string[])["cones", "temperatures"]);
    }

    // A number among other words is no cone.
    [Theory]
    [InlineData("what happens at 573")]
    [InlineData("hold 10 minutes")]
    [InlineData("6 % copper")]
    public void A_number_with_another_meaning_is_no_cone(string asked) => Assert.Null(Study.Search(asked).Answer);

    [Fact]
    public void What_can_not_be_searched_for_is_refused()
    {
        Assert.Equal(FindingCodes.MemberMissing, Refused(" "));
        Assert.Equal(FindingCodes.TextTooLong, Refused(new string('a', 201)));
        Assert.Equal(FindingCodes.TextUnprintable, Refused("cone\u202E6"));
    }

    [Fact]
    public void An_answer_is_bounded_and_says_so()
    {
        var answer = Study.Search("glaze");
        Assert.Equal(20, answer.Items.Count);
        Assert.True(answer.HasMore);
    }

    private static string Refused(string asked) => Assert.Throws<RefusedException>(() => Study.Search(asked)).Findings[0].Code;
}
