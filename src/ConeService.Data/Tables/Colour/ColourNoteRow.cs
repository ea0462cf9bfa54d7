namespace ConeService.Data;

/// <summary>Which colour a colorant gives in a base and an atmosphere.</summary>
/// <param name="Id">Number of the note, kept from the reference tables; never reused.</param>
/// <param name="Colorant">The colorant.</param>
/// <param name="Base">The base.</param>
/// <param name="BaseDetail">What more the source says of the base.</param>
/// <param name="Atmosphere">oxidation, neutral, reduction; any; salt-soda (vapour kiln), post-fire-reduction (drawn and smoked),
/// local-reduction (a reducer in the glaze, the kiln oxidising).</param>
/// <param name="SeenOn">own-glaze, or neighbouring-pots (by vapour).</param>
/// <param name="PercentMin">Least percentage, added to 100 of glaze; blank where none is told, %.</param>
/// <param name="PercentMax">Greatest percentage, %.</param>
/// <param name="PercentForm">Form that the percentage counts; blank where the source does not say (taken as the colorant's own
/// formula).</param>
/// <param name="PercentConfidence">How far the percentage itself can be trusted, apart from the colour: published means that the
/// source prints it.</param>
/// <param name="Colour">The colour in words.</param>
/// <param name="ColourWords">The colour in words of a closed list, for filters.</param>
/// <param name="Swatch">Illustrative colour, an estimate for the eye, not measured.</param>
/// <param name="Condition">What else must hold, in words.</param>
/// <param name="Needs">Other ingredients without which the note does not hold: ids of additives or colorants.</param>
/// <param name="Limits">Temperature limits of this colour.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ColourNoteRow(
    string Id,
    string Colorant,
    string Base,
    string? BaseDetail,
    Atmosphere Atmosphere,
    SeenOn SeenOn,
    decimal? PercentMin,
    decimal? PercentMax,
    string? PercentForm,
    Confidence? PercentConfidence,
    string Colour,
    IReadOnlyList<string> ColourWords,
    string Swatch,
    string? Condition,
    IReadOnlyList<string> Needs,
    IReadOnlyList<string> Limits,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null)
{
    /// <summary>How far the colour itself can be trusted, apart from its percentage.</summary>
    public Confidence ColourConfidence => Evidence?.Of("colour", Confidence) ?? Confidence;
}
