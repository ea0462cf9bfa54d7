using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Contract.Practice;
using ConeService.Data;
using ConeService.Firing.Practice;

namespace ConeService.Firing.Colour;

/// <summary>Answers: what colour will it be?</summary>
internal sealed class ColourAnswerer
{
    private static readonly string[] Standing = [Notices.LocalCodes, Notices.Swatch];

    private readonly ColourCatalogue catalogue;
    private readonly CautionDescriber cautions;
    private readonly ColourQuestionReader reader;
    private readonly ColourResolver resolver;
    private readonly ColourWarnings warnings;

    /// <summary>Prepares the colour tables.</summary>
    public ColourAnswerer(ColourCatalogue catalogue)
    {
        this.catalogue = catalogue;
        cautions = new(catalogue.Data);
        reader = new(catalogue);
        resolver = new(catalogue, cautions);
        warnings = new(catalogue, cautions);
    }

    /// <summary>The colours of one colorant; without a colorant, every colorant that gives the colour word.</summary>
    /// <exception cref="RefusedException">A parameter can't be read.</exception>
    public ColourAnswer Answer(string? colorant, string? atmosphere, string? @base, string? cone, string? percent, string? kiln, string? colour)
    {
        var asked = reader.Read(colorant, atmosphere, @base, cone, percent, kiln, colour);
        var answers = asked.Atmospheres
            .Select(a => asked.Recipe.Colorants.Count == 0 || asked.Word is not null
                ? resolver.List(asked.Recipe, a, asked.Kiln, asked.Word) : resolver.Resolve(asked.Recipe, a, asked.Kiln))
            .ToList();
        return new(
            catalogue.Data.VersionId,
            asked.Question(asked.Atmospheres),
            answers,
            Cautions(asked, answers),
            Notices.LeachTest,
            Standing,
            Sources(answers),
            asked.Assumed);
    }

    /// <summary>The colour of a recipe, and the same recipe in oxidation and in reduction.</summary>
    /// <exception cref="RefusedException">A member can't be read.</exception>
    public ColourResolution Resolve(ColourRequest request)
    {
        var asked = reader.Read(request);
        var oxidation = resolver.Resolve(asked.Recipe, ColourAtmosphere.Oxidation, asked.Kiln);
        var reduction = resolver.Resolve(asked.Recipe, ColourAtmosphere.Reduction, asked.Kiln);
        var wanted = asked.Atmosphere switch
        {
            null => null,
            ColourAtmosphere.Oxidation => oxidation,
            ColourAtmosphere.Reduction => reduction,
            { } other => resolver.Resolve(asked.Recipe, other, asked.Kiln),
        };
        List<ResolvedColour> all = wanted is null || wanted == oxidation || wanted == reduction ? [oxidation, reduction] : [wanted, oxidation, reduction];
        return new(
            catalogue.Data.VersionId,
            asked.Question(asked.Atmospheres),
            wanted,
            new($"In oxidation: {Say(oxidation)} In reduction: {Say(reduction)}", oxidation, reduction),
            Cautions(asked, all),
            Notices.LeachTest,
            [.. catalogue.Data.FoodContactLimits.Where(l => l.Standing != FoodLimitStanding.Historic)],
            Standing,
            Sources(all),
            asked.Assumed);
    }

    // What the air brings, what the rules raise, then the materials; the gravest first.
    private IReadOnlyList<CautionLink> Cautions(AskedColour asked, IReadOnlyList<ResolvedColour> answers)
    {
        var materials = asked.Recipe.Colorants.SelectMany(c => c.Weighed.Colorant.Cautions)
            .Concat(asked.Recipe.Base.Cautions)
            .Concat(asked.Additives.SelectMany(a => catalogue.CautionsOf(a.Id)));
        return [.. cautions.Links(answers.SelectMany(a => warnings.For(a.Atmosphere))
            .Concat(answers.SelectMany(a => a.Warnings).SelectMany(w => w.Cautions).Select(c => c.Id))
            .Concat(answers.SelectMany(a => a.Interactions).Where(i => i.Standing != RuleStanding.Prevented).SelectMany(i => i.Cautions))
            .Concat(materials)).OrderByDescending(c => c.Severity)];
    }

    private static string Say(ResolvedColour answer) => answer.Colour is { } colour ? colour.TrimEnd('.') + "." : answer.Explanation;

    private static string[] Sources(IEnumerable<ResolvedColour> answers) => [.. answers.SelectMany(a => a.Sources).Distinct()];
}
