using ConeService.Contract.Answers;
using ConeService.Contract.Colours;
using ConeService.Data;
using ConeService.Firing.Colour;

namespace ConeService.Firing;

/// <summary>Colorants, and the colours they give by base, atmosphere and company.</summary>
public sealed class ColourReference
{
    private readonly Dataset dataset;
    private readonly ColorantDescriber describer;
    private readonly ColourAnswerer answerer;

    internal ColourReference(Dataset dataset, ColorantDescriber describer, ColourAnswerer answerer) =>
        (this.dataset, this.describer, this.answerer) = (dataset, describer, answerer);

    /// <summary>The colorants with the closed vocabularies of colour.</summary>
    public ColorantList Colorants() => describer.List();

    /// <summary>A colorant with everything told of it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public ColorantDetail Colorant(string id) => describer.Describe(
        Rows.Find(dataset, "colorants", dataset.Colorants, c => c.Id, id, "colorant", "/v1/colorants"));

    /// <summary>The colours of one colorant; without a colorant, every colorant that gives the colour word.</summary>
    /// <exception cref="RefusedException">A parameter can't be read; carries every finding.</exception>
    public ColourAnswer Find(
        string? colorant = null, string? atmosphere = null, string? @base = null, string? cone = null, string? percent = null, string? kiln = null,
        string? colour = null) =>
        answerer.Answer(colorant, atmosphere, @base, cone, percent, kiln, colour);

    /// <summary>The colour of a recipe, and the same recipe in oxidation and in reduction.</summary>
    /// <exception cref="RefusedException">A member can't be read; carries every finding.</exception>
    public ColourResolution Resolve(ColourRequest request)
    {
        ColourCheck.Require(request);
        return answerer.Resolve(request);
    }
}
