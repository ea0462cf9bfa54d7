using ConeService.Contract.Loads;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Loads;

/// <summary>
/// tests/Vectors/studio-loads.csv: ordinary loads as studios fire them unread, with a few pieces among them that must not go in.
/// Whoever fires stops reading a check that stops ordinary ware; one that lets bad ware in costs a shelf.
/// </summary>
public sealed class StudioLoadTests(ITestOutputHelper output)
{
    private const double MostFalseReviews = 0.02;

    private static readonly IReadOnlyList<Dictionary<string, string>> Pieces = CsvFile.Read("Vectors/studio-loads.csv");

    [Fact]
    public void Ordinary_ware_goes_in_unread_and_bad_ware_never_does()
    {
        var (good, stopped, bad, let) = (0, new List<string>(), 0, new List<string>());
        foreach (var load in Pieces.GroupBy(p => p["load"]))
        {
            var first = load.First();
            var answer = Loads.Check.Check(new LoadRequest(
                PieceText.Kiln(first["kiln"]), PieceText.Firing(first["firing"]),
                [.. load.Select(p => PieceText.Piece(p["piece"], p["body"], p["coats"], p["state"], p["use"], p["earlier"]))]));
            foreach (var (piece, judged) in load.Zip(answer.Pieces))
            {
                var accepted = judged.Verdict == Verdict.Accept;
                var told = $"{load.Key} {first["firing"]} {piece["body"]} {piece["coats"]} {piece["state"]} {piece["use"]}: "
                    + string.Join(' ', judged.Reasons.Select(r => r.Message));
                if (piece["verdict"] == "accept")
                {
                    good++;
                    if (!accepted) stopped.Add(told);
                }
                else
                {
                    bad++;
                    if (accepted) let.Add(told);
                }
            }
        }

        output.WriteLine($"{Pieces.Select(p => p["load"]).Distinct().Count()} loads; {good} good pieces, {stopped.Count} stopped; "
            + $"{bad} bad pieces, {let.Count} let in.");
        foreach (var line in stopped.Concat(let)) output.WriteLine(line);
        Assert.True(good >= 1000 && bad >= 100, $"{good} good, {bad} bad");
        Assert.Empty(let);
        Assert.True(stopped.Count <= MostFalseReviews * good, $"{stopped.Count} of {good} stopped");
    }

    [Fact]
    public void The_loads_are_many_and_name_their_sources()
    {
        Assert.True(Pieces.Select(p => p["load"]).Distinct().Count() >= 40);
        Assert.All(Pieces, p => Assert.NotEmpty(p["source"]));
    }
}
