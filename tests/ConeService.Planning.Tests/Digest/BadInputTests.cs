using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Data;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Digest;

/// <summary>What can be wrong with a request: each alone with its pointer, then all at once.</summary>
public sealed class BadInputTests
{
    private static readonly PlanRequest Good = Studio.Request(Studio.Mug("a", 2), Studio.Mug("b", 2, bisqued: true));

    private static readonly Dictionary<string, (PlanRequest Request, string Finding)> Cases = new()
    {
        ["no kiln"] = (Good with { Kilns = [] }, "/kilns member-missing"),
        ["no kilns member"] = (Good with { Kilns = null }, "/kilns member-missing"),
        ["no piece"] = (Good with { Pieces = [] }, "/pieces member-missing"),
        ["no start in the horizon"] = (
            Good with { Kilns = [Studio.Kiln() with { Starts = ["2027-05-01T10:00", "2026-11-30T10:00"] }] }, "/kilns no-start-in-horizon"),
        ["due before ready"] = (
            Good with { Pieces = [Studio.Mug("a", 1, due: "2026-12-02T00:00") with { Ready = "2026-12-03T00:00" }] },
            "/pieces/0/due due-before-ready"),
        ["5,001 pieces"] = (Good with { Pieces = [Studio.Mug("a", 5000), Studio.Mug("b", 1)] }, "/pieces too-many-pieces"),
        ["26 weeks and an hour"] = (
            Good with { Horizon = new("2026-12-01T00:00", "2027-06-01T03:00") }, "/horizon/to horizon-too-long"),
        ["a horizon that ends before it begins"] =
            (Good with { Horizon = new("2026-12-02T00:00", "2026-12-01T00:00") }, "/horizon range-inverted"),
        ["overlapping pins"] = (
            Good with { Firings = [Pin("2026-12-02T08:00", "bisque", "06", "a"), Pin("2026-12-02T20:00", "glaze", "6", "b")] },
            "/firings/1 pins-overlap"),
        ["an unknown time zone"] = (Good with { TimeZone = "Europe/Atlantis" }, "/timeZone time-zone-unknown"),
        ["an hour that a change of clocks skips"] = (
            Good with { Kilns = [Studio.Kiln() with { Starts = ["2026-12-03T10:00", "2027-03-28T02:30"] }] },
            "/kilns/0/starts/1 start-in-skipped-hour"),
        ["a pin of a kiln that is not there"] = (
            Good with { Firings = [Pin("2026-12-02T08:00", "bisque", "06", "a") with { KilnId = "two" }] },
                "/firings/0/kilnId kiln-unknown"),
        ["a pin of a piece that is not there"] = (
            Good with { Firings = [Pin("2026-12-02T08:00", "bisque", "06", "nobody")] }, "/firings/0/pieces/0 piece-unknown"),
        ["a piece without size"] = (
            Good with { Pieces = [Studio.Mug("a", 1) with { Piece = Studio.Mug("a", 1).Piece! with { Size = null } }] },
            "/pieces/0/piece/size member-missing"),
        ["a kiln without interior"] = (
            Good with { Kilns = [Studio.Kiln() with { Kiln = Studio.Kiln().Kiln! with { Interior = null } }] },
            "/kilns/0/kiln/interior member-missing"),
        ["a time that the kiln is shut from a blank on"] = (
            Good with { Kilns = [Studio.Kiln() with { Closed = [new(" ", "2026-12-03T00:00")] }] },
            "/kilns/0/closed/0/from member-missing"),
        ["somebody there until a blank"] = (
            Good with { Staffed = [new("2026-12-01T09:00", "")] }, "/staffed/0/to member-missing"),
        ["a firing of a minute"] = (
            Good with
            {
                Kilns = [Studio.Kiln() with { Firings = [new("bisque", "06", "oxidation", Minutes: 1, KilowattHours: 60)] }],
            },
            "/kilns/0/firings/0/minutes number-out-of-range"),
        ["a filling factor of 7"] = (Good with { Kilns = [Studio.Kiln() with { FillingFactor = 7 }] },
            "/kilns/0/fillingFactor number-out-of-range"),
        ["a kiln lower than a shelf"] = (
            Good with { Kilns = [Studio.Kiln() with { Kiln = Studio.Kiln().Kiln! with { Interior = new(40, DiameterMillimetres: 600) } }] },
            "/kilns/0/kiln/interior/heightMillimetres number-out-of-range"),
    };

    public static TheoryData<string> Names => [.. Cases.Keys];

    [Theory]
    [MemberData(nameof(Names))]
    public void Each_is_told_where_it_stands(string name) => Assert.Equal([Cases[name].Finding], Studio.Findings(Cases[name].Request));

    [Fact]
    public void All_of_them_are_told_at_once()
    {
        var found = Studio.Findings(Good with
        {
            TimeZone = "Europe/Berlin",
            Horizon = new("2026-12-01T00:00", "2027-06-15T00:00"),
            Kilns = [Studio.Kiln() with { Starts = ["2027-03-28T02:30"], FillingFactor = 7 }, Studio.Kiln()],
            Pieces = [Studio.Mug("a", 1, due: "2026-12-02T00:00") with { Ready = "2026-12-03T00:00" }, Studio.Mug("a", 1), null],
            Firings = [Pin("2026-12-02T08:00", "bisque", "06", "nobody"), Pin("2026-12-02T08:00", "raku", "06", "a")],
            Objective = new(MinimumFillPercent: 101),
        });

        Assert.Subset(found.ToHashSet(), new HashSet<string>
        {
            "/horizon/to horizon-too-long", "/kilns/0/starts/0 start-in-skipped-hour", "/kilns/0/fillingFactor number-out-of-range",
            "/kilns/1/kiln/id kiln-id-repeated", "/pieces/0/due due-before-ready", "/pieces/1/piece/id piece-id-repeated",
            "/pieces/2/piece member-missing", "/objective/minimumFillPercent number-out-of-range",
        });
    }

    [Fact]
    public void A_size_larger_than_every_kiln_is_named_and_the_rest_is_planned()
    {
        var wide = Studio.Mug("wide", 1) with { Piece = Studio.Mug("wide", 1).Piece! with { Size = new(50, 541) } };
        var digested = Studio.Digest(Good with { Pieces = [wide, Studio.Mug("a", 2)] });

        Assert.Equal((true, null, 0), (digested.Pieces[0].TooBig, digested.Pieces[0].Item, digested.Pieces[0].Refused));
        Assert.NotNull(digested.Pieces[1].Item);
    }

    [Fact]
    public void A_piece_that_no_firing_accepts_is_named_with_the_reason_of_the_load_check_and_the_rest_is_planned()
    {
        // Celadon is for cone 8 to 12 in reduction; the kiln runs cone 06 and 6 in oxidation.
        var celadon = new PlanPiece(new PieceRequest(
            "plate", 2, "high-fire-porcelain", null, [new("celadon")], "bisqued", Size: new(30, 200), Use: "decorative"));
        var digested = Studio.Digest(Good with { Pieces = [celadon, Studio.Mug("a", 2)] });

        Assert.Equal((false, null, 0), (digested.Pieces[0].TooBig, digested.Pieces[0].Item, digested.Pieces[0].Refused));
        Assert.Contains(digested.Pieces[0].Reasons, r => r.Severity == ReasonSeverity.Refuse);
        Assert.NotNull(digested.Pieces[1].Item);
    }

    [Fact]
    public void A_pin_that_the_load_check_refuses_is_kept_with_a_warning()
    {
        var digested = Studio.Digest(Good with { Firings = [Pin("2026-12-02T08:00", "bisque", "06", "b")] });

        Assert.Single(digested.Problem.Pins);
        Assert.Equal([(PlanWarningCodes.PinNotAccepted, "/firings/0")], digested.Warnings.Select(w => (w.Code, w.Pointer)));
    }

    private static GivenFiring Pin(string start, string kind, string cone, string piece) =>
        new("one", start, kind, cone, "oxidation", false, [new(piece)]);
}
