using System.Reflection;
using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Loads;
using ConeService.Firing.Loads.Reading;
using ConeService.Firing.Loads.Rules;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Loads;

/// <summary>Each rule says truly which load rules it rests on, since a package is asked for just those.</summary>
public sealed class LoadRuleTests
{
    private static readonly LoadTables Tables = new(Reference.Charts);

    private static IEnumerable<LoadRequest> Requests =>
        DecisionTableTests.Cases.Select(DecisionTableTests.Request).Concat(JudgementTableTests.Cases.Select(JudgementTableTests.Request));

    [Fact]
    public void Every_reason_rests_on_a_load_rule_that_its_rule_names_and_that_knows_its_code()
    {
        foreach (var request in Requests)
        {
            var load = LoadReader.Read(Tables, request);
            foreach (var rule in PieceJudge.Rules)
            {
                var judgement = new Judgement(Tables, load.Firing, load.Pieces[0]);
                rule.Judge(new PieceCase(Tables, load.Kiln, load.Firing, load.Pieces[0]), judgement);
                Assert.All(judgement.Reasons, r =>
                {
                    Assert.Contains(r.Rule, rule.RestsOn);
                    Assert.Contains(r.Code, Tables.Rule(r.Rule).ReasonCodes);
                });
            }
        }
    }

    [Fact]
    public void Every_load_rule_that_code_names_is_one_that_some_rule_rests_on()
    {
        var named = typeof(LoadRuleIds).GetFields(BindingFlags.Public | BindingFlags.Static).Select(f => (string)f.GetRawConstantValue()!);

        Assert.Empty(named.Except(PieceJudge.RestsOn(Reference.Dataset)).Except(LoadJudge.RestsOn)
            .Except(LoadJudge.RestsOnLater(Reference.Dataset))
            .Except(LoadRoom.RestsOn(Reference.Dataset)));
    }

    [Theory]
    [InlineData("1.3.0", false)]
    [InlineData("1.4.0", true)]
    public void A_rule_is_not_asked_of_a_package_that_was_written_before_it(string version, bool asked)
    {
        var archive = Path.Combine(
            Repository.Root, "releases", $"cone-service-data-{version}.zip");

        Assert.Equal(asked ? 1 : 0, PieceJudge.Applying(DatasetLoader.LoadPath(archive), [new LaterRule()]).Length);
    }

    [Fact]
    public void Every_rule_on_a_piece_is_asked()
    {
        var written = typeof(IPieceRule).Assembly.GetTypes().Where(t => t.IsClass && t.IsAssignableTo(typeof(IPieceRule)));

        Assert.Equal(written.Select(t => t.Name).Order(StringComparer.Ordinal),
            PieceJudge.Rules.Select(r => r.GetType().Name).Order(StringComparer.Ordinal));
    }

    [Fact]
    public void A_quiet_judgement_weighs_the_same_and_says_nothing()
    {
        foreach (var request in Requests)
        {
            var load = LoadReader.Read(Tables, request);
            var c = new PieceCase(Tables, load.Kiln, load.Firing, load.Pieces[0]);
            var (quiet, told) = (new Judgement(Tables), new Judgement(Tables, load.Firing, load.Pieces[0]));
            foreach (var rule in PieceJudge.Rules)
            {
                rule.Judge(c, quiet);
                rule.Judge(c, told);
            }

            Assert.Equal((told.Worst, told.WorstOfCone), (quiet.Worst, quiet.WorstOfCone));
            Assert.Equal(told.Reasons.Select(r => r.Severity).DefaultIfEmpty().Max(), told.Worst);
            Assert.Empty(quiet.Reasons);
        }
    }

    private sealed class LaterRule : IPieceRule
    {
        public IReadOnlyList<string> RestsOn { get; } = [];

        public Version Since { get; } = new(1, 4);

        public void Judge(PieceCase c, Judgement judgement) => throw new InvalidOperationException("Nobody asks here.");
    }
}
