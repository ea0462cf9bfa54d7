using ConeService.Contract.Colours;
using ConeService.Data;
using ConeService.Firing.Practice;

namespace ConeService.Firing.Colour;

/// <summary>Describes colorants.</summary>
/// <param name="catalogue">The colour tables.</param>
internal sealed class ColorantDescriber(ColourCatalogue catalogue)
{
    private static readonly string[] Standing = [Notices.LocalCodes, Notices.Swatch];

    private static readonly ColourAtmosphere[] Atmospheres = [.. Enum.GetValues<ColourAtmosphere>().Where(a => a != ColourAtmosphere.Any)];

    private readonly Dataset data = catalogue.Data;
    private readonly CautionDescriber cautions = new(catalogue.Data);

    /// <summary>The colorants, and the vocabularies.</summary>
    public ColorantList List() => new(
        data.VersionId,
        Notices.LocalCodes,
        data.Colorants,
        data.ColorantForms,
        data.Additives,
        data.BaseGlazes,
        Atmospheres,
        data.ColourWords,
        [.. data.ColourRules.Select(Rule)]);

    /// <summary>One colorant.</summary>
    public ColorantDetail Describe(ColorantRow colorant)
    {
        var notes = data.ColourNotes.Where(n => n.Colorant == colorant.Id).ToList();
        var limits = data.TemperatureLimits.Where(l => l.Colorant == colorant.Id).ToList();
        var rules = data.ColourRules.Where(r => catalogue.IngredientsOfRule[r.Id].Any(i => i.Ingredient == colorant.Id)).Select(Rule).ToList();
        var exposure = cautions.ExposureLimits(colorant.Cautions);
        IEnumerable<IEnumerable<string>> cited =
            [colorant.Sources, .. notes.Select(n => n.Sources), .. limits.Select(l => l.Sources), .. rules.Select(r => r.Rule.Sources), .. exposure.Select(e => e.Sources)];
        return new(
            data.VersionId,
            Standing,
            colorant,
            [.. data.ColorantForms.Where(f => f.Colorant == colorant.Id)],
            [.. Atmospheres.Select(a => Coverage(colorant, a, notes))],
            [.. notes.Select(n => NoteAnswers.Of(n, catalogue))],
            limits,
            rules,
            cautions.Links(colorant.Cautions),
            exposure,
            Notices.LeachTest,
            [.. cited.SelectMany(s => s).Distinct()]);
    }

    private ColourRule Rule(ColourRuleRow row) => new(row, [.. catalogue.IngredientsOfRule[row.Id]]);

    private static AtmosphereCoverage Coverage(ColorantRow colorant, ColourAtmosphere atmosphere, List<ColourNoteRow> notes)
    {
        var count = notes.Count(n => n.Atmosphere == ColourAtmosphere.Any || n.Atmosphere == atmosphere);
        var word = EnumWords.Word(atmosphere);
        return new(atmosphere, count > 0, count, count > 0 ? $"{count} {(count == 1 ? "note covers" : "notes cover")} {word}." : $"No source in this package covers {colorant.Name.ToLowerInvariant()} in {word}.");
    }
}
