namespace ConeService.Data;

/// <summary>The tables of cautions, limits, landmarks and processes.</summary>
internal static partial class TypedTables
{
    public static TypedTable<CautionRow> Cautions { get; } = new(
        "cautions", ["id"],
        [Column.Text("id"), Column.Text("hazard"), Column.Word<HazardKind>("kind"), Column.Word<Severity>("severity"), Column.List("applies_to"), Column.WordList<Exposed>("who"), Column.WordList<WorkStage>("stages"), Column.Text("when"), Column.Text("control"), Column.OptionalText("figures"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Text("hazard"), r.Word<HazardKind>("kind"), r.Word<Severity>("severity"), r.List("applies_to"), r.Words<Exposed>("who"), r.Words<WorkStage>("stages"), r.Text("when"), r.Text("control"), r.OptionalText("figures"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ExposureLimitRow> ExposureLimits { get; } = new(
        "exposure-limits", ["id"],
        [
            Column.Text("id"), Column.Text("substance"), Column.Text("chemical_form"), Column.Word<ExposureLimitKind>("kind"),
            Column.OptionalWord<ExposureAveraging>("averaging"), Column.Number("value"), Column.OptionalNumber("short_term_value"), Column.Text("unit"),
            Column.Text("body"), Column.Text("jurisdiction"), Column.Word<LimitStanding>("standing"), Column.OptionalInteger("year"),
            Column.OptionalReferenceList("cautions", "cautions"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("substance"), r.Text("chemical_form"), r.Word<ExposureLimitKind>("kind"), r.OptionalWord<ExposureAveraging>("averaging"),
            r.Number("value"), r.OptionalNumber("short_term_value"), r.Text("unit"), r.Text("body"), r.Text("jurisdiction"), r.Word<LimitStanding>("standing"),
            r.OptionalInteger("year"), r.OptionalList("cautions"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<FoodContactLimitRow> FoodContactLimits { get; } = new(
        "food-contact-limits", ["id"],
        [
            Column.Text("id"), Column.Text("jurisdiction"), Column.Text("instrument"), Column.Word<FoodLimitStanding>("standing"), Column.Text("category"),
            Column.Text("ware"), Column.List("metals"), Column.OptionalNumber("value"), Column.OptionalText("unit"), Column.OptionalText("rule"),
            Column.OptionalWord<Confidence>("rule_confidence"), Column.OptionalText("test"), Column.OptionalReferenceList("cautions", "cautions"),
            Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("jurisdiction"), r.Text("instrument"), r.Word<FoodLimitStanding>("standing"), r.Text("category"), r.Text("ware"),
            r.List("metals"), r.OptionalNumber("value"), r.OptionalText("unit"), r.OptionalText("rule"), r.OptionalWord<Confidence>("rule_confidence"),
            r.OptionalText("test"), r.OptionalList("cautions"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<LandmarkRow> Landmarks { get; } = new(
        "landmarks", ["id"],
        [
            Column.Text("id"), Column.Text("landmark"), Column.Word<LandmarkPhase>("phase"), Column.Number("celsius_low"), Column.Number("celsius_high"),
            Column.OptionalNumber("rate_low_celsius_per_hour"), Column.OptionalNumber("rate_high_celsius_per_hour"), Column.OptionalNumber("slow_from_celsius"),
            Column.OptionalNumber("slow_to_celsius"), Column.OptionalNumber("hold_low_celsius"), Column.OptionalNumber("hold_high_celsius"),
            Column.OptionalNumber("hold_low_minutes"), Column.OptionalNumber("hold_high_minutes"), Column.OptionalText("advice"), Column.OptionalText("effect"),
            Column.OptionalReferenceList("cautions", "cautions"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("landmark"), r.Word<LandmarkPhase>("phase"), r.Number("celsius_low"), r.Number("celsius_high"),
            r.OptionalNumber("rate_low_celsius_per_hour"), r.OptionalNumber("rate_high_celsius_per_hour"), r.OptionalNumber("slow_from_celsius"),
            r.OptionalNumber("slow_to_celsius"), r.OptionalNumber("hold_low_celsius"), r.OptionalNumber("hold_high_celsius"), r.OptionalNumber("hold_low_minutes"),
            r.OptionalNumber("hold_high_minutes"), r.OptionalText("advice"), r.OptionalText("effect"), r.OptionalList("cautions"), r.List("source"),
            r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ProcessRow> Processes { get; } = new(
        "processes", ["id"],
        [
            Column.Text("id"), Column.Text("process"), Column.WordList<ProcessKiln>("kilns"), Column.OptionalText("kiln_note"),
            Column.OptionalWordList<ProcessAtmosphere>("atmospheres"), Column.Text("atmosphere_note"), Column.OptionalReference("cone_min", "cones"),
            Column.OptionalReference("cone_max", "cones"), Column.Word<Porosity>("porosity"), Column.Word<WareAnswer>("watertight"),
            Column.OptionalText("watertight_note"), Column.Word<ProcessFoodContact>("food_contact"), Column.OptionalText("food_contact_note"),
            Column.Word<WareAnswer>("microwave"), Column.Word<WareAnswer>("dishwasher"), Column.OptionalText("care_note"), Column.OptionalInteger("firings_min"),
            Column.OptionalInteger("firings_max"), Column.OptionalNumber("duration_hours_min"), Column.OptionalNumber("duration_hours_max"),
            Column.OptionalText("duration_note"), Column.Text("effect"), Column.Text("use"), Column.Text("people_nearby"),
            Column.ReferenceList("cautions", "cautions"), Column.OptionalList("sourced_fields"), Column.SourceList(), Column.Confidence(),
            Column.OptionalText("note"),
        ],
        r => new(
            r.Text("id"), r.Text("process"), r.Words<ProcessKiln>("kilns"), r.OptionalText("kiln_note"), r.Words<ProcessAtmosphere>("atmospheres"),
            r.Text("atmosphere_note"), r.OptionalText("cone_min"), r.OptionalText("cone_max"), r.Word<Porosity>("porosity"), r.Word<WareAnswer>("watertight"),
            r.OptionalText("watertight_note"), r.Word<ProcessFoodContact>("food_contact"), r.OptionalText("food_contact_note"), r.Word<WareAnswer>("microwave"),
            r.Word<WareAnswer>("dishwasher"), r.OptionalText("care_note"), r.OptionalInteger("firings_min"), r.OptionalInteger("firings_max"),
            r.OptionalNumber("duration_hours_min"), r.OptionalNumber("duration_hours_max"), r.OptionalText("duration_note"), r.Text("effect"), r.Text("use"),
            r.Text("people_nearby"), r.List("cautions"), r.OptionalList("sourced_fields"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<ProcessAdditionRow> ProcessAdditions { get; } = new(
        "process-additions", ["process", "material"],
        [
            Column.Reference("process", "processes"), Column.Text("material"), Column.Text("when"), Column.OptionalNumber("celsius_low"),
            Column.OptionalNumber("celsius_high"), Column.OptionalReference("cone_low", "cones"), Column.OptionalReference("cone_high", "cones"),
            Column.SourceList(), Column.Confidence(), Column.OptionalText("note"),
        ],
        r => new(
            r.Text("process"), r.Text("material"), r.Text("when"), r.OptionalNumber("celsius_low"), r.OptionalNumber("celsius_high"), r.OptionalText("cone_low"),
            r.OptionalText("cone_high"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    private static IReadOnlyList<TypedTable> Practice =>
    [
        Cautions, ExposureLimits, FoodContactLimits, Landmarks, Processes, ProcessAdditions,
    ];
}
