using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Firing.Tests.Loads;

/// <summary>What a kiln record says of its limits is weighed or told to be unread: its highest temperature and its shelves.</summary>
public sealed class KilnLimitTests
{
    private static readonly Interior Box = new(Loads.Number("450"), Loads.Number("450"), Loads.Number("450"));

    [Theory]
    // witness-self-supporting, cone 6: 1185 °C at 15, 1222 °C at 60 and 1243 °C at 150 °C an hour. The same number is lower in °F.
    [InlineData("1222", Verdict.Accept)]
    [InlineData("1221", Verdict.Review)]
    [InlineData("1200", Verdict.Review)]
    [InlineData("1185", Verdict.Review)]
    [InlineData("1184", Verdict.Refuse)]
    [InlineData("1000", Verdict.Refuse)]
    [InlineData("2300", Verdict.Accept)]
    public void A_highest_temperature_below_the_cone_in_either_unit_is_objected_to(string most, Verdict expected)
    {
        var answer = Check(Loads.Electric with { MaxTemperature = Loads.Number(most) }, Mug);

        Assert.Equal(expected, answer.Verdict);
        Assert.All(answer.Load.Reasons, r => Assert.Equal(ReasonCode.KilnCannotReachCone, r.Code));
        Assert.Contains(answer.Assumed, a => a.Field == "/kiln/maxTemperature");
        // mid-range-gloss goes from 5 to 7: this kiln may reach 5, at 1186 °C, or another must reach 6.
        if (expected != Verdict.Accept)
            Assert.Matches("to cone 5 in oxidation: |one that reaches cone 6: ", answer.Pieces[0].Instead!.ToString());
    }

    [Fact]
    public void A_highest_temperature_that_cannot_be_read_is_told_and_of_other_kilns_too()
    {
        var odd = Loads.Electric with { MaxTemperature = "hot" };
        var answer = Loads.Check.Check(Loads.Load(odd, Loads.Firing("glaze", "6", "oxidation"), Mug) with
        {
            Kilns = [Loads.Electric with { Id = "small", MaxTemperature = Loads.Number("1100") }],
        });

        Assert.Equal(Verdict.Accept, answer.Verdict);
        Assert.Contains(answer.Assumed, a => a is { Field: "/kiln/maxTemperature", Value: "not read" });
        Assert.Contains(answer.Assumed, a => a is { Field: "/kilns/0/maxTemperature", Value: "°C at most" });
        Assert.DoesNotContain(Check(Loads.Electric, Mug).Assumed, a => a.Field.EndsWith("maxTemperature", StringComparison.Ordinal));
    }

    [Fact]
    public void A_kiln_that_stays_below_the_cone_is_never_suggested()
    {
        var answer = Loads.Check.Check(Loads.Load(
            Loads.Electric with { Id = "cool", MaxTemperature = Loads.Number("1100") }, Loads.Firing("glaze", "04", "oxidation"), Mug) with
        {
            Kilns = [Loads.Electric with { Id = "hot", MaxTemperature = Loads.Number("1300") }],
        });

        Assert.Equal("hot", Assert.Single(answer.SuggestedFirings).KilnId);
        Assert.Contains("in the kiln hot", answer.Pieces[0].Instead!.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    // ware-stands-on-its-shelf: 25 mm over the edge on each side at most, and to be looked at from the first.
    [InlineData("300", "", "300", "glaze", Verdict.Accept)]
    [InlineData("300", "", "301", "glaze", Verdict.Review)]
    [InlineData("340", "", "345", "glaze", Verdict.Review)]
    [InlineData("300", "", "350", "glaze", Verdict.Review)]
    [InlineData("300", "", "351", "glaze", Verdict.Refuse)]
    [InlineData("300", "", "390", "glaze", Verdict.Refuse)]
    // In a bisque it may stand on edge.
    [InlineData("300", "", "390", "bisque", Verdict.Review)]
    // A tile of 240 by 240 mm is 339 mm across its corners.
    [InlineData("340", "240", "240", "glaze", Verdict.Accept)]
    [InlineData("330", "240", "240", "glaze", Verdict.Review)]
    [InlineData("280", "240", "240", "glaze", Verdict.Refuse)]
    public void A_piece_stands_on_a_round_shelf(string shelf, string depth, string width, string kind, Verdict expected)
    {
        var piece = Mug with
        {
            State = kind == "bisque" ? "bone-dry" : "bisqued",
            Coats = kind == "bisque" ? [] : Mug.Coats,
            Size = new SizeRequest(Loads.Number("30"), Loads.Number(width), Loads.Number(depth)),
        };
        var answer = Loads.Check.Check(Loads.Load(
            Shelved(new KilnShelves(DiameterMillimetres: Loads.Number(shelf))),
            Loads.Firing(kind, kind == "bisque" ? "06" : "6", "oxidation"), piece));

        Assert.Equal(expected, answer.Verdict);
        Assert.All(
            answer.Pieces[0].Reasons.Where(r => r.Severity > ReasonSeverity.Note),
            r => Assert.Equal((ReasonCode.TooTall, "ware-stands-on-its-shelf"), (r.Code, r.Rule)));
        if (expected == Verdict.Refuse)
            Assert.Contains("in a larger kiln", answer.Pieces[0].Instead!.ToString(), StringComparison.Ordinal);
    }

    [Theory]
    // Two of 200 by 400 mm side by side are 400 by 400 mm; one is 200 by 400 mm, whichever way the piece is turned.
    [InlineData("2", "390", "390", Verdict.Accept)]
    [InlineData("1", "390", "190", Verdict.Accept)]
    [InlineData("1", "190", "390", Verdict.Accept)]
    [InlineData("1", "240", "240", Verdict.Review)]
    [InlineData("1", "260", "260", Verdict.Refuse)]
    public void A_piece_stands_on_a_rectangular_shelf(string beside, string width, string depth, Verdict expected)
    {
        var piece = Mug with { Size = new SizeRequest(Loads.Number("30"), Loads.Number(width), Loads.Number(depth)) };
        var shelves = new KilnShelves(
            PerLayer: Loads.Number(beside), WidthMillimetres: Loads.Number("200"), DepthMillimetres: Loads.Number("400"));

        Assert.Equal(expected, Check(Shelved(shelves), piece).Verdict);
    }

    private static PieceRequest Mug => Loads.Piece("mug", "mid-range-stoneware-light", "mid-range-gloss", "bisqued", "decorative");

    private static Kiln Shelved(KilnShelves shelves) => Loads.Electric with { Interior = Box, Shelves = shelves };

    private static LoadAnswer Check(Kiln kiln, PieceRequest piece) =>
        Loads.Check.Check(Loads.Load(kiln, Loads.Firing("glaze", "6", "oxidation"), piece));
}
