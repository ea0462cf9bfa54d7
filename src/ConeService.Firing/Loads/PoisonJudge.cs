using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Loads;

/// <summary>
/// Judges what lead, cadmium and selenium of one piece do to others: they settle on ware for food, and stay in the kiln. Load rule
/// food-ware-away-from-lead.
/// </summary>
internal static class PoisonJudge
{
    /// <summary>Adds what the fume of one metal does in this load.</summary>
    public static void Judge(LoadTables tables, Load load, IReadOnlyList<PieceClass> going, Fume fume, Judgement judgement)
    {
        var givers = going.Where(c => Neighbours.GivenOff(c.First, load.Firing).Has(fume)).ToList();
        if (givers.Count == 0) return;
        var spoiled = going
            .Where(c => Neighbours.SpoiledBy(c.First, load.Firing).Has(fume))
            .Where(c => givers.Exists(g => g != c))
            .ToList();
        var word = EnumWords.Word(fume);
        foreach (var c in spoiled)
        {
            var others = givers.Where(g => g != c).ToList();
            c.Add(ReasonMaker.Make(
                tables, load.Firing, c.First, ReasonCode.FumesOnNeighbours, ReasonSeverity.Review, LoadRuleIds.FoodWareAndFume, null,
                Message.Of(
                    c.First.Use == PieceUse.Food ? "loads.poison-on-piece" : "loads.lead-blackens-piece",
                    ("pieces", FumeJudge.Names(others)), ("number", FumeJudge.Number(others)), ("fume", word)),
                Message.Of("loads.fire-in-load-without", ("fume", word)),
                others: [.. FumeJudge.Ids(others).Take(FumeJudge.NamesInASentence)]));
        }

        judgement.Find(ReasonCode.FumesOnNeighbours, spoiled.Count > 0 ? ReasonSeverity.Review : ReasonSeverity.Note)?.Because(
            LoadRuleIds.FoodWareAndFume, null,
            Message.Of(
                "loads.poison-in-load",
                ("pieces", FumeJudge.Names(givers)), ("number", FumeJudge.Number(givers)), ("fume", word),
                ("spoiled", FumeJudge.Number(spoiled))),
            Message.Of("loads.keep-food-ware-away"));
    }
}
