using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Firing.Tests.Loads;

/// <summary>
/// Room over and around a piece. Load rules: clearance-to-lid 25 mm, clearance-to-elements 25 mm, clearance-to-kiln-wall 50 mm.
/// </summary>
public sealed class RoomTests
{
    // A kiln 400 mm high, 400 mm wide and 600 mm deep inside.
    private static readonly Interior Room = new(Loads.Number("400"), Loads.Number("400"), Loads.Number("600"));

    [Theory]
    // 400 − 25 = 375.
    [InlineData("375", Verdict.Accept)]
    [InlineData("376", Verdict.Review)]
    [InlineData("400", Verdict.Review)]
    [InlineData("401", Verdict.Refuse)]
    public void A_piece_needs_room_above_it(string height, Verdict expected)
    {
        var piece = Check("electric", height, "100", "100");

        Assert.Equal(expected, piece.Verdict);
        Assert.All(piece.Reasons, r => Assert.Equal((ReasonCode.TooTall, "clearance-to-lid"), (r.Code, r.Rule)));
    }

    [Theory]
    // Electric: 400 − 2 · 25 = 350 by 600 − 2 · 25 = 550, whichever way the piece is turned.
    [InlineData("electric", "350", "550", Verdict.Accept)]
    [InlineData("electric", "550", "350", Verdict.Accept)]
    [InlineData("electric", "351", "550", Verdict.Review)]
    [InlineData("electric", "350", "551", Verdict.Review)]
    [InlineData("electric", "400", "600", Verdict.Review)]
    [InlineData("electric", "401", "600", Verdict.Refuse)]
    [InlineData("electric", "400", "601", Verdict.Refuse)]
    // Round ware is as deep as it is wide.
    [InlineData("electric", "350", "", Verdict.Accept)]
    [InlineData("electric", "351", "", Verdict.Review)]
    [InlineData("electric", "401", "", Verdict.Refuse)]
    // A kiln with a flame: 400 − 2 · 50 = 300 by 500.
    [InlineData("gas", "300", "500", Verdict.Accept)]
    [InlineData("gas", "301", "500", Verdict.Review)]
    [InlineData("gas", "300", "501", Verdict.Review)]
    [InlineData("gas", "401", "500", Verdict.Refuse)]
    public void A_piece_needs_room_around_it(string heat, string width, string depth, Verdict expected)
    {
        var piece = Check(heat, "100", width, depth);

        Assert.Equal(expected, piece.Verdict);
        var rule = heat == "electric" ? "clearance-to-elements" : "clearance-to-kiln-wall";
        Assert.All(piece.Reasons, r => Assert.Equal((ReasonCode.TooTall, rule), (r.Code, r.Rule)));
    }

    [Fact]
    public void The_sentence_names_both_sides_and_what_must_stay_free()
    {
        var reason = Assert.Single(Check("gas", "100", "301", "520").Reasons);

        Assert.Equal(
            "The piece is 520 by 301 mm and the kiln 600 by 400 mm inside: with 50 mm free on each side it does not fit.",
            reason.Message.ToString());
    }

    private static PieceAnswer Check(string heat, string height, string width, string depth)
    {
        var size = new SizeRequest(Loads.Number(height), Loads.Number(width), Loads.Number(depth));
        var piece = Loads.Piece("p", "mid-range-stoneware-light", "mid-range-gloss", use: "decorative") with { Size = size };
        var kiln = Loads.Kiln(heat, "10", "oxidation", Room);
        return Loads.Check.Check(Loads.Load(kiln, Loads.Firing("glaze", "6", "oxidation"), piece)).Pieces[0];
    }
}
