using ConeService.Contract.Answers;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Study;

/// <summary>Faults, landmarks and terms, against what the trade says of them.</summary>
public class FaultTests
{
    private static readonly StudyReference Study = FiringReference.Open(Reference.Dataset).Study;

    // What every course on firing names.
    [Theory]
    [InlineData("bloating")]
    [InlineData("crazing")]
    [InlineData("crawling")]
    [InlineData("shivering")]
    [InlineData("dunting")]
    [InlineData("pinholes")]
    [InlineData("black-core")]
    [InlineData("blisters")]
    [InlineData("cracks")]
    [InlineData("warping")]
    public void A_fault_that_every_course_names_has_causes_with_tell_and_remedy(string id)
    {
        var fault = Study.Fault(id).Fault;
        Assert.True(fault.Causes.Count >= 2, $"{id} has one cause only.");
        Assert.All(fault.Causes, c =>
        {
            Assert.EndsWith(".", c.Cause, StringComparison.Ordinal);
            Assert.EndsWith(".", c.Tell, StringComparison.Ordinal);
            Assert.EndsWith(".", c.Change, StringComparison.Ordinal);
            Assert.NotEmpty(c.Sources);
        });
    }

    // Trade: crazing is a glaze that is stretched, so more silica mends it; shivering the contrary.
    [Theory]
    [InlineData("crazing", "more silica")]
    [InlineData("shivering", "less silica")]
    [InlineData("dunting", "573 °C")]
    [InlineData("black-core", "700 to 950 °C")]
    [InlineData("bursting", "80 to 95 °C")]
    public void A_fault_is_mended_as_the_trade_mends_it(string id, string words) =>
        Assert.Contains(Study.Fault(id).Fault.Causes, c => $"{c.Cause} {c.Change}".Contains(words, StringComparison.Ordinal));

    // What is told apart is told apart both ways round.
    [Fact]
    public void What_a_fault_is_mistaken_for_is_mistaken_for_it_or_says_why_not()
    {
        var faults = Study.Faults().Items;
        Assert.All(faults, f => Assert.DoesNotContain(f.Id, f.Unlike));
        Assert.Contains("blisters", Study.Fault("bloating").Fault.Unlike);
        Assert.Contains("bloating", Study.Fault("blisters").Fault.Unlike);
        Assert.Equal(["blisters"], Study.Fault("bloating").Unlike.Select(l => l.Id));
    }

    [Fact]
    public void Faults_are_kept_by_stage_and_a_stage_that_none_has_is_refused()
    {
        Assert.Contains(Study.Faults("use").Items, f => f.Id == "crazing");
        Assert.DoesNotContain(Study.Faults("use").Items, f => f.Id == "bloating");
        var refused = Assert.Throws<RefusedException>(() => Study.Faults("openning"));
        Assert.Contains("opening", refused.Findings[0].Allowed.Select(a => a.ToString()));
    }

    // wikipedia-quartz-inversion prints 573 °C and at most 50 °C/h on cooling.
    [Fact]
    public void The_landmark_of_quartz_on_cooling_is_as_printed()
    {
        var landmark = Study.Landmark("quartz-down");
        Assert.Equal(573, landmark.Landmark.CelsiusMin);
        Assert.Equal(573, landmark.Landmark.CelsiusMax);
        Assert.Equal(50, landmark.Landmark.RateMin);
        Assert.Contains(landmark.Faults, f => f.Id == "dunting");
        Assert.All(Study.Landmarks("cooling").Items, l => Assert.Equal(Data.LandmarkPhase.Cooling, l.Phase));
    }

    [Theory]
    [InlineData("candling", "80 to 95 °C")]
    [InlineData("greenware", "not been fired")]
    [InlineData("soaking", "at one temperature")]
    [InlineData("quench", "water")]
    [InlineData("heat-work", "time and temperature together")]
    [InlineData("reduction", "carbon monoxide")]
    public void A_term_is_told_as_the_trade_uses_it(string id, string words) =>
        Assert.Contains(words, Study.Term(id).Term.Meaning, StringComparison.Ordinal);

    // A synonym leads to one thing: two terms, or two faults, that share one would each be a wrong answer to half of those who ask.
    [Fact]
    public void No_two_terms_and_no_two_faults_share_a_name()
    {
        string[] terms = [.. Study.Terms().Items.SelectMany(t => t.Synonyms.Append(t.Name)).Select(n => n.ToLowerInvariant())];
        string[] faults = [.. Study.Faults().Items.SelectMany(f => f.Synonyms.Append(f.Name)).Select(n => n.ToLowerInvariant())];
        Assert.Equal([], terms.GroupBy(n => n).Where(g => g.Count() > 1).Select(g => g.Key));
        Assert.Equal([], faults.GroupBy(n => n).Where(g => g.Count() > 1).Select(g => g.Key));
    }
}
