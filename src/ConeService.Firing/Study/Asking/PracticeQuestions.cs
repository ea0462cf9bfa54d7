using ConeService.Data;
using ConeService.Firing.Study.Searching;

namespace ConeService.Firing.Study.Asking;

/// <summary>What ware survives, what a glaze becomes, what a process does, and what is done against a hazard.</summary>
internal sealed class PracticeQuestions(Dataset data, Evidenced evidenced)
{
    private const int Choices = 3;

    // “Vent.” and “Avoid it.” could be said against nearly everything.
    private const int LeastWords = 4;

    // Historic, and nothing to lead a lesson with.
    private const string Lead = "lead";

    /// <summary>The questions.</summary>
    public IEnumerable<QuestionDraft> All() => [.. Survival(), .. Colours(), .. Processes(), .. Cautions()];

    private IEnumerable<QuestionDraft> Survival() =>
        from body in data.ClayBodies
        where body.MatureConeBest is not null && evidenced.MayAsk(body.RangeConfidence, body.Sources)
        let low = Rank(body.MatureConeMin!)
        let high = Rank(body.MatureConeMax!)
        let wrong = ((string[])["06", "6", "10", "04", "018", "3", "13"]).Where(c => Rank(c) < low - 2 || Rank(c) > high + 2)
            .OrderByDescending(c => Rank(c) == -Rank(body.MatureConeBest!)).Take(Choices).Select(c => "cone " + c).ToList()
        where wrong.Count == Choices
        select new QuestionDraft(
            "which-ware-survives", body.Id, $"To which of these cones can ware of {body.Name} be fired to mature and keep its shape?",
            "cone " + body.MatureConeBest, wrong,
            $"It matures from cone {body.MatureConeMin} to cone {body.MatureConeMax}. Fired too low: {body.Underfired} "
            + $"Fired too high: {body.Overfired}",
            body.Sources, body.RangeConfidence, "clay-bodies", body.Id);

    // A colour that some base gives with the same colorant and atmosphere would be right too, and is no wrong choice.
    private IEnumerable<QuestionDraft> Colours() =>
        from note in data.ColourNotes
        where note.Atmosphere is Atmosphere.Oxidation or Atmosphere.Reduction && note.SeenOn == SeenOn.OwnGlaze && note.Base != Lead
        let trust = note.Evidence?.Of("colour", note.Confidence) ?? note.Confidence
        where trust is Confidence.Published or Confidence.Corroborated && evidenced.MayAsk(trust, note.Sources)
        let right = data.ColourNotes.Where(n => n.Colorant == note.Colorant
            && (n.Atmosphere == note.Atmosphere || n.Atmosphere is not (Atmosphere.Oxidation or Atmosphere.Reduction)))
            .SelectMany(n => n.ColourWords).Concat(note.ColourWords).ToHashSet()
        let wrong = data.ColourNotes
            .Where(n => !n.ColourWords.Any(right.Contains) && n.ColourWords.Count > 0 && n.Base != Lead)
            .OrderByDescending(n => n.Colorant == note.Colorant).ThenBy(n => Mixed(n.Id, note.Id))
            .Select(n => n.Colour).Distinct(StringComparer.Ordinal).Take(Choices).ToList()
        where wrong.Count == Choices
        let colorant = data.Colorants.First(c => c.Id == note.Colorant)
        let glaze = data.BaseGlazes.First(b => b.Id == note.Base)
        select new QuestionDraft(
            "colours-by-atmosphere", note.Id,
            $"{colorant.Name} in {EnumWords.Word(note.Atmosphere)}, base: {glaze.Name}. Which colour do the sources tell?",
            note.Colour, wrong,
            $"{colorant.Name} gives {note.Colour} there, in {EnumWords.Word(note.Atmosphere)}.", note.Sources, trust,
            "colour-notes", note.Id);

    private IEnumerable<QuestionDraft> Processes() =>
        from process in data.Processes
        let trust = process.Evidence?.Of("effect", process.Confidence) ?? process.Confidence
        where trust is Confidence.Published or Confidence.Corroborated && evidenced.MayAsk(trust, process.Sources)
        let wrong = data.Processes.Where(p => p.Id != process.Id && !Share(p.Effect, process.Effect))
            .OrderBy(p => Mixed(p.Id, process.Id)).Select(p => p.Effect).Take(Choices).ToList()
        where wrong.Count == Choices
        select new QuestionDraft(
            "what-a-process-does", process.Id, $"What does this process do to a pot: {process.Process}?", process.Effect, wrong,
            $"{process.Effect} It is used for: {process.Use}", process.Sources, trust, "processes", process.Id);

    private IEnumerable<QuestionDraft> Cautions() =>
        from caution in data.Cautions
        let trust = caution.Evidence?.Of("control", caution.Confidence) ?? caution.Confidence
        where trust is Confidence.Published or Confidence.Corroborated && evidenced.MayAsk(trust, caution.Sources)
        let wrong = data.Cautions.Where(c => IsAnother(c, caution) && SearchWords.Split(c.Control).Count >= LeastWords)
            .OrderBy(c => Mixed(c.Id, caution.Id)).Select(c => c.Control).Distinct(StringComparer.Ordinal).Take(Choices).ToList()
        where wrong.Count == Choices
        select new QuestionDraft(
            "cautions", caution.Id, $"{caution.Hazard}: {caution.When} What is done against it?", caution.Control, wrong,
            $"{caution.Control} Local codes and licensed practice decide.", caution.Sources, trust, "cautions", caution.Id);

    // “Gloves and respirator” is right against every powder and fume: of hazards to breathe or touch, others of that sort are no wrong
    // choices; nor is what keeps people away altogether.
    private static bool IsAnother(CautionRow other, CautionRow caution) => other.Kind != caution.Kind
        && !(IsOfMatter(other) && IsOfMatter(caution)) && !other.Who.Contains(Exposed.ChildrenAndPregnant)
        && !Share(other.Control, caution.Control);

    private static bool IsOfMatter(CautionRow caution) =>
        caution.Kind is HazardKind.FumeOrGas or HazardKind.ToxicMaterial or HazardKind.Dust or HazardKind.Caustic;

    // An order that is the same for a question always, and another for the next.
    private static uint Mixed(string id, string question) =>
        (id + question).Aggregate(2166136261u, static (hash, letter) => unchecked((hash ^ letter) * 16777619u));

    private static bool Share(string a, string b) => SearchWords.Of(a).Intersect(SearchWords.Of(b)).Any();

    private static decimal Rank(string cone) => Contract.Cones.Cone.Parse(cone).Position;
}
