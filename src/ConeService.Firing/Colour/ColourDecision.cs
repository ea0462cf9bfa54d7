using ConeService.Contract.Colours;
using ConeService.Data;

namespace ConeService.Firing.Colour;

/// <summary>
/// Decides one colour: a rule that replaces it, else a note on the very mixture, else the best note of the one colorant;
/// several colorants without either are told each by itself, since no source says how they mix.
/// </summary>
/// <param name="catalogue">The colour tables.</param>
internal sealed class ColourDecision(ColourCatalogue catalogue)
{
    /// <summary>Decides.</summary>
    public ColourVerdict Decide(Recipe recipe, ColourAtmosphere atmosphere, IReadOnlyList<ColorantColours> parts, IReadOnlyList<Interaction> interactions)
    {
        var holding = interactions.Where(i => i.Standing == RuleStanding.Holds).ToList();
        var shifts = holding.Where(i => i.Effect == ColourRuleEffect.ShiftsColour).ToList();
        var replacing = holding.Where(i => i.Effect == ColourRuleEffect.ReplacesColour).ToList();
        if (replacing.Count > 0) return Replaced(recipe, atmosphere, replacing, parts).Shifted(shifts);
        if (Mixture(parts) is { } mixture) return ColourVerdict.Of(ColourBasis.MixtureNote, $"A source tells this mixture ({mixture.Id}): {mixture.Colour}.", mixture).Shifted(shifts);
        var colouring = parts.Where(p => Colours(p.Colorant)).ToList();
        if (colouring.Count == 0) colouring = [.. parts];
        var told = colouring.Where(p => p.Covered).ToList();
        if (told.Count == 0) return ColourVerdict.None(string.Join(" ", colouring.Select(p => p.Statement)));
        if (colouring is [var one]) return Single(one, Untold(interactions)).Shifted(shifts);
        return ColourVerdict.Of(
            ColourBasis.Parts, $"No source in this package says how these mix; each by itself: {string.Join(" ", colouring.Select(p => p.Statement))}{Untold(interactions)}", [.. told.Select(p => p.Notes[0].Note)])
            .Shifted(shifts);
    }

    private ColourVerdict Replaced(Recipe recipe, ColourAtmosphere atmosphere, List<Interaction> rules, IReadOnlyList<ColorantColours> parts) => new(
        ColourBasis.Interaction,
        string.Join("; ", rules.Select(r => r.Outcome.TrimEnd('.'))),
        [.. rules.SelectMany(r => r.ColourWords).Distinct()],
        rules is [var only] ? Shown(only, recipe, atmosphere) : null,
        rules.Max(r => r.Confidence),
        string.Join(" ", rules.Select(r => $"{r.Name}: {r.Outcome.TrimEnd('.')} ({r.Because}).")) + (rules.Count > 1 ? " No source says which of these wins." : "") + Beside(rules, parts),
        [.. rules.Select(r => r.Rule)],
        [.. rules.SelectMany(r => r.Sources).Distinct()]);

    // Colorants that no replacing rule names stay in the glaze, and nothing tells what they do to its colour.
    private string Beside(List<Interaction> rules, IReadOnlyList<ColorantColours> parts)
    {
        var named = rules.SelectMany(r => r.Amounts).Select(a => a.Ingredient).ToHashSet(StringComparer.Ordinal);
        var others = parts.Where(p => Colours(p.Colorant) && !named.Contains(p.Colorant)).ToList();
        return others.Count == 0 ? "" : $" No source in this package says how the rest mixes with that; by itself: {string.Join(" ", others.Select(p => p.Statement))}";
    }

    private Swatch? Shown(Interaction rule, Recipe recipe, ColourAtmosphere atmosphere)
    {
        var shown = rule.ShownBy.Select(id => catalogue.Notes[id])
            .Where(n => n.SeenOn == SeenOn.OwnGlaze && (n.Atmosphere == ColourAtmosphere.Any || n.Atmosphere == atmosphere))
            .OrderByDescending(n => n.Base == recipe.Base.Id)
            .FirstOrDefault();
        return shown is null ? null : new(shown.Swatch, Confidence.Estimate);
    }

    // A note that needs other ingredients, and whose ingredients are all there, tells this mixture and no other.
    private static ColourNote? Mixture(IReadOnlyList<ColorantColours> parts) => parts.SelectMany(p => p.Notes)
        .Where(n => n.Note.Needs.Count > 0 && n.BaseMatch != BaseMatch.NotAsked && n.PercentMatch is PercentMatch.Inside or PercentMatch.NotAsked)
        .OrderByDescending(n => n.Note.Needs.Count).ThenBy(n => n.BaseMatch).Select(n => n.Note).FirstOrDefault();

    private bool Colours(string colorant) => catalogue.Colorants[colorant].Kind is not (ColorantKind.Opacifier or ColorantKind.Reducer);

    private static ColourVerdict Single(ColorantColours part, string untold)
    {
        var best = part.Notes[0];
        return ColourVerdict.Of(ColourBasis.SingleNote, $"{part.Statement} Best match of {part.Notes.Count}: {best.Why}{untold}", best.Note);
    }

    // A rule that may hold, or is kept from holding, must be heard even where it does not decide.
    private static string Untold(IReadOnlyList<Interaction> interactions) =>
        string.Concat(interactions.Where(i => i.Effect is ColourRuleEffect.ReplacesColour && i.Standing != RuleStanding.Holds)
            .Select(i => i.Standing == RuleStanding.Prevented ? $" {i.Name} does not hold: {i.Because}." : $" {i.Name} may hold ({i.Outcome}): {i.Because}."));
}
