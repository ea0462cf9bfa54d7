using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Contract.Practice;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.Practice;

namespace ConeService.Firing.Colours;

/// <summary>Answers: what colour will it be?</summary>
internal sealed class ColourAnswerer
{
    private readonly ColourCatalogue catalogue;
    private readonly CautionIndex cautions;
    private readonly ColourQuestionReader reader;
    private readonly ColourResolver resolver;
    private readonly ColourWarnings warnings;
    private readonly IReadOnlyList<FoodContactLimit> foodContactLimits;

    /// <summary>Prepares the colour tables.</summary>
    public ColourAnswerer(ColourCatalogue catalogue, CautionIndex cautions)
    {
        (this.catalogue, this.cautions) = (catalogue, cautions);
        reader = new(catalogue);
        resolver = new(catalogue, cautions);
        warnings = new(catalogue, cautions);
        foodContactLimits = PracticeAnswers.InUse(catalogue.Data.FoodContactLimits);
    }

    /// <summary>The lines that stand in every answer on colour.</summary>
    public static IReadOnlyList<Message> Standing { get; } = [Notices.LocalCodes, Notices.Swatch];

    /// <summary>The colours of one colorant; without a colorant, every colorant that gives the colour word.</summary>
    /// <exception cref="RefusedException">A parameter can't be read.</exception>
    public ColourAnswer Answer(
        string? colorant, string? atmosphere, string? @base, string? cone, string? percent, string? kiln, string? colour)
    {
        var asked = reader.Read(colorant, atmosphere, @base, cone, percent, kiln, colour);
        var answers = asked.Atmospheres
            .Select(a => asked.Recipe.Colorants.Count == 0 || asked.Word is not null
                ? resolver.List(asked.Recipe, a, asked.Kiln, asked.Word)
                : resolver.Resolve(asked.Recipe, a, asked.Kiln))
            .ToList();
        return new(
            catalogue.Data.VersionId,
            asked.Question(),
            answers,
            Cautions(asked, answers),
            Notices.LeachTest,
            Standing,
            Sources(answers),
            asked.Assumed,
            Weakest(answers));
    }

    /// <summary>Checks a recipe as far as it can be read.</summary>
    /// <exception cref="RefusedException">A member can't be read; carries every finding.</exception>
    public void Check(ColourRequest request) => reader.Read(request);

    /// <summary>The colour of a recipe, and the same recipe in oxidation and in reduction.</summary>
    /// <exception cref="RefusedException">A member can't be read.</exception>
    public ColourResolution Resolve(ColourRequest request)
    {
        var asked = reader.Read(request);
        var oxidation = resolver.Resolve(asked.Recipe, Atmosphere.Oxidation, asked.Kiln);
        var reduction = resolver.Resolve(asked.Recipe, Atmosphere.Reduction, asked.Kiln);
        var wanted = asked.Atmosphere switch
        {
            null => null,
            Atmosphere.Oxidation => oxidation,
            Atmosphere.Reduction => reduction,
            { } other => resolver.Resolve(asked.Recipe, other, asked.Kiln),
        };
        List<ResolvedColour> all = [oxidation, reduction];
        if (wanted is not null && !all.Contains(wanted)) all.Insert(0, wanted);
        return new(
            catalogue.Data.VersionId,
            asked.Question(),
            wanted,
            new(Message.Of("colours.contrast", ("oxidation", Say(oxidation)), ("reduction", Say(reduction))), oxidation, reduction),
            Cautions(asked, all),
            Notices.LeachTest,
            foodContactLimits,
            Standing,
            Sources(all),
            asked.Assumed,
            Weakest(all));
    }

    // What the air brings, what the rules raise, then the materials; the gravest first.
    private IReadOnlyList<CautionLink> Cautions(AskedColour asked, IReadOnlyList<ResolvedColour> answers)
    {
        // Where no colorant was named, those that are told are the materials.
        var materials = asked.Recipe.Colorants.Select(c => c.Weighed.Colorant)
            .Concat(answers.SelectMany(a => a.Colorants).Select(c => catalogue.Colorants[c.Colorant]))
            .SelectMany(c => c.Cautions)
            .Concat(asked.Recipe.Base.Cautions)
            .Concat(asked.Additives.SelectMany(a => catalogue.CautionsOf(a.Id)));
        return [.. cautions.Links(answers.SelectMany(a => warnings.For(a.Atmosphere))
            .Concat(answers.SelectMany(a => a.Warnings).SelectMany(w => w.Cautions).Select(c => c.Id))
            .Concat(answers.SelectMany(a => a.Interactions).Where(i => i.Standing != RuleStanding.Prevented).SelectMany(i => i.Cautions))
            .Concat(materials)).OrderByDescending(c => c.Severity)];
    }

    private static Message Say(ResolvedColour answer) =>
        answer.Colour is { } colour ? Message.Of("colours.colour", ("colour", colour)) : answer.Explanation;

    private static Confidence? Weakest(IEnumerable<ResolvedColour> answers)
    {
        List<Confidence> known = [.. answers.Select(a => a.Confidence).OfType<Confidence>()];
        return known.Count == 0 ? null : ConfidenceOrder.Weakest(known);
    }

    private static string[] Sources(IEnumerable<ResolvedColour> answers) => [.. answers.SelectMany(a => a.Sources).Distinct()];
}
