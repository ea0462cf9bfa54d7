using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Data;

namespace ConeService.Contract.Practice;

/// <summary>A limit of what ceramic ware may give off. Only a leach test tells.</summary>
/// <param name="Id">Id of the limit.</param>
/// <param name="Jurisdiction">Where it applies: usa, usa-local (one county), usa-california, canada, european-union, international (a
/// standard).</param>
/// <param name="Instrument">The guide, law or directive.</param>
/// <param name="Standing">law, guidance (an action level, a model code or a standard, not a limit in law) or historic (no longer in
/// use).</param>
/// <param name="Category">Sort of ware.</param>
/// <param name="Ware">Sort of ware, in the words of the instrument.</param>
/// <param name="Metals">The metals it is about.</param>
/// <param name="Value">The limit, in unit; null where the rule is not a number.</param>
/// <param name="Unit">ug/mL and mg/L (of the test liquid, the same size), ppm (of the test liquid), mg/dm2 (of the surface),
/// ug/day (taken in by a person), percent (above the limit).</param>
/// <param name="Rule">How the value is judged, or what is asked instead of a value.</param>
/// <param name="RuleConfidence">Confidence of the rule where it is less than the row's.</param>
/// <param name="Test">The leach test it is tied to, as far as seen.</param>
/// <param name="Cautions">The cautions it belongs to.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
/// <param name="Section">Section, annex or table of the instrument; null where it is not known.</param>
/// <param name="EffectiveFrom">First day on which it applies, YYYY-MM-DD or the year; null where it is not known.</param>
/// <param name="SupersededBy">Id of the limit that took its place; null where it stands.</param>
/// <param name="CheckedOn">Day on or before which the value was last held against what seenVia names; null where it was only
/// recalled.</param>
/// <param name="SeenVia">What was read of the instrument: the work, a scan, a reproduction, a report on it, or memory.</param>
public sealed record FoodContactLimit(
    string Id,
    string Jurisdiction,
    string Instrument,
    FoodLimitStanding Standing,
    string Category,
    string Ware,
    IReadOnlyList<string> Metals,
    decimal? Value,
    string? Unit,
    string? Rule,
    Confidence? RuleConfidence,
    string? Test,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    string? Section,
    string? EffectiveFrom,
    string? SupersededBy,
    string? CheckedOn,
    SourceVia? SeenVia)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("food-contact-limits", Id);
}
