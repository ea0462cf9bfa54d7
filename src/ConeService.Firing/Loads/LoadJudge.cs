using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Loads.Rules;

namespace ConeService.Firing.Loads;

/// <summary>Judges what holds for the load as a whole, and what pieces do to each other.</summary>
internal static class LoadJudge
{
    /// <summary>Ids of the load rules that reasons of a load rest on, beside those of its kiln.</summary>
    public static IReadOnlyList<string> RestsOn { get; } =
        [LoadRuleIds.SuspectTheZero, LoadRuleIds.GlazesShareCone, LoadRuleIds.ChromeAndTin, LoadRuleIds.CopperInReduction];

    /// <summary>The reasons of the load; those of neighbours are added to their pieces.</summary>
    public static IReadOnlyList<Reason> Judge(LoadTables tables, PieceJudge judge, Load load, IReadOnlyList<PieceClass> classes)
    {
        var judgement = new Judgement(tables, quiet: false);
        MixUp(judge, load, classes, judgement);
        KilnRule.Judge(tables, load.Kiln, load.Firing, judgement);
        if (load.Firing.MeltsGlazes)
        {
            // What is refused anyway does not go in and harms nobody.
            var going = classes.Where(c => c.Verdict != Verdict.Refuse).ToList();
            GlazeCones(tables, load, going, judgement);
            FumeJudge.Judge(tables, load, going, Fume.Chrome, LoadRuleIds.ChromeAndTin, judgement);
            FumeJudge.Judge(tables, load, going, Fume.Copper, LoadRuleIds.CopperInReduction, judgement);
        }

        return judgement.Reasons;
    }

    private static void MixUp(PieceJudge judge, Load load, IReadOnlyList<PieceClass> classes, Judgement judgement)
    {
        var failing = classes
            .Where(c => c.Reasons.Any(r => r.Severity > ReasonSeverity.Note && Judgement.IsOfCone(r.Code)))
            .ToList();
        if (failing.Count == 0 || !failing.All(c => judge.FitsOtherCone(c.First, load.Kiln, load.Firing))) return;
        // Ware that is right at this cone speaks against a slip in the firing.
        if (classes.Except(failing).Any(c => !judge.FitsOtherCone(c.First, load.Kiln, load.Firing))) return;
        var worst = failing.SelectMany(c => c.Reasons)
            .Where(r => r.Code == ReasonCode.ConeZeroMixUp)
            .Select(r => r.Severity).DefaultIfEmpty().Max();
        var (cone, other) = (load.Firing.Cone.Text, load.Firing.Cone.MixUp!.Text);
        judgement.Find(ReasonCode.ConeZeroMixUp, worst)?.Because(LoadRuleIds.SuspectTheZero, null,
            Message.Of("loads.cone-mix-up-of-load", ("cone", cone), ("pieces", failing.Sum(c => c.Members.Count)), ("other", other)),
            Message.Of("loads.correct-firing-and-check-again", ("other", other)));
    }

    private static void GlazeCones(LoadTables tables, Load load, List<PieceClass> going, Judgement judgement)
    {
        var bests = going
            .Where(c => Neighbours.BestStep(c.First) is not null)
            .Select(c => (Class: c, Step: Neighbours.BestStep(c.First)!.Value))
            .ToList();
        var counted = bests.GroupBy(x => x.Step).Select(g => (g.Key, g.Sum(x => x.Class.Members.Count))).ToList();
        if (Neighbours.Window(counted, load.Firing.Cone) is not { } window) return;
        var cones = tables.PotterScale.Whole;
        var upper = Math.Min(window + Neighbours.ConesApart, cones.Count - 1);
        foreach (var (c, step) in bests.Where(x => !Neighbours.InWindow(x.Step, window)))
        {
            c.Add(Judgement.Reason(tables, ReasonCode.GlazeConesApart, ReasonSeverity.Review, LoadRuleIds.GlazesShareCone, null,
                Message.Of(
                    "loads.glaze-cone-apart",
                    ("best", cones[step].Text), ("min", cones[window].Text), ("max", cones[upper].Text)),
                Message.Of("loads.fire-with-glazes-for", ("best", cones[step].Text))));
        }

        judgement.Find(ReasonCode.GlazeConesApart, ReasonSeverity.Review)?.Because(LoadRuleIds.GlazesShareCone, null,
            Message.Of(
                "loads.glaze-cones-apart-in-load",
                ("min", cones[bests.Min(b => b.Step)].Text), ("max", cones[bests.Max(b => b.Step)].Text)),
            Message.Of("loads.split-by-glaze"));
    }
}
