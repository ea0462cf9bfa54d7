using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Planning.Digest;
using ConeService.Planning.Requests;
using ConeService.Planning.Tests.Support;

namespace ConeService.Planning.Tests.Digest;

/// <summary>What is worked out before a search is bounded, counted in judgements and never in time.</summary>
public sealed class DigestBoundsTests
{
    [Fact]
    public void Too_many_different_pieces_are_told_with_their_number()
    {
        var finding = Refused(Studio.Request([.. Enumerable.Range(0, (PlanLimits.MostWares / 2) + 1).Select(i => Sized(i))]));
        Assert.Equal(("too-much-at-once", "/pieces", "5002"), (finding.Code, finding.Pointer, finding.Value));
    }

    // Those alike are judged once, however many there are.
    [Fact]
    public void Pieces_that_are_alike_are_not_counted_twice()
    {
        var digested = Studio.Digest(Studio.Request([.. Enumerable.Range(0, 3000).Select(i => Studio.Mug($"m{i}", 1))]));
        Assert.Equal(3000, Assert.Single(digested.Problem.Items).Count);
    }

    [Fact]
    public void Too_many_pairs_of_a_piece_and_a_firing_are_told()
    {
        var kilns = Enumerable.Range(0, 20).Select(i => Studio.Kiln($"k{i}") with
        {
            Firings = [.. Studio.Kiln().Firings!, new("glaze", "5", "oxidation", Minutes: 1300, KilowattHours: 80)],
        }).ToList();
        var finding = Refused(Studio.Request([.. Enumerable.Range(0, 1700).Select(i => Sized(i))]) with { Kilns = kilns });
        Assert.Equal(("too-much-at-once", "204000"), (finding.Code, finding.Value));
    }

    [Fact]
    public void Too_much_that_no_menu_accepts_is_told()
    {
        var finding = Refused(Studio.Request(
            [.. Enumerable.Range(0, PlanLimits.MostRefused + 1).Select(i => Sized(i) with { Then = null })
                .Select(p => p with
            {
                Piece = p.Piece! with { Body = "high-fire-porcelain", Coats = [new("celadon")], State = "bisqued" },
            })]));
        Assert.Equal(("too-much-at-once", "1001"), (finding.Code, finding.Value));
    }

    [Fact]
    public void Too_many_firings_without_hours_are_told()
    {
        var menu = Enumerable.Range(0, 11)
            .Select(i => new MenuFiring(i % 2 == 0 ? "bisque" : "glaze", i % 2 == 0 ? "06" : "6", "oxidation"));
        var kilns = Enumerable.Range(0, 20).Select(i => Studio.Kiln($"k{i}") with
        {
            Kiln = Studio.Kiln($"k{i}").Kiln! with { Interior = new(600 + i, DiameterMillimetres: 600) },
            Firings = [.. menu.Select((f, n) => f with { Cone = n % 2 == 0 ? Bisques[n / 2] : Glazes[n / 2] })],
        }).ToList();
        var finding = Refused(Studio.Request(Studio.Mug("a", 1)) with { Kilns = kilns });
        Assert.Equal(("too-much-at-once", "/kilns"), (finding.Code, finding.Pointer));
    }

    // Kilns of one description are judged once, whatever they are called.
    [Fact]
    public void Equal_kilns_cost_no_judgement_more()
    {
        long Judged(int kilns)
        {
            var acceptance = new Acceptance(Studio.Reference);
            for (var k = 0; k < kilns; k++)
            {
                var sent = Studio.Kiln($"k{k}");
                foreach (var firing in sent.Firings!)
                {
                    for (var i = 0; i < 10; i++) _ = acceptance.Of(sent.Kiln!, firing!, Ware.Of(Sized(i).Piece!));
                }
            }

            return acceptance.Judged;
        }

        Assert.Equal(20, Judged(1));
        Assert.Equal(20, Judged(5));
    }

    // The rules without sentences say what the load check says.
    [Fact]
    public void What_is_judged_quietly_is_what_the_load_check_answers()
    {
        var (acceptance, sent) = (new Acceptance(Studio.Reference), Studio.Kiln().Kiln!);
        var seen = new HashSet<Verdict>();
        foreach (var body in Studio.Reference.Dataset.ClayBodies.Select(b => b.Id))
        {
            foreach (var state in (string[])["leather-hard", "bone-dry", "bisqued", "glaze-fired"])
            {
                foreach (var (kind, cone) in ((string, string)[])[("bisque", "06"), ("glaze", "6"), ("glaze", "04")])
                {
                    var piece = new PieceRequest("a", default, body, null, [new("mid-range-gloss")], state, Size: new(100, 80));
                    var firing = new MenuFiring(kind, cone, "oxidation");
                    var answer = Studio.Reference.Loads.Check(new LoadRequest(sent, new(kind, cone, "oxidation"), [piece]));
                    Assert.Equal(answer.Pieces[0].Verdict, acceptance.Of(sent, firing, Ware.Of(piece)));
                    Assert.Equal(answer.Verdict, acceptance.Judge(sent, firing, Ware.Of(piece)));
                    seen.Add(answer.Verdict);
                }
            }
        }

        Assert.Contains(Verdict.Refuse, seen);
        Assert.Contains(Verdict.Accept, seen);
    }

    private static readonly string[] Bisques = ["06", "05", "04", "03", "07", "08"];
    private static readonly string[] Glazes = ["6", "5", "7", "4", "8"];

    private static PlanFinding Refused(PlanRequest request) =>
        Assert.Single(Assert.Throws<PlanRefusedException>(() => Studio.Digest(request)).Findings);

    private static PlanPiece Sized(int i)
    {
        var mug = Studio.Mug($"p{i}", 1);
        return mug with { Piece = mug.Piece! with { Size = new(50 + (i % 100), 50 + (i / 100)) } };
    }
}
