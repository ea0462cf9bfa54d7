using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;

namespace ConeService.Firing.Tests.Loads;

/// <summary>Cautions that the load itself raises, beside those of kiln, kind of firing, bodies and coats.</summary>
public sealed class LoadCautionTests
{
    [Theory]
    [InlineData("lead", "lead-and-cadmium")]
    [InlineData("manganese", "manganese-fume")]
    [InlineData("copper", "copper-fume")]
    [InlineData("chrome", "chromium-dust-and-fume")]
    [InlineData("cadmium", "lead-and-cadmium")]
    [InlineData("barium", "barium-carbonate-toxic")]
    [InlineData("nickel", "nickel-dust")]
    [InlineData("vanadium", "vanadium-dust")]
    public void What_a_coat_is_said_to_hold_raises_its_caution(string metal, string caution)
    {
        var plain = Loads.Piece("p", "mid-range-stoneware-light", "mid-range-gloss");
        var holding = plain with { Coats = [new(Loads.T("mid-range-gloss"), Contains: [Loads.T(metal)])] };

        Assert.DoesNotContain(caution, Cautions(Loads.Electric, "oxidation", plain));
        Assert.Single(Cautions(Loads.Electric, "oxidation", holding), caution);
    }

    [Theory]
    // caution explosive-reduction: gas and air that were not burnt in the kiln; carbon-monoxide: any reduction.
    [InlineData("gas", "reduction", true, true)]
    [InlineData("gas", "oxidation", false, true)]
    [InlineData("wood", "reduction", false, true)]
    [InlineData("vapour", "reduction", true, true)]
    [InlineData("electric", "reduction", false, true)]
    [InlineData("electric", "oxidation", false, false)]
    public void Reduction_raises_what_it_can_do(string heat, string atmosphere, bool explosive, bool carbonMonoxide)
    {
        var kiln = Loads.Kiln(heat, "13", "oxidation;neutral;reduction");
        var cautions = Cautions(kiln, atmosphere, Loads.Piece("p", "high-fire-porcelain", "high-fire-clear"));

        Assert.Equal(explosive, cautions.Contains("explosive-reduction"));
        Assert.Equal(carbonMonoxide, cautions.Contains("carbon-monoxide"));
    }

    [Theory]
    // additives zinc: leaves the glaze in reduction.
    [InlineData("reduction", true)]
    [InlineData("oxidation", false)]
    public void Zinc_is_a_fume_in_reduction(string atmosphere, bool expected)
    {
        var piece = Loads.Piece("p", "high-fire-porcelain") with { Coats = [new(Loads.T("high-fire-clear"), Contains: ["zinc"])] };

        Assert.Equal(expected, Cautions(Loads.Gas, atmosphere, piece).Contains("zinc-fume"));
    }

    [Theory]
    // What processes and docs/safety.md promise, where the load gives cause.
    [InlineData("electric", "glaze", "9", "reduction", "high-fire-porcelain", "copper-red", "reduction-in-electric-kiln", true)]
    [InlineData("electric", "glaze", "9", "oxidation", "high-fire-porcelain", "high-fire-clear", "reduction-in-electric-kiln", false)]
    [InlineData("gas", "glaze", "9", "reduction", "high-fire-porcelain", "copper-red", "reduction-in-electric-kiln", false)]
    [InlineData("vapour", "salt", "9", "reduction", "salt-soda-body", "salt-vapour", "explosive-reduction", true)]
    [InlineData("vapour", "soda", "9", "reduction", "salt-soda-body", "soda-vapour", "explosive-reduction", true)]
    [InlineData("vapour", "salt", "9", "oxidation", "salt-soda-body", "salt-vapour", "explosive-reduction", false)]
    [InlineData("vapour", "salt", "9", "oxidation", "salt-soda-body", "salt-vapour", "gas-kiln-ignition", true)]
    [InlineData("vapour", "soda", "9", "reduction", "salt-soda-body", "soda-vapour", "gas-kiln-ignition", true)]
    [InlineData("electric", "raku", "06", "oxidation", "raku-body", "raku-glaze", "electric-shock", true)]
    [InlineData("gas", "raku", "06", "oxidation", "raku-body", "raku-glaze", "electric-shock", false)]
    [InlineData("electric", "glaze", "6", "oxidation", "mid-range-stoneware-light", "mid-range-gloss", "electric-shock", false)]
    public void Cautions_are_those_the_load_gives_cause_for(
        string heat, string kind, string cone, string atmosphere, string body, string coat, string caution, bool expected)
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Kiln(heat, "12", "oxidation;neutral;reduction"), Loads.Firing(kind, cone, atmosphere), Loads.Piece("p", body, coat)));

        Assert.Equal(expected, answer.Cautions.Any(c => c.Id == caution));
        Assert.Equal(answer.Cautions.Select(c => c.Severity).OrderDescending(), answer.Cautions.Select(c => c.Severity));
    }

    private static List<string> Cautions(Kiln kiln, string atmosphere, PieceRequest piece) =>
        [.. Loads.Check.Check(Loads.Load(kiln, Loads.Firing("glaze", "6", atmosphere), piece)).Cautions.Select(c => c.Id)];
}
