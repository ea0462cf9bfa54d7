using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Loads;

/// <summary>
/// tests/Vectors/load-judgements.csv: what a technician says of marks, neighbours, earlier firings and metals, written down before
/// the check was asked.
/// </summary>
public sealed class JudgementTableTests
{
    internal static readonly IReadOnlyList<Dictionary<string, string>> Cases = CsvFile.Read("Vectors/load-judgements.csv");

    public static TheoryData<string> Ids => [.. Cases.Select(c => c["id"])];

    [Theory]
    [MemberData(nameof(Ids))]
    public void A_case_of_the_table_is_judged_as_written(string id)
    {
        var row = Cases.Single(c => c["id"] == id);
        var expected = row["codes"].Split(';', StringSplitOptions.RemoveEmptyEntries);
        var answer = Loads.Check.Check(Request(row));
        var piece = answer.Pieces[0];
        var told = piece.Reasons.Select(r => $"{EnumWords.Word(r.Code)}:{EnumWords.Word(r.Severity)} {r.Message} {r.Instead}").ToList();

        Assert.True(row["verdict"] == EnumWords.Word(piece.Verdict), $"{piece.Verdict}: {string.Join(" | ", told)}");
        Assert.Equal(expected.Where(c => !c.EndsWith(":note", StringComparison.Ordinal)).Order(StringComparer.Ordinal),
            piece.Reasons.Where(r => r.Severity > ReasonSeverity.Note).Select(r => EnumWords.Word(r.Code)).Distinct()
                .Order(StringComparer.Ordinal));
        Assert.All(expected.Where(c => c.EndsWith(":note", StringComparison.Ordinal)),
            c => Assert.Contains(told, t => t.StartsWith(c, StringComparison.Ordinal)));
        if (row["says"].Length > 0) Assert.Contains(told, t => t.Contains(row["says"], StringComparison.Ordinal));
        if (row["not_says"].Length > 0)
        {
            Assert.DoesNotContain(
                told.Concat(answer.Load.Reasons.Select(r => $"{r.Message} {r.Instead}")),
                t => t.Contains(row["not_says"], StringComparison.Ordinal));
        }
    }

    [Fact]
    public void The_table_names_every_source_and_holds_every_part()
    {
        Assert.True(Cases.Count >= 300);
        Assert.All(Cases, c => Assert.NotEmpty(c["source"]));
        Assert.Equal(["1", "2", "3", "4", "5", "6", "7", "8"], Cases.Select(c => c["item"]).Distinct().Order(StringComparer.Ordinal));
    }

    internal static LoadRequest Request(Dictionary<string, string> row)
    {
        var piece = PieceText.Piece("p", row["body"], row["coats"], row["state"], row["use"], row["earlier"], row["size_mm"]);
        var near = row["neighbours"].Split('|', StringSplitOptions.RemoveEmptyEntries)
            .Select((n, i) => PieceText.Piece($"n{i}", n.Split('/')[0], n.Split('/')[1], n.Split('/')[2], ""));
        return new(PieceText.Kiln(row["kiln"]), PieceText.Firing(row["firing"]), [piece, .. near]);
    }
}
