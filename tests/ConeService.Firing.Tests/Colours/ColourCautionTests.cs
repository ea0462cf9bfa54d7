using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Data;
using ConeService.Firing.Colours;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Colours;

/// <summary>Whatever brings a hazard into the glaze or the kiln raises its caution, however the question is put.</summary>
public class ColourCautionTests
{
    private static readonly ColourReference Colours = new(new ColourCatalogue(Reference.Charts));

    // cautions.csv of the reference: lead-and-cadmium after osha-lead, osha-cadmium and cox-1914; manganese-fume after osha-z1;
    // explosive-reduction after pitelka-2001, which warns of closing the damper on raw gas, in whatever kiln has gas to close in.
    [Theory]
    [InlineData("iron", "lead", "oxidation", "lead-and-cadmium")]
    [InlineData("antimony", null, "oxidation", "lead-and-cadmium")]
    [InlineData("cadmium-selenium", null, "oxidation", "lead-and-cadmium")]
    [InlineData("manganese", null, "oxidation", "manganese-fume")]
    [InlineData("manganese-carbonate", "calcium", "oxidation", "manganese-fume")]
    [InlineData("iron-manganese-cobalt", null, "neutral", "manganese-fume")]
    [InlineData("copper", null, "reduction", "explosive-reduction")]
    [InlineData("copper", null, "reduction", "carbon-monoxide")]
    [InlineData("copper", null, null, "explosive-reduction")]
    public void The_hazard_is_raised(string colorant, string? @base, string? atmosphere, string caution)
    {
        Assert.Contains(caution, Ids(Colours.Find(colorant, atmosphere, @base)));
        Assert.Contains(caution, Colours.Resolve(new([new(colorant)], null, @base, atmosphere)).Cautions.Select(c => c.Id));
    }

    [Fact]
    public void It_is_not_raised_where_nothing_brings_it()
    {
        var raised = Ids(Colours.Find("iron", "oxidation", "calcium"));
        foreach (var caution in new[] { "lead-and-cadmium", "manganese-fume", "explosive-reduction", "carbon-monoxide" })
            Assert.DoesNotContain(caution, raised);
    }

    // Half a percent at cone 04 is below what any rule on manganese tells: the material alone must raise it.
    [Fact]
    public void A_little_of_it_at_low_heat_raises_it_too() =>
        Assert.Contains("manganese-fume", Ids(Colours.Find("manganese", "oxidation", "calcium", "04", "0.5")));

    // In the reference package the materials bring whatever their rules bring; a studio's own rule may bring more.
    [Theory]
    [InlineData("nickel", "magnesium", "nickel-magnesium-acid-green,nickel-dust,")]
    [InlineData("manganese", "calcium", "manganese-oxygen,,manganese-fume,")]
    public void What_a_rule_brings_is_raised(string colorant, string additive, string cell)
    {
        var edited = cell[..cell.TrimEnd(',').LastIndexOf(',')] + ",kiln-wash-dust,";
        var data = DatasetLoader.Load(new EditedPackage("colour-rules.csv", cell, edited));
        var request = new ColourRequest(
            [new(colorant, SentText.Of("6"))], [new(additive, SentText.Of("5"))], null, "oxidation", SentText.Of("6"));
        Assert.Contains("kiln-wash-dust", FiringReference.Open(data).Colours.Resolve(request).Cautions.Select(c => c.Id));
    }

    // colour-notes.csv tells yellow of antimony and cadmium, purple of manganese: whoever looks for a colour meets them.
    [Theory]
    [InlineData("yellow", "lead-and-cadmium")]
    [InlineData("yellow", "antimony-in-naples-yellow")]
    [InlineData("purple", "manganese-fume")]
    public void A_list_of_what_gives_a_colour_raises_the_cautions_of_every_colorant_in_it(string colour, string caution) =>
        Assert.Contains(caution, Ids(Colours.Find(atmosphere: "oxidation", colour: colour)));

    // The recipe is always told in oxidation and in reduction side by side, so it brings the cautions of reduction too.
    [Fact]
    public void A_recipe_told_in_reduction_for_contrast_raises_the_cautions_of_reduction() =>
        Assert.Contains("explosive-reduction", Colours.Resolve(new([new("iron")], null, null, "oxidation")).Cautions.Select(c => c.Id));

    // The expectations are the column cautions as another parser reads it.
    [Fact]
    public void Every_colorant_form_base_and_additive_raises_all_of_its_cautions()
    {
        var cautionsOf = CsvFile.Read("data/colorants.csv").ToDictionary(r => r["id"], r => List(r["cautions"]));
        Assert.Contains(cautionsOf, c => c.Value.Contains("manganese-fume"));
        foreach (var (id, cautions) in cautionsOf)
            Assert.Subset(Ids(Colours.Find(id, "oxidation")), cautions);
        foreach (var form in CsvFile.Read("data/colorant-forms.csv"))
            Assert.Subset(Ids(Colours.Find(form["id"], "oxidation")), cautionsOf[form["colorant"]]);
        foreach (var row in CsvFile.Read("data/base-glazes.csv"))
            Assert.Subset(Ids(Colours.Find("iron", "oxidation", row["id"])), List(row["cautions"]));
        foreach (var row in CsvFile.Read("data/additives.csv"))
        {
            var answer = Colours.Resolve(new([new("iron")], [new(row["id"], SentText.Of("5"))]));
            Assert.Subset(answer.Cautions.Select(c => c.Id).ToHashSet(), List(row["cautions"]));
        }
    }

    [Fact]
    public void The_gravest_come_first()
    {
        // Lead and gas can kill: critical; the fume of manganese: high; that of copper: medium (cautions.csv).
        var raised = Colours.Resolve(new([new("copper"), new("manganese")], null, "lead", "reduction")).Cautions;
        Assert.Equal(raised.OrderByDescending(c => c.Severity).Select(c => c.Id), raised.Select(c => c.Id));
        var order = raised.Select(c => c.Id).ToList();
        Assert.True(order.IndexOf("explosive-reduction") < order.IndexOf("manganese-fume"));
        Assert.True(order.IndexOf("lead-and-cadmium") < order.IndexOf("manganese-fume"));
        Assert.True(order.IndexOf("manganese-fume") < order.IndexOf("copper-fume"));
        Assert.Equal(Severity.Critical, raised[0].Severity);
    }

    private static HashSet<string> Ids(ColourAnswer answer) => [.. answer.Cautions.Select(c => c.Id)];

    private static HashSet<string> List(string cell) => [.. cell.Split(';', StringSplitOptions.RemoveEmptyEntries)];
}
