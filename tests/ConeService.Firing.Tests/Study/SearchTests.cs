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
    [InlineData("Δ6", "Cone 6 goes down at 1222 °C (2232 °F)")]
    [InlineData("cone6", "Cone 6 goes down at 1222 °C (2232 °F)")]
    [InlineData("o6", "Cone 06 goes down at 998 °C (1828 °F)")]
    [InlineData("1222C", "to 1222 °C (2232 °F) brings cone 6 down and leaves cone 7 standing")]
    [InlineData("which cone is 1000 degrees C", "to 1000 °C (1832 °F) brings cone 06 down")]
    public void Cones_and_temperatures_are_answered_in_a_sentence(string asked, string expected)
    {
        var answer = Study.Search(asked);
        Assert.Contains(expected, answer.Answer!.ToString(), StringComparison.Ordinal);
        Assert.Contains(answer.Items[0].List, (string[])["cones", "temperatures"]);
    }

    // The chart prints cone 6 at 150 °C/h as 1243 °C (2269 °F), cone 5 as 1207; 270 °F/h is the same rate, and so is 2.5 °C a minute.
    [Theory]
    [InlineData("cone 6 at 150 C/h", "Cone 6 goes down at 1243 °C (2269 °F) when the kiln rises 150 °C an hour")]
    [InlineData("cone 6 at 150C per hour", "Cone 6 goes down at 1243 °C (2269 °F) when the kiln rises 150 °C an hour")]
    [InlineData("cone 6 at 270 F/h", "Cone 6 goes down at 1243 °C (2269 °F) when the kiln rises 150 °C an hour")]
    [InlineData("Cone 6 at 270 degrees F an hour?", "Cone 6 goes down at 1243 °C (2269 °F) when the kiln rises 150 °C an hour")]
    [InlineData("cone 6 at 2.5 °C/min", "Cone 6 goes down at 1243 °C (2269 °F) when the kiln rises 150 °C an hour")]
    [InlineData("what cone is 1222 C at 150 C/h", "A kiln that rises 150 °C an hour to 1222 °C (2232 °F) brings cone 5 down")]
    [InlineData("1222 C 150C/h", "A kiln that rises 150 °C an hour to 1222 °C (2232 °F) brings cone 5 down")]
    [InlineData("1222 celsius at 150 celsius per hour", "A kiln that rises 150 °C an hour to 1222 °C (2232 °F) brings cone 5 down")]
    [InlineData("hotter 6 or 5 at 150 C/h", "Cone 6 is hotter than cone 5: 1243 °C (2269 °F) against 1207 °C (2205 °F) when the kiln")]
    [InlineData("hotter 6 or 5.5 at 300 C/h", "when the kiln rises 300 °C an hour")]
    [InlineData("cone 6 at 10 C/h", "when the kiln rises 10 °C an hour")]
    public void A_rate_that_is_stated_is_the_rate_that_is_answered_for(string asked, string expected)
    {
        var answer = Study.Search(asked);
        Assert.Contains(expected, answer.Answer!.ToString(), StringComparison.Ordinal);
        Assert.DoesNotContain("60 °C an hour", answer.Answer!.ToString(), StringComparison.Ordinal);
        Assert.Empty(answer.UnknownWords);
    }

    [Theory]
    [InlineData("cone 6 at 150/h", "The rate 150/h has no unit")]
    [InlineData("cone 6 at 150 degrees per hour", "Write 150C/h or 150F/h")]
    [InlineData("1222 C at 150 per hour", "The rate 150/h has no unit")]
    [InlineData("cone 6 at 1000 C/h", "lies outside what cones can be computed for")]
    [InlineData("cone 6 at 62,5 C/h", "“62,5C/h” is not a heating rate")]
    [InlineData("cone 6 at 60 C/h or 150 C/h", "two heating rates")]
    public void A_rate_that_can_not_be_taken_is_told_and_nothing_is_answered_beside_it(string asked, string expected)
    {
        var answer = Study.Search(asked);
        Assert.Contains(expected, answer.Answer!.ToString(), StringComparison.Ordinal);
        Assert.All([answer.Answer.ToString(), .. answer.Items.Select(i => i.Text ?? "")], t =>
            Assert.DoesNotContain("an hour", t, StringComparison.Ordinal));
    }

    // 1222 °F is 661 °C, 1000 °C is 1832 °F: both are told where the unit is missing.
    [Theory]
    [InlineData("what cone is 1222", "The temperature 1222 has no unit.", "As 1222C: ", "brings cone 6 down", "As 1222F: ", "661 °C")]
    [InlineData("1000 degrees", "The temperature 1000 has no unit.", "As 1000C: ", "brings cone 06 down", "As 1000F: ", "outside")]
    [InlineData("1222", "has no unit", "As 1222C", "As 1222F")]
    public void A_temperature_without_its_unit_is_answered_in_both(string asked, params string[] expected)
    {
        var answer = Study.Search(asked);
        Assert.All(expected, e => Assert.Contains(e, answer.Answer!.ToString(), StringComparison.Ordinal));
        Assert.Equal("temperatures", answer.Items[0].List);
    }

    [Theory]
    [InlineData("cone 0", "There is no cone 0", "01", "1")]
    [InlineData("cone 21", "There is no cone 21", "20", "23")]
    [InlineData("^0", "There is no cone 0", "01", "1")]
    [InlineData("cone 99", "There is no cone 99. Allowed: 022 to 42.")]
    public void What_is_called_a_cone_and_is_none_is_told(string asked, string expected, params string[] near)
    {
        var answer = Study.Search(asked);
        Assert.Contains(expected, answer.Answer!.ToString(), StringComparison.Ordinal);
        Assert.Equal(near, answer.Items.Where(i => i.List == "cones").Select(i => i.Id));
    }

    [Theory]
    [InlineData("Δ6")]
    [InlineData("o6")]
    [InlineData("1222 C")]
    public void A_cone_and_a_unit_are_no_unknown_words(string asked) => Assert.Empty(Study.Search(asked).UnknownWords);

    [Fact]
    public void Three_cones_are_answered_each()
    {
        var told = Study.Search("cone 5, 6 and 7").Answer!.ToString();
        Assert.All(["Cone 5 goes", "Cone 6 goes", "Cone 7 goes"], c => Assert.Contains(c, told, StringComparison.Ordinal));
    }

    [Fact]
    public void An_illness_leads_to_the_caution_that_is_against_it() =>
        Assert.Contains(Study.Search("silicosis").Items, i => i.Id == "crystalline-silica-dust");

    [Fact]
    public void A_source_is_found_by_its_name() =>
        Assert.Contains(Study.Search("orton").Items, i => i is { List: "sources", Id: "orton-2016" });

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
