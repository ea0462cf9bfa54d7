using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Practice;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Colours;

/// <summary>The colorants, and the vocabularies to ask for colours in.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notice">Local codes and licensed practice decide.</param>
/// <param name="Items">The colorants, by id.</param>
/// <param name="Forms">Forms in which they are weighed.</param>
/// <param name="Additives">What else may be in a glaze.</param>
/// <param name="Bases">The base glazes.</param>
/// <param name="Atmospheres">The words for atmospheres.</param>
/// <param name="ColourWords">The words for colours.</param>
/// <param name="Rules">What several ingredients, heat and atmosphere do together.</param>
public sealed record ColorantList(
    string DatasetVersion,
    Message Notice,
    IReadOnlyList<Colorant> Items,
    IReadOnlyList<ColorantForm> Forms,
    IReadOnlyList<Additive> Additives,
    IReadOnlyList<BaseGlaze> Bases,
    [property: AtmosphereWords(AtmosphereUse.Colour)] IReadOnlyList<Atmosphere> Atmospheres,
    IReadOnlyList<ColourWord> ColourWords,
    IReadOnlyList<ColourRule> Rules);

/// <summary>One colorant with everything that is told of it.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Notices">What swatches are; who decides.</param>
/// <param name="Colorant">The colorant.</param>
/// <param name="Forms">Forms in which it is weighed.</param>
/// <param name="Coverage">For each atmosphere, whether any source covers it.</param>
/// <param name="ColourNotes">Every colour that is told, by id.</param>
/// <param name="TemperatureLimits">To which heat its colours hold, and where it fumes.</param>
/// <param name="Rules">Every rule that names it, statements included.</param>
/// <param name="Cautions">Its cautions.</param>
/// <param name="ExposureLimits">Limits of what people breathe that go with the cautions.</param>
/// <param name="FoodContact">Only a leach test tells.</param>
/// <param name="Sources">Ids of the sources of everything above.</param>
public sealed record ColorantDetail(
    string DatasetVersion,
    IReadOnlyList<Message> Notices,
    [property: Flat] Colorant Colorant,
    IReadOnlyList<ColorantForm> Forms,
    IReadOnlyList<AtmosphereCoverage> Coverage,
    IReadOnlyList<ColourNote> ColourNotes,
    IReadOnlyList<TemperatureLimit> TemperatureLimits,
    IReadOnlyList<ColourRule> Rules,
    IReadOnlyList<CautionLink> Cautions,
    IReadOnlyList<ExposureLimit> ExposureLimits,
    Message FoodContact,
    IReadOnlyList<string> Sources);

/// <summary>Whether a colorant is told of in an atmosphere.</summary>
/// <param name="Atmosphere">The atmosphere.</param>
/// <param name="Covered">False where no source in the package covers it.</param>
/// <param name="NoteCount">Number of notes.</param>
/// <param name="Statement">The same in a sentence.</param>
public sealed record AtmosphereCoverage(
    [property: AtmosphereWords(AtmosphereUse.Colour)] Atmosphere Atmosphere, bool Covered, int NoteCount, Message Statement);

/// <summary>A colour rule with its ingredients.</summary>
/// <param name="Rule">The rule.</param>
/// <param name="Ingredients">What it needs or forbids, with amounts.</param>
public sealed record ColourRule(ColourRuleTerms Rule, IReadOnlyList<ColourRuleIngredient> Ingredients);
