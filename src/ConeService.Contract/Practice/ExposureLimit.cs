using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Practice;

/// <summary>A limit of what people breathe at work, as its body states it. What binds a studio is the law of its place.</summary>
/// <param name="Id">Id of the limit.</param>
/// <param name="Substance">The substance.</param>
/// <param name="ChemicalForm">The form or element that the value counts.</param>
/// <param name="ExposureLimitKind">permissible-exposure-limit (PEL), action-level (AL), recommended-exposure-limit (REL),
/// workplace-exposure-limit (WEL; a limit value of the European Union), threshold-limit-value (TLV), immediately-dangerous (IDLH).</param>
/// <param name="Averaging">Over what the value is taken: eight-hours, time-weighted (the span was not printed), ceiling (never
/// above), fifteen-minute-ceiling; null for immediately-dangerous.</param>
/// <param name="Value">The limit, in unit.</param>
/// <param name="ShortTermValue">Short-term limit (STEL) that the row also names, in unit.</param>
/// <param name="Unit">ug/m3 (microgram per cubic metre), mg/m3 (milligram per cubic metre), ppm (parts per million by volume) or f/cm3
/// (fibres per cubic centimetre).</param>
/// <param name="Body">The body that set it.</param>
/// <param name="Jurisdiction">Where the body speaks: usa, usa-california, united-kingdom, european-union.</param>
/// <param name="Standing">legal (binds employers there; of the European Union, every member state) or recommended (indicative values
/// too).</param>
/// <param name="Year">Year of the limit or of the document in which it was seen; null where that has no date.</param>
/// <param name="Cautions">The cautions it belongs to.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
/// <param name="Instrument">The law, directive, guide or list in which the limit stands.</param>
/// <param name="Section">Section, annex or table of the instrument; null where it is not known.</param>
/// <param name="EffectiveFrom">First day on which it applies, YYYY-MM-DD or the year; null where it is not known.</param>
/// <param name="SupersededBy">Id of the limit that took its place; null where it stands.</param>
/// <param name="CheckedOn">Day on or before which the value was last held against what seenVia names; null where it was only
/// recalled.</param>
/// <param name="SeenVia">What was read of the instrument: the work, a scan, a reproduction, a report on it, or memory.</param>
public sealed record ExposureLimit(
    string Id,
    string Substance,
    string ChemicalForm,
    ExposureLimitKind ExposureLimitKind,
    ExposureAveraging? Averaging,
    decimal Value,
    decimal? ShortTermValue,
    string Unit,
    string Body,
    string Jurisdiction,
    LimitStanding Standing,
    int? Year,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    string? Instrument,
    string? Section,
    string? EffectiveFrom,
    string? SupersededBy,
    string? CheckedOn,
    SourceVia? SeenVia)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("exposure-limits", Id);
}
