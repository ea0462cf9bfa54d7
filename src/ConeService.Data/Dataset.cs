using System.Collections.Frozen;

namespace ConeService.Data;

/// <summary>A validated data package: typed rows, version, checksums and change log. Immutable.</summary>
public sealed class Dataset
{
    private readonly IdRenames renames = new([]);
    private readonly IReadOnlyList<TextRow> texts = [];
    private readonly FrozenSet<(string Table, string Row, MessageAudience Audience)> told = [];

    /// <summary>
    /// Version of the package, SemVer 2.0; overlays stand in the build part:
    /// <c>1.0.0</c>, or <c>1.0.0+north-shed.2.1.0</c> with the overlay north-shed 2.1.0.
    /// </summary>
    public required string VersionId { get; init; }

    /// <summary>Name of the base package.</summary>
    public string Name { get; init; } = "";

    /// <summary>Its version, without overlays.</summary>
    public string BaseVersion => VersionId.Split('+')[0];

    /// <summary>The files of the base package as they were read.</summary>
    public IPackageFiles Files { get; init; } = new EmbeddedPackageFiles();

    /// <summary>Title of the package.</summary>
    public required string Title { get; init; }

    /// <summary>Licence of the package, an SPDX id.</summary>
    public required string License { get; init; }

    /// <summary>The change log of the base package, Markdown as it stands in CHANGELOG.md.</summary>
    public required string ChangeLog { get; init; }

    /// <summary>SHA-256 over the checksums of all files of the base package and its overlays, hexadecimal.</summary>
    public required string Checksum { get; init; }

    /// <summary>The tables as files: base package first, then the overlays.</summary>
    public required IReadOnlyList<ResourceSummary> Resources { get; init; }

    /// <summary>The tables row by row, whatever they mean, by name.</summary>
    public IReadOnlyList<PackageTable> Tables { get; init; } = [];

    /// <summary>What a maker of an overlay should look at although the package is valid: <see cref="PackageWarnings"/>.</summary>
    public IReadOnlyList<PackageFault> Warnings { get; init; } = [];

    /// <summary>The bibliography, by id.</summary>
    public required IReadOnlyList<SourceRow> Sources { get; init; }

    /// <summary>
    /// Which rows cite a source, by the id of the source: every reference to the bibliography that the descriptor declares. Tables
    /// by name, rows in their order; a source that no row cites has an empty list.
    /// </summary>
    public required IReadOnlyDictionary<string, IReadOnlyList<Citation>> Citations { get; init; }

    /// <summary>Every cone number that some chart prints, in the order in which they go down.</summary>
    public required IReadOnlyList<ConeRow> Cones { get; init; }

    /// <summary>The charts, by id; an overlay's charts follow.</summary>
    public required IReadOnlyList<ChartRow> Charts { get; init; }

    /// <summary>Every printed cell, by chart, cone and rate.</summary>
    public required IReadOnlyList<EndPointRow> EndPoints { get; init; }

    /// <summary>How cones behave.</summary>
    public required IReadOnlyList<ConeFactRow> ConeFacts { get; init; }

    /// <summary>Fitted slopes of the cones' curves.</summary>
    public required IReadOnlyList<BendingEnergyRow> BendingEnergies { get; init; }

    /// <summary>Tolerances of thermocouples, by id.</summary>
    public required IReadOnlyList<ThermocoupleToleranceRow> ThermocoupleTolerances { get; init; }

    /// <summary>Greatest heat of thermocouples by size of wire, by id; none in packages before 1.7.</summary>
    public IReadOnlyList<ThermocoupleLimitRow> ThermocoupleLimits { get; init; } = [];

    /// <summary>How thermocouples age, by id; none in packages before 1.7.</summary>
    public IReadOnlyList<ThermocoupleAgeingRow> ThermocoupleAgeing { get; init; } = [];

    /// <summary>What heat-work answers take for parameters left out, by id.</summary>
    public required IReadOnlyList<HeatWorkDefaultRow> HeatWorkDefaults { get; init; }

    /// <summary>The equations that answers come from; where the package has none, as before 1.7, those of the embedded one.</summary>
    public required IReadOnlyList<EquationRow> Equations { get; init; }

    /// <summary>Values adopted against the print, already applied to the other tables.</summary>
    public required IReadOnlyList<CorrectionRow> Corrections { get; init; }

    /// <summary>Ids of earlier versions: those this package names, and those of the package embedded in this assembly.</summary>
    public required IReadOnlyList<RenamedIdRow> RenamedIds
    {
        get => renames.Rows;
        init => renames = new(value);
    }

    /// <summary>Hazards: who is exposed, when, and what controls them.</summary>
    public required IReadOnlyList<CautionRow> Cautions { get; init; }

    /// <summary>Firing schedules as they are handed on, by id.</summary>
    public required IReadOnlyList<ScheduleTemplateRow> ScheduleTemplates { get; init; }

    /// <summary>The segments of the templates, in order.</summary>
    public required IReadOnlyList<ScheduleSegmentRow> ScheduleSegments { get; init; }

    /// <summary>Greatest rates by thickness of the wall and band of temperature.</summary>
    public required IReadOnlyList<ThicknessLimitRow> ThicknessLimits { get; init; }

    /// <summary>Figures that fitting a schedule uses where nobody says otherwise.</summary>
    public required IReadOnlyList<ScheduleDefaultRow> ScheduleDefaults { get; init; }

    /// <summary>Operating procedures, step by step, by id.</summary>
    public required IReadOnlyList<ProcedureRow> Procedures { get; init; }

    /// <summary>Hours of firings that need a person, by id.</summary>
    public required IReadOnlyList<AttendanceRow> Attendances { get; init; }

    /// <summary>What the kiln model takes where a kiln or a load says nothing.</summary>
    public required IReadOnlyList<KilnDefaultRow> KilnDefaults { get; init; }

    /// <summary>Materials of walls and loads.</summary>
    public required IReadOnlyList<KilnMaterialRow> KilnMaterials { get; init; }

    /// <summary>Usual walls and power, by heat and size.</summary>
    public required IReadOnlyList<KilnSizeRow> KilnSizes { get; init; }

    /// <summary>What room and times of loading are reckoned with where nobody says otherwise; none before 1.7.</summary>
    public IReadOnlyList<LoadingDefaultRow> LoadingDefaults { get; init; } = [];

    /// <summary>Air and gas burners by elevation; none in packages before 1.7.</summary>
    public IReadOnlyList<AltitudeRow> Altitudes { get; init; } = [];

    /// <summary>What heats kilns, one row for each word of the contract.</summary>
    public required IReadOnlyList<KilnHeatRow> KilnHeats { get; init; }

    /// <summary>The kinds of firing, one row for each word of the contract.</summary>
    public required IReadOnlyList<FiringKindRow> FiringKinds { get; init; }

    /// <summary>Clay bodies by id; those of overlays follow.</summary>
    public required IReadOnlyList<ClayBodyRow> ClayBodies { get; init; }

    /// <summary>Glazes and decorations by id; those of overlays follow.</summary>
    public required IReadOnlyList<GlazeRow> Glazes { get; init; }

    /// <summary>Firings that studios usually run, by kind and cone.</summary>
    public required IReadOnlyList<UsualFiringRow> UsualFirings { get; init; }

    /// <summary>Words of the trade that stand for words of the contract, by vocabulary.</summary>
    public required IReadOnlyList<TradeWordRow> TradeWords { get; init; }

    /// <summary>Rules of loading.</summary>
    public required IReadOnlyList<LoadRuleRow> LoadRules { get; init; }

    /// <summary>Where sources contradict each other.</summary>
    public required IReadOnlyList<DisagreementRow> Disagreements { get; init; }

    /// <summary>Classes of ware by its water absorption, in order of the file; none in packages before 1.7.</summary>
    public required IReadOnlyList<AbsorptionClassRow> AbsorptionClasses { get; init; }

    /// <summary>What oxides do to the expansion of a glaze, from the least up; none in packages before 1.7.</summary>
    public IReadOnlyList<OxideExpansionRow> OxideExpansions { get; init; } = [];

    /// <summary>
    /// Exposure limits: Limits for what people breathe at work, each as its body states it. What binds a studio is the law of its
    /// place.
    /// </summary>
    public required IReadOnlyList<ExposureLimitRow> ExposureLimits { get; init; }

    /// <summary>
    /// Food-contact limits: What a leach test of ceramic ware may give off, by jurisdiction. Only a leach test tells; what binds
    /// a maker is the law of the place of sale.
    /// </summary>
    public required IReadOnlyList<FoodContactLimitRow> FoodContactLimits { get; init; }

    /// <summary>
    /// Landmarks of a firing: What happens in ware, glaze and kiln at which temperature, and what a schedule does about it.
    /// </summary>
    public required IReadOnlyList<LandmarkRow> Landmarks { get; init; }

    /// <summary>
    /// Firing processes: What each firing process does to a pot, what the pot is good for, and who is near. Row confidence covers
    /// the fields that sourced_fields names; the other cells are common practice.
    /// </summary>
    public required IReadOnlyList<ProcessRow> Processes { get; init; }

    /// <summary>What is added to a firing: Materials that a process needs beside clay and glaze, and when they go in.</summary>
    public required IReadOnlyList<ProcessAdditionRow> ProcessAdditions { get; init; }

    /// <summary>Faults of ware, by id; none in packages before 1.7.</summary>
    public required IReadOnlyList<FaultRow> Faults { get; init; }

    /// <summary>Causes of faults, by id; none in packages before 1.7.</summary>
    public required IReadOnlyList<FaultCauseRow> FaultCauses { get; init; }

    /// <summary>What gives off gas in a firing, by id; none in packages before 1.7.</summary>
    public IReadOnlyList<GasReleaseRow> GasReleases { get; init; } = [];

    /// <summary>Terms of the trade, by id; none in packages before 1.7.</summary>
    public required IReadOnlyList<TermRow> Terms { get; init; }

    /// <summary>
    /// Additives: Parts of a glaze that change its colours without colouring by themselves. Opacifiers stand among the colorants.
    /// </summary>
    public required IReadOnlyList<AdditiveRow> Additives { get; init; }

    /// <summary>Base glazes: The closed vocabulary of bases in which colours are told.</summary>
    public required IReadOnlyList<BaseGlazeRow> BaseGlazes { get; init; }

    /// <summary>Colorants: What colours, clouds or lustres a glaze.</summary>
    public required IReadOnlyList<ColorantRow> Colorants { get; init; }

    /// <summary>
    /// Forms of the colorants: Substances in which a colorant is weighed, and how much of the counted oxide one part brings.
    /// </summary>
    public required IReadOnlyList<ColorantFormRow> ColorantForms { get; init; }

    /// <summary>Temperature limits of colours: To which heat a colour holds, and where a colorant begins to gas or fume.</summary>
    public required IReadOnlyList<TemperatureLimitRow> TemperatureLimits { get; init; }

    /// <summary>
    /// Colour notes: Which colour a colorant gives in a base and an atmosphere. Confidence is that of the colour; the percentage
    /// has its own; swatches are estimates for the eye, never measured.
    /// </summary>
    public required IReadOnlyList<ColourNoteRow> ColourNotes { get; init; }

    /// <summary>Colour words: The closed list into which the sources' colour names are put, so that notes can be filtered.</summary>
    public required IReadOnlyList<ColourWordRow> ColourWords { get; init; }

    /// <summary>
    /// Colour rules: What several ingredients, heat and atmosphere do together. Conditions stand as data: atmospheres, bases,
    /// limit, and the ingredients in colour-rule-ingredients.
    /// </summary>
    public required IReadOnlyList<ColourRuleRow> ColourRules { get; init; }

    /// <summary>Ingredients of the colour rules: Which ingredients a rule needs or forbids, and in which amounts.</summary>
    public required IReadOnlyList<ColourRuleIngredientRow> ColourRuleIngredients { get; init; }

    /// <summary>The sentences of the service, by code, audience and language; those of overlays follow.</summary>
    public required IReadOnlyList<MessageRow> Messages { get; init; }

    /// <summary>Rows told to one kind of reader, by table and id; those of overlays follow. None in packages before 1.7.</summary>
    public required IReadOnlyList<TextRow> Texts
    {
        get => texts;
        init
        {
            texts = value;
            told = value.Select(t => (t.Table, t.Row, t.Audience)).ToFrozenSet();
        }
    }

    /// <summary>The id that a row has now: the one given, unless it was renamed. Callers who send an old one are told.</summary>
    /// <param name="table">The table, such as <c>cautions</c>.</param>
    /// <param name="id">An id of today or of an earlier version; that there is such a row is not promised.</param>
    public string CurrentId(string table, string id) => renames.Current(table, id);

    /// <summary>Whether a row is told to a kind of reader, in whatever language.</summary>
    /// <param name="table">The table, such as <c>cautions</c>.</param>
    /// <param name="row">Id of the row.</param>
    /// <param name="audience">The reader.</param>
    public bool Tells(string table, string row, MessageAudience audience) => told.Contains((table, row, audience));

    /// <summary>A fault of a table of the base package, for a <see cref="PackageRequirement"/>.</summary>
    /// <param name="table">Name of the table.</param>
    /// <param name="field">The field; null when the whole table is meant.</param>
    /// <param name="rule">Stable id of what is required.</param>
    /// <param name="reason">The value found and what is needed.</param>
    public PackageFault Fault(string table, string? field, string rule, string reason) =>
        new(Resources[0].Package, Resources.FirstOrDefault(r => r.Name == table)?.Path ?? table + ".csv", null, field, rule, reason);
}
