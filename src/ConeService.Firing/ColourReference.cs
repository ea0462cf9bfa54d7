using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Colours;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Colours;
using ConeService.Firing.Practice;

namespace ConeService.Firing;

/// <summary>Colorants, and the colours they give by base, atmosphere and company.</summary>
public sealed class ColourReference
{
    private readonly Dataset data;
    private readonly ColourCatalogue catalogue;
    private readonly CautionIndex cautions;
    private readonly ColourAnswerer answerer;

    internal ColourReference(ColourCatalogue catalogue)
    {
        (this.catalogue, data) = (catalogue, catalogue.Data);
        cautions = new(data);
        answerer = new(catalogue, cautions);
    }

    /// <summary>The colorants with the closed vocabularies of colour.</summary>
    public ColorantList Colorants() => new(
        data.VersionId,
        Notices.LocalCodes,
        [.. data.Colorants.Select(c => ColourAnswers.Of(c, data))],
        [.. data.ColorantForms.Select(ColourAnswers.Of)],
        [.. data.Additives.Select(ColourAnswers.Of)],
        [.. data.BaseGlazes.Select(ColourAnswers.Of)],
        Atmospheres.OfColours,
        [.. data.ColourWords.Select(ColourAnswers.Of)],
        [.. data.ColourRules.Select(Rule)]);

    /// <summary>A colorant with everything told of it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public ColorantDetail Colorant(string id)
    {
        var colorant = Rows.Find(data, "colorants", data.Colorants, c => c.Id, id, "colorant", "/v1/colorants");
        var notes = data.ColourNotes.Where(n => n.Colorant == colorant.Id).ToList();
        var limits = data.TemperatureLimits.Where(l => l.Colorant == colorant.Id).ToList();
        var rules = data.ColourRules.Where(r => catalogue.IngredientsOfRule[r.Id].Any(i => i.Ingredient == colorant.Id)).ToList();
        var exposure = cautions.ExposureLimits(colorant.Cautions);
        IEnumerable<IEnumerable<string>> cited =
        [
            colorant.Sources, .. notes.Select(n => n.Sources), .. limits.Select(l => l.Sources), .. rules.Select(r => r.Sources),
            .. exposure.Select(e => e.Sources),
        ];
        return new(
            data.VersionId,
            ColourAnswerer.Standing,
            ColourAnswers.Of(colorant, data),
            [.. data.ColorantForms.Where(f => f.Colorant == colorant.Id).Select(ColourAnswers.Of)],
            [.. Atmospheres.OfColours.Select(a => Coverage(colorant, a, notes))],
            [.. notes.Select(n => ColourAnswers.Of(n, catalogue))],
            [.. limits.Select(ColourAnswers.Of)],
            [.. rules.Select(Rule)],
            cautions.Links(colorant.Cautions),
            exposure,
            Notices.LeachTest,
            [.. cited.SelectMany(s => s).Distinct()]);
    }

    /// <summary>The colours of one colorant; without a colorant, every colorant that gives the colour word.</summary>
    /// <exception cref="RefusedException">A parameter can't be read; carries every finding.</exception>
    public ColourAnswer Find(
        string? colorant = null,
        string? atmosphere = null,
        string? @base = null,
        string? cone = null,
        string? percent = null,
        string? kiln = null,
        string? colour = null) =>
        answerer.Answer(colorant, atmosphere, @base, cone, percent, kiln, colour);

    /// <summary>The colour of a recipe, and the same recipe in oxidation and in reduction.</summary>
    /// <exception cref="RefusedException">A member can't be read; carries every finding.</exception>
    public ColourResolution Resolve(ColourRequest request)
    {
        var together = new Together();
        together.Try(() => ColourCheck.Require(request));
        if (together.Any)
        {
            together.Try(() => answerer.Check(request with
            {
                // A list that is too long is refused as a whole.
                Colorants = request.Colorants is { Count: <= ColourCheck.Most } colorants ? colorants : [],
                Additives = request.Additives is { Count: <= ColourCheck.Most } additives ? additives : [],
            }));
        }

        together.Done();
        return answerer.Resolve(request);
    }

    /// <summary>The colours of several recipes, in the order asked; what is refused carries its problems.</summary>
    /// <exception cref="RefusedException">There are no recipes, or too many.</exception>
    public BatchAnswer<ColourResolution> ResolveEach(ColourBatchRequest request)
    {
        BatchCheck.Require(request.Items);
        return Batch.Answer(data.VersionId, request.Items!, Resolve);
    }

    private ColourRule Rule(ColourRuleRow row) => ColourAnswers.Of(row, catalogue.IngredientsOfRule[row.Id]);

    private static AtmosphereCoverage Coverage(ColorantRow colorant, Atmosphere atmosphere, List<ColourNoteRow> notes)
    {
        var count = notes.Count(n => n.Atmosphere == Atmosphere.Any || n.Atmosphere == atmosphere);
        var air = EnumWords.Word(atmosphere);
        return new(atmosphere, count > 0, count, count > 0
            ? Message.Of("colours.notes-cover", ("count", count), ("atmosphere", air))
            : Message.Of("colours.not-covered", ("colorant", colorant.Name.ToLowerInvariant()), ("atmosphere", air)));
    }
}
