using ConeService.Data;

namespace ConeService.Firing.Tests.Loads;

/// <summary>What is said of a metal and what is judged of it agree, for every metal, surface and use.</summary>
public sealed class MetalTextTests
{
    // Load rule metals-in-coats: these until a leach test has passed, and any metal in a matt glaze.
    private static readonly string[] ComingOut = ["barium", "cadmium", "selenium", "nickel", "vanadium", "manganese"];

    public static TheoryData<string, string, string, string> Cases()
    {
        var cases = new TheoryData<string, string, string, string>();
        foreach (var metal in EnumWords.All<Fume>().Except(["lead", "tin"]))
        {
            foreach (var glaze in new[] { "mid-range-gloss", "mid-range-matte" })
            {
                foreach (var use in new[] { "food", "decorative", "" })
                {
                    foreach (var where in new[] { "inside", "both", "outside", "" }) cases.Add(metal, glaze, use, where);
                }
            }
        }

        return cases;
    }

    [Theory]
    [MemberData(nameof(Cases))]
    public void Sentence_and_verdict_agree(string metal, string glaze, string use, string where)
    {
        var piece = Loads.Piece("p", "mid-range-stoneware-light", use: use.Length == 0 ? null : use) with
        {
            Coats =
            [
                new(Loads.T("mid-range-gloss")),
                new(Loads.T(glaze), Contains: [Loads.T(metal)], Where: where.Length == 0 ? default : Loads.T(where)),
            ],
        };
        var answer = Loads.Check.Check(Loads.Load(Loads.Electric, Loads.Firing("glaze", "6", "oxidation"), piece));
        var reason = Assert.Single(answer.Pieces[0].Reasons, r => r.Rule == "metals-in-coats");
        var (touches, comesOut) = (use == "food" && where != "outside", ComingOut.Contains(metal) || glaze == "mid-range-matte");
        var (message, instead) = (reason.Message.ToString(), reason.Instead?.ToString());

        Assert.Equal(touches && comesOut ? ReasonSeverity.Review : ReasonSeverity.Note, reason.Severity);
        Assert.Equal(comesOut, message.Contains("comes out into food", StringComparison.Ordinal));
        Assert.Equal(!comesOut, message.Contains("glaze holds it", StringComparison.Ordinal));
        Assert.Equal(touches && comesOut, instead?.Contains("Keep it off", StringComparison.Ordinal) ?? false);
        Assert.Equal(touches, instead is not null);
    }
}
