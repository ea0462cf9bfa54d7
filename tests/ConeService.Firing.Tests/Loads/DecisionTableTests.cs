using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Loads;

/// <summary>tests/Vectors/load-decisions.csv: what a kiln master would say, worked out from the tables by hand.</summary>
public sealed class DecisionTableTests
{
    internal static readonly IReadOnlyList<Dictionary<string, string>> Cases = CsvFile.Read("Vectors/load-decisions.csv");

    public static TheoryData<string> Ids => [.. Cases.Select(c => c["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_case_of_the_decision_table_is_judged_as_written(string id)
    {
        var row = Cases.Single(c => c["id"] == id);
        var expected = row["codes"].Split(';', StringSplitOptions.RemoveEmptyEntries);
        var piece = Loads.Check.Check(Request(row)).Pieces[0];

        Assert.Equal(row["verdict"], EnumWords.Word(piece.Verdict));
        Assert.Equal(expected.Where(c => !c.EndsWith(":note", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
            piece.Reasons.Where(r => r.Severity > ReasonSeverity.Note).Select(r => EnumWords.Word(r.Code)).Distinct()
                .Order(StringComparer.Ordinal));
        Assert.Subset(
            piece.Reasons.Select(r => EnumWords.Word(r.Code) + ":" + EnumWords.Word(r.Severity)).ToHashSet(),
            expected.Where(c => c.EndsWith(":note", StringComparison.Ordinal)).ToHashSet());
        if (row["says"].Length > 0)
            Assert.Contains(piece.Reasons, r => $"{r.Message} {r.Instead}".Contains(row["says"], StringComparison.Ordinal));
        if (expected.Contains("cone-zero-mix-up")) Assert.Equal(ReasonCode.ConeZeroMixUp, piece.Reasons[0].Code);
    }

    [Fact]
    public void The_table_names_every_source_and_is_long_enough()
    {
        Assert.True(Cases.Count >= 150);
        Assert.All(Cases, c => Assert.NotEmpty(c["source"]));
    }

    [Fact]
    public void The_table_holds_every_reason_that_a_piece_alone_can_get()
    {
        // Two are of the load as a whole: NeighbourTests and RoomTests hold them. What coats hold, and what neighbours do, stands in the
        // table of judgements.
        ReasonCode[] ofNeighbours = [ReasonCode.GlazeConesApart, ReasonCode.LoadTooLarge];
        var held = Cases.Concat(JudgementTableTests.Cases).SelectMany(c => c["codes"].Split(';', StringSplitOptions.RemoveEmptyEntries))
            .Select(c => c.Split(':')[0]).ToHashSet();

        Assert.Equal(
            EnumWords.All<ReasonCode>().Except(ofNeighbours.Select(EnumWords.Word)).Order(StringComparer.Ordinal),
            held.Order(StringComparer.Ordinal));
    }

    [Fact]
    public void The_table_holds_every_kiln_heat_kind_atmosphere_and_state()
    {
        Assert.Equal(EnumWords.All<KilnHeat>().ToHashSet(), Cases.Select(c => c["kiln_heat"]).ToHashSet());
        Assert.Equal(EnumWords.All<FiringKind>().ToHashSet(), Cases.Select(c => c["kind"]).ToHashSet());
        Assert.Equal(EnumWords.All(Atmospheres.OfFirings).ToHashSet(), Cases.Select(c => c["atmosphere"]).ToHashSet());
        Assert.Equal(EnumWords.All<PieceState>().ToHashSet(), Cases.Select(c => c["state"]).ToHashSet());
    }

    [Fact]
    public void The_table_holds_every_clay_body_and_every_coat()
    {
        var coats = Cases.SelectMany(c => c["coats"].Split(';')).ToHashSet();
        Assert.Subset(Cases.Select(c => c["body"]).ToHashSet(), Reference.Dataset.ClayBodies.Select(b => b.Id).ToHashSet());
        Assert.Subset(coats, Reference.Dataset.Glazes.Select(g => g.Id).ToHashSet());
    }

    internal static LoadRequest Request(Dictionary<string, string> row)
    {
        var room = row["room_height_mm"].Length == 0 ? null : new Interior(Loads.Number(row["room_height_mm"]));
        var kiln = Loads.Kiln(row["kiln_heat"], row["kiln_max_cone"], row["kiln_atmospheres"], room);
        var piece = Loads.Piece("p", row["body"], row["coats"], row["state"], row["use"].Length == 0 ? null : row["use"]) with
        {
            ThickestMillimetres = Loads.Number(row["thickness_mm"]),
            Size = row["height_mm"].Length == 0 ? null : new SizeRequest(Loads.Number(row["height_mm"])),
        };
        return Loads.Load(kiln, Loads.Firing(row["kind"], row["cone"], row["atmosphere"]), piece);
    }
}
