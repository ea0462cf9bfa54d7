using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Loads.Rules;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Judges what holds for the load as a whole, and what pieces do to each other.</summary>
internal static class LoadJudge
{
    private const int NamesInASentence = 3;

    /// <summary>The reasons of the load; those of neighbours are added to their pieces.</summary>
    public static IReadOnlyList<Reason> Judge(LoadBook book, PieceJudge judge, Load load, IReadOnlyList<PieceClass> classes)
    {
        var sink = new ReasonSink(book, quiet: false);
        MixUp(judge, load, classes, sink);
        KilnRule.Judge(book, load.Kiln, load.Firing, sink);
        if (load.Firing.MeltsGlazes)
        {
            // What is refused anyway does not go in and harms nobody.
            var going = classes.Where(c => c.Verdict != Verdict.Refuse).ToList();
            GlazeCones(book, load, going, sink);
            Fumes(book, load, going, Fume.Chrome, LoadRuleIds.ChromeAndTin, "chrome, whose vapour flashes pink on tin-white glazes", sink);
            Fumes(book, load, going, Fume.Copper, LoadRuleIds.CopperInReduction, "copper, whose vapour leaves a pink blush on light glazes in reduction", sink);
        }

        return sink.Reasons;
    }

    private static void MixUp(PieceJudge judge, Load load, IReadOnlyList<PieceClass> classes, ReasonSink sink)
    {
        var failing = classes.Where(c => c.Reasons.Any(r => r.Severity > ReasonSeverity.Note && IsOfCone(r.Code))).ToList();
        if (failing.Count == 0 || !failing.All(c => judge.FitsOtherCone(c.First, load.Kiln, load.Firing))) return;
        // Ware that is right at this cone speaks against a slip in the firing.
        if (classes.Except(failing).Any(c => !judge.FitsOtherCone(c.First, load.Kiln, load.Firing))) return;
        var pieces = failing.Sum(c => c.Members.Count);
        sink.Add(ReasonCode.ConeZeroMixUp, failing.SelectMany(c => c.Reasons).Where(r => r.Code == ReasonCode.ConeZeroMixUp).Select(r => r.Severity).DefaultIfEmpty().Max(), LoadRuleIds.SuspectTheZero, null,
            $"Is the cone of the firing right? It says {load.Firing.Cone}, and {(pieces == 1 ? "the piece that fails" : $"all {pieces} pieces that fail")} would fit cone {load.Firing.Cone.MixUp}.", $"If cone {load.Firing.Cone.MixUp} was meant, correct the firing and check again.");
    }

    private static void GlazeCones(LoadBook book, Load load, List<PieceClass> going, ReasonSink sink)
    {
        var bests = going.Where(c => Neighbours.BestStep(c.First) is not null).Select(c => (Class: c, Step: Neighbours.BestStep(c.First)!.Value)).ToList();
        var counted = bests.GroupBy(x => x.Step).Select(g => (g.Key, g.Sum(x => x.Class.Members.Count))).ToList();
        if (Neighbours.Window(counted, load.Firing.Cone) is not { } window) return;
        var cones = book.Marks.Whole;
        var upper = Math.Min(window + Neighbours.ConesApart, cones.Count - 1);
        foreach (var (c, step) in bests.Where(x => !Neighbours.InWindow(x.Step, window)))
        {
            var piece = new ReasonSink(book, quiet: false);
            piece.Add(ReasonCode.GlazeConesApart, ReasonSeverity.Review, LoadRuleIds.GlazesShareCone, null,
                $"Its glaze is best at cone {cones[step]}, most others in this load at {cones[window]} to {cones[upper]}: more than one cone apart, one of them comes out dull or running.", $"Fire it with glazes for cone {cones[step]}.");
            c.Add(piece.Reasons[0]);
        }

        sink.Add(ReasonCode.GlazeConesApart, ReasonSeverity.Review, LoadRuleIds.GlazesShareCone, null,
            $"The glazes of this load are best at cones from {cones[bests.Min(b => b.Step)]} to {cones[bests.Max(b => b.Step)]}, more than one cone apart.", $"Split the load by glaze; if it must go together, harder glazes into the hotter places.");
    }

    private static void Fumes(LoadBook book, Load load, List<PieceClass> going, Fume fume, string rule, string what, ReasonSink sink)
    {
        var givers = going.Where(c => Neighbours.GivenOff(c.First, load.Firing).Has(fume)).ToList();
        var spoiled = going.Where(c => Neighbours.SpoiledBy(c.First, load.Firing).Has(fume)).Where(c => givers.Exists(g => g != c)).ToList();
        if (spoiled.Count == 0) return;
        foreach (var c in spoiled)
        {
            var piece = new ReasonSink(book, quiet: false);
            piece.Add(ReasonCode.FumesOnNeighbours, ReasonSeverity.Review, rule, Coat(c.First, fume),
                $"{Names(givers.Where(g => g != c))} in this load {Verb(givers.Where(g => g != c))} {what}, and this glaze takes it up.", $"Fire it apart from glazes with {EnumWords.Word(fume)}, or at the other end of the kiln with good draught.");
            c.Add(piece.Reasons[0]);
        }

        sink.Add(ReasonCode.FumesOnNeighbours, ReasonSeverity.Review, rule, null,
            $"{Names(givers)} {Verb(givers)} {what}: it reaches {spoiled.Sum(c => c.Members.Count)} other piece{(spoiled.Sum(c => c.Members.Count) == 1 ? "" : "s")} here.", $"Split the load.");
    }

    private static Coat? Coat(Piece piece, Fume fume) => piece.Coats.FirstOrDefault(x => x.SpoiledBy.Has(fume))?.Coat;

    private static string Names(IEnumerable<PieceClass> classes)
    {
        var ids = classes.SelectMany(c => c.Members).Select(m => m.Piece.Id).Order(StringComparer.Ordinal).ToList();
        var named = string.Join(", ", ids.Take(NamesInASentence));
        return ids.Count <= NamesInASentence ? named : $"{named} and {ids.Count - NamesInASentence} more";
    }

    private static string Verb(IEnumerable<PieceClass> classes) => classes.Sum(c => c.Members.Count) == 1 ? "carries" : "carry";

    private static bool IsOfCone(ReasonCode code) => code is ReasonCode.BodyOverfired or ReasonCode.BodyUnderfired or ReasonCode.GlazeOverfired or ReasonCode.GlazeUnderfired;
}
