using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Planning.Digest;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Digest;

/// <summary>Requests made into problems by the load check and the fit.</summary>
public sealed class DigestTests
{
    [Fact]
    public void A_mug_gets_its_bisque_and_its_glaze_firing()
    {
        var digested = Studio.Digest(Studio.Request(Studio.Mug("a", 3), Studio.Mug("b", 4), Studio.Mug("c", 2, bisqued: true)));
        var problem = digested.Problem;

        // Those alike are one item.
        Assert.Equal([7, 2], problem.Items.Select(i => i.Count));
        Assert.Equal([2, 1], problem.Items.Select(i => i.StageCount));
        Assert.Equal(14 * 1440, problem.Horizon);
        var types = problem.Kilns[0].Types;
        Assert.Equal([(0, "100"), (1, "011")], types.Select(t => (t.Menu, string.Concat(t.Takes.Select(x => x ? '1' : '0')))));
        // 100 mm and 6 mm above; a disc of 86 mm, 0.70 of one of 540 mm: 3.63 %, so many alike as 27.
        Assert.Equal((106, 10_000 / 27), (problem.Kilns[0].Slots[1].Height, problem.Kilns[0].Slots[1].Share));
    }

    [Fact]
    public void Copper_red_and_a_white_beside_it_are_kept_apart()
    {
        Assert.Equal([[0, 1], [0, 2]], Companies.Of(3, (i, j) => i + j != 3));
        Assert.Equal([[0, 1, 2]], Companies.Of(3, (_, _) => true));
    }

    [Fact]
    public void Hours_that_are_left_out_are_those_of_the_fit()
    {
        var kiln = Studio.Kiln() with { Firings = [new("bisque", "06", "oxidation"), new("glaze", "6", "oxidation")] };
        var digested = Studio.Digest(Studio.Request(Studio.Mug("a", 3)) with { Kilns = [kiln] });

        Assert.Equal(["bisque-mixed-ware", "mid-range-glaze"], digested.Kilns[0].Programmes.Select(m => m.Hours.Schedule));
        Assert.All(digested.Kilns[0].Programmes, m => Assert.InRange(m.Hours.Minutes, 10 * 60, 48 * 60));
        Assert.Contains(digested.Assumed, a => a.Pointer == "/kilns/0/firings/0/minutes");
    }

    [Fact]
    public void What_no_firing_accepts_is_named_with_the_reason_and_the_rest_is_planned()
    {
        var high = Studio.Mug("high", 1) with
        {
            Piece = new PieceRequest(
                "high", 1, "high-fire-porcelain", null, [new("celadon")], "bisqued", Size: new(100, 80), Use: "decorative"),
            Then = null,
        };
        var huge = Studio.Mug("huge", 1) with { Piece = Studio.Mug("huge", 1).Piece! with { Size = new(590, 80) } };
        var digested = Studio.Digest(Studio.Request(high, Studio.Mug("a", 1), huge));

        Assert.NotEmpty(digested.Pieces[0].Reasons);
        Assert.Equal((0, null), (digested.Pieces[0].Refused, digested.Pieces[0].Item));
        Assert.Null(digested.Pieces[1].Refused);
        Assert.Null(digested.Pieces[2].Item);
    }

    [Fact]
    public void All_that_is_wrong_is_told_at_once()
    {
        var late = Studio.Mug("a", 1, due: "2026-12-02T00:00") with { Ready = "2026-12-03T00:00" };
        var unknown = Studio.Mug("b", 1);
        var request = Studio.Request(late, unknown with { Piece = unknown.Piece! with { Body = "no-such-clay", Size = null } });
        request = request with
        {
            TimeZone = "Europe/Berlin",
            Kilns = [Studio.Kiln() with { Starts = ["2027-03-28T02:30", "2027-05-01T10:00"] }, Studio.Kiln()],
            Firings = [new("nobody", "2026-12-02T08:00", "glaze", "6", "oxidation")],
        };

        var found = Studio.Findings(request);

        Assert.Contains("/pieces/0/due due-before-ready", found);
        Assert.Contains("/pieces/1/piece/size member-missing", found);
        Assert.Contains("/kilns/0/starts/0 start-in-skipped-hour", found);
        Assert.Contains("/kilns/1/kiln/id kiln-id-repeated", found);
        Assert.Contains("/firings/0/kilnId kiln-unknown", found);
    }

    [Theory]
    [InlineData("Atlantis/Centre", "2026-12-15T00:00", "/timeZone time-zone-unknown")]
    [InlineData("Europe/Berlin", "2026-11-15T00:00", "/horizon range-inverted")]
    [InlineData("Europe/Berlin", "2027-06-15T00:00", "/horizon/to horizon-too-long")]
    public void A_horizon_must_be_one(string zone, string to, string expected) => Assert.Contains(
        expected, Studio.Findings(Studio.Request(Studio.Mug("a", 1)) with { TimeZone = zone, Horizon = new("2026-12-01T00:00", to) }));

    [Fact]
    public void Kilns_starts_and_five_thousand_pieces_at_most()
    {
        Assert.Contains("/kilns member-missing", Studio.Findings(Studio.Request(Studio.Mug("a", 1)) with { Kilns = [] }));
        Assert.Contains("/kilns no-start-in-horizon", Studio.Findings(
            Studio.Request(Studio.Mug("a", 1)) with { Kilns = [Studio.Kiln() with { Starts = ["2027-05-01T10:00"] }] }));
        Assert.Contains("/pieces too-many-pieces", Studio.Findings(Studio.Request(Studio.Mug("a", 5000), Studio.Mug("b", 1))));
    }

    [Fact]
    public void Pins_that_overlap_are_refused_and_one_that_is_not_accepted_is_kept_with_a_warning()
    {
        var request = Studio.Request(Studio.Mug("a", 2), Studio.Mug("b", 2, bisqued: true));
        GivenFiring Pin(string start, string kind, string cone, string piece) => new(
            "one", start, kind, cone, "oxidation", false, [new(piece)]);

        Assert.Contains("/firings/1 pins-overlap", Studio.Findings(request with
        {
            Firings = [Pin("2026-12-02T08:00", "bisque", "06", "a"), Pin("2026-12-02T20:00", "glaze", "6", "b")],
        }));
        var kept = Studio.Digest(request with { Firings = [Pin("2026-12-02T08:00", "bisque", "06", "b")] });
        Assert.Single(kept.Problem.Pins);
        Assert.Equal([PlanWarningCodes.PinNotAccepted], kept.Warnings.Select(w => w.Code));
    }
}
