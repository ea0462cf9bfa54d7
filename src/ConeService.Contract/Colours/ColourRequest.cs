using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Requests;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>A recipe whose colour is asked for.</summary>
/// <param name="Colorants">The colorants, at least one.</param>
/// <param name="Additives">What else is in the glaze; opacifiers may stand here or among the colorants.</param>
/// <param name="Base">The base glaze; any base when absent.</param>
/// <param name="Atmosphere">The atmosphere; oxidation and reduction side by side when absent.</param>
/// <param name="Cone">The cone, as text; no heat is decided when absent.</param>
/// <param name="Kiln">How the kiln is heated: electric, gas, wood, raku or vapour.</param>
[Needs(nameof(Colorants))]
public sealed record ColourRequest(
    [property: Items(1, ColourCheck.Most)] IReadOnlyList<ColorantEntry?>? Colorants,
    [property: Items(0, ColourCheck.Most)] IReadOnlyList<AdditiveEntry?>? Additives = null,
    string? Base = null,
    [property: AtmosphereWords(AtmosphereUse.Colour)] string? Atmosphere = null,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Cone = default,
    [property: WordsOf(typeof(KilnHeat))] string? Kiln = null);

/// <summary>A colorant of a recipe.</summary>
/// <param name="Colorant">A colorant, or a form in which it is weighed, such as copper-carbonate.</param>
/// <param name="Percent">Percentage of that form, added to 100 of glaze.</param>
[Needs(nameof(Colorant))]
public sealed record ColorantEntry(
    string? Colorant,
    [property: SentAs(SentForm.Quantity), Range(0.0, 100.0, MinimumIsExclusive = true)] SentText Percent = default);

/// <summary>An additive of a recipe.</summary>
/// <param name="Additive">An additive or a colorant.</param>
/// <param name="Percent">Percentage, added to 100 of glaze.</param>
[Needs(nameof(Additive))]
public sealed record AdditiveEntry(
    string? Additive,
    [property: SentAs(SentForm.Quantity), Range(0.0, 100.0, MinimumIsExclusive = true)] SentText Percent = default);
