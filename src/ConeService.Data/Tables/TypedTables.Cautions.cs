namespace ConeService.Data;

/// <summary>The tables of cautions, limits, landmarks and processes.</summary>
internal static partial class TypedTables
{
    public static TypedTable<CautionRow> Cautions { get; } = new("cautions", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Text("hazard"), r.Word<HazardKind>("kind"), r.Word<Severity>("severity"), r.List("applies_to"),
        r.WordList<Exposed>("who"), r.WordList<WorkStage>("stages"), r.Text("when"), r.Text("control"),
        r.OptionalText("figures"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ExposureLimitRow> ExposureLimits { get; } = new("exposure-limits", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Text("substance"), r.Text("chemical_form"), r.Word<ExposureLimitKind>("kind"),
        r.OptionalWord<ExposureAveraging>("averaging"), r.Number("value"), r.OptionalNumber("short_term_value"), r.Text("unit"),
        r.Text("body"), r.Text("jurisdiction"), r.Word<LimitStanding>("standing"), r.OptionalInteger("year"),
        r.OptionalReferenceList("cautions", "cautions"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence(),
        r.Since(1, 7).OptionalText("instrument"), r.Since(1, 7).OptionalText("section"), r.Since(1, 7).OptionalText("effective_from"),
        r.Since(1, 7).OptionalReference("superseded_by", "exposure-limits"), r.Since(1, 7).OptionalText("checked_on"),
        r.Since(1, 7).OptionalWord<SourceVia>("seen_via")));

    public static TypedTable<FoodContactLimitRow> FoodContactLimits { get; } = new(
        "food-contact-limits", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Text("jurisdiction"), r.Text("instrument"), r.Word<FoodLimitStanding>("standing"), r.Text("category"),
        r.Text("ware"), r.List("metals"), r.OptionalNumber("value"), r.OptionalText("unit"), r.OptionalText("rule"),
        r.OptionalWord<Confidence>("rule_confidence"), r.OptionalText("test"), r.OptionalReferenceList("cautions", "cautions"),
        r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence(), r.Since(1, 7).OptionalText("section"),
        r.Since(1, 7).OptionalText("effective_from"), r.Since(1, 7).OptionalReference("superseded_by", "food-contact-limits"),
        r.Since(1, 7).OptionalText("checked_on"), r.Since(1, 7).OptionalWord<SourceVia>("seen_via")));

    public static TypedTable<LandmarkRow> Landmarks { get; } = new("landmarks", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Text("landmark"), r.Word<LandmarkPhase>("phase"), r.Number("celsius_low"), r.Number("celsius_high"),
        r.OptionalNumber("rate_low_celsius_per_hour"), r.OptionalNumber("rate_high_celsius_per_hour"),
        r.OptionalNumber("slow_from_celsius"), r.OptionalNumber("slow_to_celsius"), r.OptionalNumber("hold_low_celsius"),
        r.OptionalNumber("hold_high_celsius"), r.OptionalNumber("hold_low_minutes"), r.OptionalNumber("hold_high_minutes"),
        r.OptionalText("advice"), r.OptionalText("effect"), r.OptionalReferenceList("cautions", "cautions"), r.SourceList(),
        r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ProcessRow> Processes { get; } = new("processes", since: new(1, 3), keyFields: 1, r => new(
        r.Text("id"), r.Text("process"), r.WordList<ProcessKiln>("kilns"), r.OptionalText("kiln_note"),
        r.OptionalWordList("atmospheres", Atmospheres.OfFirings), r.Text("atmosphere_note"),
        r.OptionalCone("cone_min"), r.OptionalCone("cone_max"), r.Word<Porosity>("porosity"),
        r.Word<WareAnswer>("watertight"), r.OptionalText("watertight_note"), r.Word<ProcessFoodContact>("food_contact"),
        r.OptionalText("food_contact_note"), r.Word<WareAnswer>("microwave"), r.Word<WareAnswer>("dishwasher"),
        r.OptionalText("care_note"), r.OptionalInteger("firings_min"), r.OptionalInteger("firings_max"),
        r.OptionalNumber("duration_hours_min"), r.OptionalNumber("duration_hours_max"), r.OptionalText("duration_note"),
        r.Text("effect"), r.Text("use"), r.Text("people_nearby"), r.ReferenceList("cautions", "cautions"),
        r.OptionalList("sourced_fields"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ProcessAdditionRow> ProcessAdditions { get; } = new(
        "process-additions", since: new(1, 3), keyFields: 2, r => new(
        r.Reference("process", "processes"), r.Text("material"), r.Text("when"), r.OptionalNumber("celsius_low"),
        r.OptionalNumber("celsius_high"), r.OptionalCone("cone_low"), r.OptionalCone("cone_high"),
        r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    private static IReadOnlyList<TypedTable> Practice =>
    [
        Cautions, ExposureLimits, FoodContactLimits, Landmarks, Processes, ProcessAdditions,
    ];
}
