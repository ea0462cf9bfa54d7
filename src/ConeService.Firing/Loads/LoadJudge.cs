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
        [LoadRuleIds.SuspectTheZero, LoadRuleIds.HarderGlazesHotter, LoadRuleIds.ChromeAndTin, LoadRuleIds.CopperInReduction];

    /// <summary>Those that came later.</summary>
    public static IReadOnlyList<string> RestsOnLater(Dataset dataset) =>
        PieceJudge.VersionOf(dataset) >= new Version(1, 7) ? [LoadRuleIds.FoodWareAndFume, LoadRuleIds.ConesOfKind] : [];

    /// <summary>The reasons of the load; those of neighbours are added to their pieces.</summary>
    public static IReadOnlyList<Reason> Judge(LoadTables tables, PieceJudge judge, Load load, IReadOnlyList<PieceClass> classes)
    {
        var judgement = new Judgement(tables, load.Firing, piece: null);
        MixUp(judge, load, classes, judgement);
        if (tables.FindRule(LoadRuleIds.ConesOfKind) is not null) ConesOfKind(load.Firing, judgement);
        KilnRule.Judge(tables, load.Kiln, load.Firing, judgement);
        LoadRoom.Judge(tables, load, classes, judgement);
        if (load.Firing.MeltsGlazes)
        {
            // What is refused anyway does not go in and harms nobody.
            var going = classes.Where(c => c.Verdict != Verdict.Refuse).ToList();
            GlazeCones(tables, load, going, judgement);
            FumeJudge.Judge(tables, load, going, Fume.Chrome, LoadRuleIds.ChromeAndTin, judgement);
            FumeJudge.Judge(tables, load, going, Fume.Copper, LoadRuleIds.CopperInReduction, judgement);
            if (tables.FindRule(LoadRuleIds.FoodWareAndFume) is not null)
            {
                foreach (var fume in Neighbours.Poisonous.Items()) PoisonJudge.Judge(tables, load, going, fume, judgement);
            }
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
        var right = classes.Except(failing).Where(c => !judge.FitsOtherCone(c.First, load.Kiln, load.Firing)).ToList();
        if (right.Count > 0)
        {
            if (right.Count == classes.Count - failing.Count) WareOfOtherCone(load, failing);
            return;
        }

        var worst = failing.SelectMany(c => c.Reasons)
            .Where(r => r.Code == ReasonCode.ConeZeroMixUp)
            .Select(r => r.Severity).DefaultIfEmpty().Max();
        var (cone, other) = (load.Firing.Cone.Text, load.Firing.Cone.MixUp!.Text);
        judgement.Find(ReasonCode.ConeZeroMixUp, worst)?.Because(LoadRuleIds.SuspectTheZero, null,
            Message.Of("loads.cone-mix-up-of-load", ("cone", cone), ("pieces", failing.Sum(c => c.Members.Count)), ("other", other)),
            Message.Of("loads.correct-firing-and-check-again", ("other", other)));
    }

    // Ware that nothing stands against at such a cone, bare clay above all, would hear no word of it: salt hardly glazes at 03.
    private static void ConesOfKind(PlannedFiring firing, Judgement judgement)
    {
        if (judgement.Codes.Has(ReasonCode.ConeZeroMixUp) || firing.Needs.Holds(firing.Cone)) return;
        var (needs, other) = (firing.Needs, firing.Cone.MixUp is { } twin && firing.Needs.Holds(twin) ? twin.Text : null);
        judgement.Find(ReasonCode.ConeZeroMixUp, ReasonSeverity.Note)?.Because(LoadRuleIds.ConesOfKind, null,
            Message.Of(
                "loads.cone-not-of-kind",
                ("kind", needs.Kind), ("firing", needs.Name), ("min", needs.Min.Text), ("max", needs.Max.Text),
                ("cone", firing.Cone.Text)),
            other is null ? null : Message.Of("loads.correct-firing-and-check-again", ("other", other)));
    }

    // Where all neighbours are right it is not the firing that is to be asked about.
    private static void WareOfOtherCone(Load load, List<PieceClass> failing)
    {
        var (cone, other) = (load.Firing.Cone.Text, load.Firing.Cone.MixUp!.Text);
        foreach (var c in failing)
        {
            c.RetellMixUp(
                Message.Of("loads.ware-of-other-cone", ("cone", cone), ("other", other)),
                Message.Of("loads.book-other-cone", ("other", other)));
        }
    }

    // A word to whoever loads: each glaze holds the cone, and which is best where is a matter of places in the kiln.
    private static void GlazeCones(LoadTables tables, Load load, List<PieceClass> going, Judgement judgement)
    {
        int? min = null, max = null;
        foreach (var c in going)
        {
            if (Neighbours.BestStep(c.First) is not { } step) continue;
            (min, max) = (Math.Min(min ?? step, step), Math.Max(max ?? step, step));
        }

        if (min is not { } from || max is not { } to || to - from <= Neighbours.ConesApart) return;
        var cones = tables.PotterScale.Whole;
        judgement.Find(ReasonCode.GlazeConesApart, ReasonSeverity.Note)?.Because(LoadRuleIds.HarderGlazesHotter, null,
            Message.Of(
                "loads.harder-glazes-hotter", ("min", cones[from].Text), ("max", cones[to].Text), ("cone", load.Firing.Cone.Text)),
            Message.Of("loads.harder-into-hotter-places"));
    }
}
