using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Colours;

/// <summary>
/// Decides one colour: a rule that replaces it, else a note on the very mixture, else the best note of the one colorant;
/// several colorants without either are told each by itself, since no source says how they mix.
/// </summary>
/// <param name="catalogue">The colour tables.</param>
internal sealed class ColourDecision(ColourCatalogue catalogue)
{
    private readonly NoteRanking ranking = new(catalogue);

    /// <summary>Decides.</summary>
    /// <param name="recipe">The recipe.</param>
    /// <param name="atmosphere">The atmosphere.</param>
    /// <param name="alone">What each colorant does by itself.</param>
    /// <param name="interactions">What they do together.</param>
    public ColourVerdict Decide(
        Recipe recipe, Atmosphere atmosphere, IReadOnlyList<ColorantColours> alone, IReadOnlyList<Interaction> interactions)
    {
        var holding = interactions.Where(i => i.Standing == RuleStanding.Holds).ToList();
        var shifts = holding.Where(i => i.Effect == ColourRuleEffect.ShiftsColour).ToList();
        var replacing = holding.Where(i => i.Effect == ColourRuleEffect.ReplacesColour).ToList();
        var losing = holding.Where(i => i.Effect == ColourRuleEffect.LosesColour).ToList();
        return Undisturbed(recipe, atmosphere, alone, interactions, replacing).Shifted(shifts).Against(losing);
    }

    private ColourVerdict Undisturbed(
        Recipe recipe, Atmosphere atmosphere, IReadOnlyList<ColorantColours> alone, IReadOnlyList<Interaction> interactions,
        List<Interaction> replacing)
    {
        if (replacing.Count > 0) return Replaced(recipe, atmosphere, replacing, alone);
        if (Mixture(alone) is { } mixture)
        {
            var told = Message.Of("colours.mixture-told", ("note", mixture.Id), ("colour", mixture.Colour));
            return ColourVerdict.Of(ColourBasis.MixtureNote, told, mixture);
        }

        var colouring = alone.Where(c => Colours(c.Colorant)).ToList();
        if (colouring.Count == 0) colouring = [.. alone];
        var covered = colouring
            .Where(c => c.Covered && !ranking.IsHistoric(c.ColourNotes[0].BaseMatch, c.ColourNotes[0].Note.Base)).ToList();
        var statements = Message.Sentences(colouring.Select(c => c.Statement));
        if (covered.Count == 0) return ColourVerdict.None(statements);
        if (colouring is [var one]) return Single(one, Untold(interactions));
        return ColourVerdict.Of(
            ColourBasis.Parts,
            Message.Sentences([Message.Of("colours.not-mixed", ("statements", statements)), .. Untold(interactions)]),
            [.. covered.Select(c => c.ColourNotes[0].Note)]);
    }

    private ColourVerdict Replaced(
        Recipe recipe, Atmosphere atmosphere, List<Interaction> rules, IReadOnlyList<ColorantColours> alone) => new(
        ColourBasis.Interaction,
        Phrases.Beside(rules.Select(r => Message.Verbatim(r.Outcome.TrimEnd('.')))),
        [.. rules.SelectMany(r => r.ColourWords).Distinct()],
        rules is [var only] ? Shown(only, recipe, atmosphere) : null,
        ConfidenceOrder.Weakest(rules.Select(r => r.Confidence)),
        Message.Sentences(rules.Select(ColourWarnings.Because).Concat(Beside(rules, alone))),
        [.. rules.Select(r => r.Rule)],
        [.. rules.SelectMany(r => r.Sources).Distinct()]);

    // Colorants that no replacing rule names stay in the glaze, and nothing tells what they do to its colour.
    private IEnumerable<Message> Beside(List<Interaction> rules, IReadOnlyList<ColorantColours> alone)
    {
        if (rules.Count > 1) yield return Message.Of("colours.none-wins");
        var named = rules.SelectMany(r => r.Amounts).Select(a => a.Ingredient).ToHashSet(StringComparer.Ordinal);
        var others = alone.Where(c => Colours(c.Colorant) && !named.Contains(c.Colorant)).Select(c => c.Statement).ToList();
        if (others.Count > 0) yield return Message.Of("colours.rest-not-mixed", ("statements", Message.Sentences(others)));
    }

    private Swatch? Shown(Interaction rule, Recipe recipe, Atmosphere atmosphere)
    {
        var shown = rule.ShownBy.Select(id => catalogue.Notes[id])
            .Where(n => n.SeenOn == SeenOn.OwnGlaze && (n.Atmosphere == Atmosphere.Any || n.Atmosphere == atmosphere))
            .OrderByDescending(n => n.Base == recipe.Base.Id)
            .FirstOrDefault();
        return shown is null ? null : new(shown.Swatch, Confidence.Estimate);
    }

    // A note that needs other ingredients, and whose ingredients are all there, tells this mixture and no other.
    private static ColourNote? Mixture(IReadOnlyList<ColorantColours> alone) => alone.SelectMany(c => c.ColourNotes)
        .Where(n => n.Note.Needs.Count > 0 && n.BaseMatch != BaseMatch.NotAsked)
        .Where(n => n.PercentMatch is PercentMatch.Inside or PercentMatch.NotAsked)
        .OrderByDescending(n => n.Note.Needs.Count).ThenBy(n => n.BaseMatch).Select(n => n.Note).FirstOrDefault();

    private bool Colours(string colorant) => catalogue.Colorants[colorant].Kind is not (ColorantKind.Opacifier or ColorantKind.Reducer);

    private static ColourVerdict Single(ColorantColours colorant, IEnumerable<Message> untold)
    {
        var best = colorant.ColourNotes[0];
        var match = Message.Of("colours.best-match", ("count", colorant.ColourNotes.Count), ("why", best.Why));
        return ColourVerdict.Of(ColourBasis.SingleNote, Message.Sentences([colorant.Statement, match, .. untold]), best.Note);
    }

    // A rule that may hold, or is kept from holding, must be heard even where it does not decide.
    private static IEnumerable<Message> Untold(IReadOnlyList<Interaction> interactions) => interactions
        .Where(i => i.Effect is ColourRuleEffect.ReplacesColour && i.Standing != RuleStanding.Holds)
        .Select(i => i.Standing == RuleStanding.Prevented
            ? Message.Of("colours.rule-prevented", ("rule", i.Name), ("because", i.Because))
            : Message.Of("colours.rule-possible", ("rule", i.Name), ("outcome", i.Outcome), ("because", i.Because)));
}
