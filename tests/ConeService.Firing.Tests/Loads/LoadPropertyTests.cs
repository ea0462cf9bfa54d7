using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Materials;
using ConeService.Firing.Tests.Support;
using CsCheck;

namespace ConeService.Firing.Tests.Loads;

/// <summary>What must hold of any load.</summary>
public sealed class LoadPropertyTests
{
    private const int Samples = 2000;

    private static readonly PotterScale Scale = new(Reference.Charts.Scale);

    public static TheoryData<string> Bodies => [.. Reference.Dataset.ClayBodies.Where(b => b.MatureConeBest is not null).Select(b => b.Id)];

    [Theory]
    [MemberData(nameof(Bodies))]
    public void A_piece_accepted_within_its_range_is_never_refused_for_being_warmer_within_it(string id)
    {
        var body = Reference.Dataset.ClayBodies.Single(b => b.Id == id);
        foreach (var atmosphere in body.Atmospheres.Select(EnumWords.Word))
        {
            foreach (var glaze in Reference.Dataset.Glazes.Where(g => g.Kind == CoatKind.Glaze).Select(g => g.Id).Prepend(""))
            {
                var coat = Reference.Dataset.Glazes.SingleOrDefault(g => g.Id == glaze);
                var from = Math.Max(Step(body.MatureConeMin!), coat is null ? 0 : Step(coat.ConeMin));
                var to = Math.Min(Step(body.MatureConeMax!), coat?.ConeMax is null ? 35 : Step(coat.ConeMax));
                var verdicts = Enumerable.Range(from, Math.Max(0, to - from + 1))
                    .Select(s => Judge(Scale.Whole[s].Text, atmosphere, id, glaze)).ToList();
                var first = verdicts.IndexOf(Verdict.Accept);
                if (first >= 0) Assert.DoesNotContain(Verdict.Refuse, verdicts.Skip(first));
            }
        }
    }

    [Theory]
    [MemberData(nameof(Bodies))]
    public void Above_its_best_cone_a_bare_body_only_gets_worse(string id)
    {
        var best = Step(Reference.Dataset.ClayBodies.Single(b => b.Id == id).MatureConeBest!);
        var verdicts = Scale.Whole.Skip(best).Select(c => (int)Judge(c.Text, "oxidation", id, "")).ToList();

        Assert.Equal(verdicts.Order(), verdicts);
    }

    [Fact]
    public void Adding_a_piece_never_improves_the_verdict_of_the_load() =>
        Gen.Select(LoadGen.Load, LoadGen.Piece).Sample((load, more) =>
        {
            var larger = load with { Pieces = LoadGen.Named([.. load.Pieces!.OfType<PieceRequest>(), more]) };
            return Loads.Check.Check(larger).Verdict >= Loads.Check.Check(load).Verdict;
        }, iter: Samples);

    [Fact]
    public void The_order_of_the_pieces_changes_nothing() =>
        Gen.Select(LoadGen.Load, Gen.Int).Sample((load, seed) =>
        {
            var shuffled = load.Pieces!.ToArray();
            new Random(seed).Shuffle(shuffled);
            Assert.Equal(Told(Loads.Check.Check(load)), Told(Loads.Check.Check(load with { Pieces = shuffled })));
        }, iter: Samples);

    [Fact]
    public void Every_piece_not_accepted_is_in_one_suggested_firing_that_accepts_it_or_named_as_fitting_none() =>
        LoadGen.Load.Sample(load =>
        {
            var answer = Loads.Check.Check(load);
            // Where fewer firings take the whole load, what was accepted moves too.
            var stays = answer.KeepsBooked || answer.SuggestedFirings.Count == 0;
            var left = answer.Pieces.Where(p => p.Verdict != Verdict.Accept || !stays).Select(p => p.Id);
            var told = answer.SuggestedFirings.SelectMany(f => f.PieceIds).Concat(answer.Unplaced.SelectMany(u => u.PieceIds));
            Assert.Equal(left.Order(StringComparer.Ordinal), told.Order(StringComparer.Ordinal));
            Assert.All(answer.Unplaced, u => Assert.NotEmpty(u.Reasons));
            Assert.All(answer.SuggestedFirings, f => Assert.Equal(Verdict.Accept, Again(load, f).Verdict));
        }, iter: Samples);

    [Fact]
    public void The_loads_drawn_hold_accepted_and_refused_pieces_several_suggestions_and_some_that_fit_none()
    {
        var drawn = new System.Collections.Concurrent.ConcurrentBag<LoadAnswer>();
        LoadGen.Load.Sample(load => drawn.Add(Loads.Check.Check(load)), iter: Samples);
        var answers = drawn.ToList();

        Assert.True(answers.Count(a => a.Pieces.Any(p => p.Verdict == Verdict.Accept)) > 100);
        Assert.True(answers.Count(a => a.SuggestedFirings.Count > 1) > 100);
        Assert.True(answers.Count(a => a.Unplaced.Count > 0) > 100);
        Assert.Contains(answers, a => a.SuggestedFirings.Any(f => f.PieceIds.Count > 2));
    }

    [Fact]
    public void What_is_accepted_stays_accepted_when_the_rest_is_taken_out() =>
        LoadGen.Load.Sample(load =>
        {
            var answer = Loads.Check.Check(load);
            var staying = answer.Pieces.Where(p => p.Verdict == Verdict.Accept).Select(p => p.Id).ToHashSet();
            var rest = load.Pieces!.Where(p => staying.Contains(p!.Id.Text!)).ToList();
            Assert.True(rest.Count == 0 || Loads.Check.Check(load with { Pieces = rest }).Verdict == Verdict.Accept);
        }, iter: Samples);

    /// <summary>The suggested firing as a load, in the kiln of the request or in one of those named.</summary>
    private static LoadAnswer Again(LoadRequest load, SuggestedFiring firing)
    {
        var kiln = firing.InThisKiln ? load.Kiln! : Loads.Kiln(EnumWords.Word(firing.KilnHeats[0]), "14", "oxidation;neutral;reduction");
        var pieces = load.Pieces!.Where(p => firing.PieceIds.Contains(p!.Id.Text!)).ToList();
        var booked = Loads.Firing(EnumWords.Word(firing.FiringKind), firing.Cone, EnumWords.Word(firing.Atmosphere));
        return Loads.Check.Check(new LoadRequest(kiln, booked, pieces));
    }

    private static string Told(LoadAnswer answer) => string.Join('\n',
        answer.Pieces.OrderBy(p => p.Id, StringComparer.Ordinal).Select(p => $"{p.Id} {p.Verdict} {Told(p.Reasons)}")
            .Append($"{answer.Verdict} {Told(answer.Load.Reasons)}")
            .Concat(answer.SuggestedFirings
                .Select(f => $"{f.FiringKind} {f.Cone} {f.Atmosphere} {f.InThisKiln} {Sorted(f.PieceIds)}").Order(StringComparer.Ordinal))
            .Concat(answer.Unplaced.SelectMany(u => u.PieceIds.Select(i => $"{i} {u.Message}")).Order(StringComparer.Ordinal)));

    private static string Told(IEnumerable<Reason> reasons) => string.Join(' ', reasons.Select(r => $"{r.Code} {r.Message}"));

    private static string Sorted(IEnumerable<string> ids) => string.Join(' ', ids.Order(StringComparer.Ordinal));

    private static Verdict Judge(string cone, string atmosphere, string body, string glaze) =>
        Loads.Check.Check(Loads.Load(
            Loads.Kiln("gas", "14", "oxidation;neutral;reduction"),
            Loads.Firing("glaze", cone, atmosphere),
            Loads.Piece("p", body, glaze, use: "decorative"))).Verdict;

    private static int Step(string cone) => Scale.Of(cone).Step;
}
