using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Colours;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Colours;

public class ColourRuleTests
{
    private static readonly ColourReference Colours = new(new ColourCatalogue(Reference.Charts));

    [Fact]
    public void The_base_asked_for_stands_before_any_and_inside_before_outside()
    {
        // colorants.csv of the reference: copper-calcium-oxidation-apple-green calcium 1-4 %, copper-oxidation-light-green any base.
        var notes = Colours.Find("copper", "oxidation", "calcium", "10", "0.5", null, null).Answers[0].Colorants[0].ColourNotes;
        Assert.Equal(
            [
                (1, BaseMatch.Exact, PercentMatch.Below, "copper-calcium-oxidation-apple-green"),
                (2, BaseMatch.Any, PercentMatch.Inside, "copper-oxidation-light-green"),
            ],
            notes.Take(2).Select(n => (n.Rank, n.BaseMatch, n.PercentMatch, n.Note.Id)));
        Assert.Equal(notes.Select(n => n.BaseMatch).Order(), notes.Select(n => n.BaseMatch));
    }

    [Fact]
    public void What_fits_equally_well_is_told_in_the_order_of_the_table()
    {
        // craft-press-oxides tells cobalt carbonate in bands from 0.125, 0.75, 2.25 and 5 % on, one after the other.
        var notes = Colours.Find("cobalt", "oxidation", "any", null, null, null, null).Answers[0].Colorants[0].ColourNotes;
        Assert.Equal(
            [0.125m, 0.75m, 2.25m, 5m],
            notes.Where(n => n.Note.Sources.Contains("craft-press-oxides")).Select(n => n.Note.Percent!.Min));
    }

    // turner-2012 (note silicon-carbide-local-copper-red): 1/3 to 1/2 % of fine silicon carbide turns copper red in an oxidising kiln.
    [Theory]
    [InlineData("copper-carbonate,silicon-carbide", "0.4,0.4", "red")]
    // Coarse plenty is for craters, not for red: copper tells its own colour then.
    [InlineData("copper-carbonate", "0.4", "green")]
    // parmelee-1973 from memory: vanadium alone is yellow; the turquoise is that of its stain with zircon.
    [InlineData("vanadium", "5", "yellow")]
    [InlineData("vanadium,zircon", "5,10", "turquoise")]
    public void What_stands_beside_a_colorant_decides(string colorants, string percents, string word)
    {
        var entries = colorants.Split(',').Zip(percents.Split(','), (id, percent) => new ColorantEntry(id, SentText.Of(percent)));
        var answer = Colours.Resolve(new([.. entries], null, null, "oxidation", SentText.Of("9"))).Asked!;
        Assert.Contains(word, answer.ColourWords);
    }

    // A rule that replaces a colour, whatever was there before, does not name one that was not.
    [Fact]
    public void Chrome_with_zinc_is_brown_from_green_and_from_pink_alike() =>
        Assert.DoesNotContain("instead of green", Reference.Dataset.ColourRules.Single(r => r.Id == "chrome-zinc-brown").Outcome);

    // Arithmetic: CuCO3·Cu(OH)2 221.12 → 2 CuO 159.09, 0.719; CoCO3 118.94 → Co3O4/3 80.27, 0.675.
    [Theory]
    [InlineData("copper-carbonate", 0.7195)]
    [InlineData("cobalt-carbonate", 0.6749)]
    [InlineData("red-copper-oxide", 1.1118)]
    [InlineData("manganese-carbonate", 0.7563)]
    [InlineData("black-iron-oxide", 1.0346)]
    public void A_form_counts_by_the_metal_in_it(string form, double factor) =>
        Assert.Equal(factor, (double)Reference.Dataset.ColorantForms.Single(f => f.Id == form).OxideFactor, 0.001);

    [Fact]
    public void Every_colorant_answers_for_oxidation_and_reduction_or_says_that_no_source_covers_it()
    {
        Assert.All(Reference.Dataset.Colorants, colorant =>
        {
            var answer = Colours.Find(colorant.Id, null, null, null, null, null, null);
            Assert.Equal([Atmosphere.Oxidation, Atmosphere.Reduction], answer.Answers.Select(a => a.Atmosphere));
            Assert.All(answer.Answers, a => Assert.True(
                a.Covered ? a.ColourWords.Count > 0 && a.Sources.Count > 0 : IsUncovered(a.Explanation), colorant.Id));
            Assert.All(Colours.Colorant(colorant.Id).Coverage.Where(c => !c.Covered), c => Assert.True(IsUncovered(c.Statement)));
        });
    }

    [Fact]
    public void Everything_left_out_is_assumed_aloud()
    {
        var assumed = Colours.Find("copper", null, null, null, null, null, null).Assumed.Select(a => a.Parameter);
        Assert.Equal(["atmosphere", "base", "cone", "percent"], assumed.Order());
    }

    [Fact]
    public void Without_a_cone_what_depends_on_heat_is_possible_and_not_held()
    {
        var answer = Colours.Find("manganese", "oxidation", "calcium", null, "3", null, null).Answers[0];
        Assert.Equal(RuleStanding.Possible, answer.Warnings.Single(w => w.Rule == "manganese-gives-off-oxygen").Standing);
    }

    [Fact]
    public void Reduction_asked_of_an_electric_kiln_is_answered_with_the_caution()
    {
        var answer = Colours.Find("copper", "reduction", "tin", "6", "0.5", "electric", null).Answers[0];
        Assert.Contains("red", answer.ColourWords);
        var warning = answer.Warnings.Single(w => w.Code == "reduction-in-electric-kiln");
        Assert.Contains("reduction-in-electric-kiln", warning.Cautions.Select(c => c.Id));
        Assert.Contains("carbon-monoxide", warning.Cautions.Select(c => c.Id));
    }

    // cox-1914 warns of lead; barium carbonate is toxic (niosh-idlh): the base alone must raise them.
    [Theory]
    [InlineData("lead", "lead-and-cadmium")]
    [InlineData("barium", "barium-carbonate-toxic")]
    public void A_base_that_can_hurt_raises_its_caution(string of, string caution) =>
        Assert.Contains(caution, Colours.Find("iron", "oxidation", of, "05", "2", null, null).Cautions.Select(c => c.Id));

    [Fact]
    public void Two_colorants_that_no_source_mixes_are_told_each_by_itself()
    {
        var request = new ColourRequest([new("copper", SentText.Of("2")), new("cobalt", SentText.Of("1"))], null, "calcium", "oxidation");
        var answer = Colours.Resolve(request).Asked!;
        Assert.Equal(ColourBasis.Parts, answer.Basis);
        Assert.Null(answer.Swatch);
        Assert.Contains("No source in this package says how these mix", answer.Explanation.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("coper", "colorant-unknown", "copper")]
    [InlineData("chrom", "colorant-unknown", "chrome")]
    public void An_unknown_colorant_names_near_ones(string text, string code, string near)
    {
        var finding = Assert.Throws<RefusedException>(() => Colours.Find(text, null, null, null, null, null, null)).Findings.Single();
        Assert.Equal(code, finding.Code);
        Assert.Contains(near, finding.Allowed.Select(a => a.ToString()));
    }

    [Fact]
    public void Percentages_above_100_together_a_negative_one_and_a_cone_as_a_number_are_all_said_at_once()
    {
        var request = new ColourRequest(
            [
                new("iron", new("60", SentKind.Number)), new("cobalt", new("50", SentKind.Number)),
                new("nickel", new("-1", SentKind.Number)),
            ],
            null, "calcum", null, new("6", SentKind.Number));
        var codes = Assert.Throws<RefusedException>(() => Colours.Resolve(request)).Findings.Select(f => (f.Code, f.Field));
        Assert.Equal(
            [
                ("base-unknown", "/base"), ("cone-as-number", "/cone"), ("percent-out-of-range", "/colorants/2/percent"),
                ("percent-sum", ""),
            ],
            codes.Order());
    }

    private static bool IsUncovered(Message statement) =>
        statement.ToString().StartsWith("No source in this package covers", StringComparison.Ordinal);
}
