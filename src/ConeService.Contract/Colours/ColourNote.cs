using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>One colour that a source tells.</summary>
/// <param name="Id">Id of the note.</param>
/// <param name="Colorant">Id of the colorant.</param>
/// <param name="Base">Id of the base; <c>any</c> where the source names none.</param>
/// <param name="BaseDetail">What more the source says of the base.</param>
/// <param name="Atmosphere">The atmosphere.</param>
/// <param name="SeenOn">On the glaze itself, or on pots nearby.</param>
/// <param name="Percent">The percentage; null where none is told.</param>
/// <param name="Colour">The colour in words.</param>
/// <param name="ColourWords">The colour in words of the closed list.</param>
/// <param name="Swatch">An estimate for the eye.</param>
/// <param name="Condition">What else must hold.</param>
/// <param name="Needs">Other ingredients without which it does not hold.</param>
/// <param name="TemperatureLimits">Ids of the temperature limits of the colour.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Confidence">How far the colour can be trusted; the percentage has its own.</param>
/// <param name="Note">What a reader must know.</param>
/// <param name="Student">The row in plain sentences for a student, without ids; null where the data package has none.</param>
public sealed record ColourNote(
    string Id,
    string Colorant,
    string Base,
    string? BaseDetail,
    [property: AtmosphereWords(AtmosphereUse.ColourNote)] Atmosphere Atmosphere,
    SeenOn SeenOn,
    ToldPercent? Percent,
    string Colour,
    IReadOnlyList<string> ColourWords,
    Swatch Swatch,
    string? Condition,
    IReadOnlyList<string> Needs,
    IReadOnlyList<string> TemperatureLimits,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    Message? Student = null)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("colour-notes", Id);
}

/// <summary>A percentage that a source or practice tells, added to 100 of glaze.</summary>
/// <param name="Min">Least, in the form that it counts.</param>
/// <param name="Max">Greatest, in the form that it counts.</param>
/// <param name="Form">The form that it counts; the colorant's formula where the source does not say.</param>
/// <param name="FormStated">Whether the source says which form.</param>
/// <param name="OxideMin">Least, as the counted oxide.</param>
/// <param name="OxideMax">Greatest, as the counted oxide.</param>
/// <param name="Sourced">Whether a source that was seen prints the percentage itself.</param>
/// <param name="Confidence">How far the percentage can be trusted, apart from the colour.</param>
public sealed record ToldPercent(
    decimal Min, decimal Max, string Form, bool FormStated, [property: RangeOf("oxide")] decimal OxideMin, decimal OxideMax,
    bool Sourced, Confidence Confidence);

/// <summary>A colour for the eye.</summary>
/// <param name="Hex">Red, green and blue, hexadecimal.</param>
/// <param name="Confidence">Always <c>estimate</c>: chosen from the words, never measured.</param>
public sealed record Swatch(string Hex, Confidence Confidence);
