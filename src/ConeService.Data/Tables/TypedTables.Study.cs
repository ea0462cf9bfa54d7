namespace ConeService.Data;

/// <summary>The tables for those who learn: faults of ware, their causes, and terms of the trade.</summary>
internal static partial class TypedTables
{
    public static TypedTable<FaultRow> Faults { get; } = new("faults", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Text("fault"), r.OptionalList("synonyms"), r.Text("tell"), r.WordList<WorkStage>("stages"),
        r.OptionalReferenceList("unlike", "faults"), r.OptionalReferenceList("cautions", "cautions"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<FaultCauseRow> FaultCauses { get; } = new("fault-causes", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Reference("fault", "faults"), r.Text("cause"), r.Text("tell"), r.Text("change"),
        r.OptionalReferenceList("landmarks", "landmarks"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<TermRow> Terms { get; } = new("terms", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Text("term"), r.OptionalList("synonyms"), r.Text("meaning"), r.OptionalReferenceList("see", "terms"),
        r.OptionalText("href"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<GasReleaseRow> GasReleases { get; } = new("gas-releases", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Text("substance"), r.Text("reaction"), r.List("gases"), r.Number("celsius_low"), r.OptionalNumber("celsius_high"),
        r.Word("atmosphere", Atmospheres.OfReactions), r.OptionalNumber("rate_celsius_per_hour"),
        r.OptionalReferenceList("faults", "faults"), r.OptionalReference("landmark", "landmarks"),
        r.OptionalReference("limit", "temperature-limits"), r.OptionalReferenceList("cautions", "cautions"), r.SourceList(),
        r.Confidence(), r.OptionalText("note"), r.Evidence()));

    private static IReadOnlyList<TypedTable> Study => [Faults, FaultCauses, GasReleases, Terms];
}
