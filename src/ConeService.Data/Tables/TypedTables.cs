namespace ConeService.Data;

/// <summary>Every table the service reads, and how a row of it becomes a record.</summary>
internal static partial class TypedTables
{
    public static TypedTable<SourceRow> Sources { get; } = new("sources", keyFields: 1, r => new(
        r.Text("id"), r.Text("kind"), r.Text("citation"), r.OptionalText("year"), r.OptionalText("locator"), r.Text("rights"),
        r.Text("seen"), r.Since(1, 7).OptionalWord<SourceVia>("via"), r.Since(1, 7).OptionalText("seen_via"),
        r.Since(1, 7).OptionalText("accessed"), r.Since(1, 7).OptionalText("address"), r.Since(1, 7).OptionalText("doi"),
        r.Since(1, 7).OptionalText("isbn"), r.Since(1, 7).OptionalText("standard"), r.Since(1, 7).OptionalText("witness")));

    public static TypedTable<ConeRow> Cones { get; } = new("cones", keyFields: 1, r => new(
        r.Text("id"), r.Number("position"), r.Text("kind"), r.OptionalInteger("whole_step"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ChartRow> Charts { get; } = new("charts", keyFields: 1, r => new(
        r.Text("id"), r.Text("title"), r.Text("cone_form"), r.Text("composition"),
        // Before 1.5 the composition and the form were asked instead.
        r.Since(1, 5, absent: cell => cell("composition") == "iron-free" ? "no" : "yes").Word<YesNo>("reduction_sensitive"),
        r.Since(1, 5, absent: cell => cell("cone_form") == "small" ? "yes" : "no").Word<YesNo>("bends_later"),
        r.Source(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<EndPointRow> EndPoints { get; } = new("end-points", keyFields: 3, r => new(
        r.Reference("chart", "charts"), r.Cone("cone"), r.OptionalNumber("rate_celsius_per_hour"),
        r.Number("celsius"), r.OptionalNumber("fahrenheit"), r.Source(), r.Confidence(), r.OptionalText("note"),
        r.Since(1, 7, absent: RateKeyRule.KeyOf).KeyText("rate", insteadOf: "rate_celsius_per_hour"), r.Evidence()));

    public static TypedTable<ConeFactRow> ConeFacts { get; } = new("cone-facts", keyFields: 1, r => new(
        r.Text("id"), r.Text("topic"), r.Text("statement"), r.OptionalText("value_printed"), r.OptionalNumber("value_low"),
        r.OptionalNumber("value_high"), r.OptionalText("unit"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<BendingEnergyRow> BendingEnergies { get; } = new("bending-energies", keyFields: 2, r => new(
        r.Reference("chart", "charts"), r.Cone("cone"), r.Number("activation_energy_kilojoules_per_mole"),
        r.Since(1, 5).OptionalWord<ConeOddity>("oddity"), r.Source(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<CorrectionRow> Corrections { get; } = new("corrections", keyFields: 3, r => new(
        r.Text("table"), r.Text("key"), r.Text("field"), r.Text("printed"), r.Text("adopted"), r.Text("reason"),
        r.Text("evidence"), r.SourceList(), r.Confidence()));

    public static TypedTable<RenamedIdRow> RenamedIds { get; } = new("renamed-ids", since: new(1, 5), keyFields: 2, r => new(
        r.Text("table"), r.Text("old"), r.Text("new"), r.Text("since")));

    // Made on first use: the order in which the parts of this class are initialised is not defined.
    public static IReadOnlyList<TypedTable> All => field ??=
    [
        Sources, Cones, Charts, EndPoints, ConeFacts, BendingEnergies, Corrections, RenamedIds, Messages,
        .. HeatWork, .. Practice, .. Study, .. Colour, .. Loads, .. Materials, .. Schedules, .. Kilns,
    ];

    private static Dictionary<string, TypedTable> ByName => field ??= All.ToDictionary(t => t.Name, StringComparer.Ordinal);

    /// <summary>The table of a name; null when the service reads none of it.</summary>
    public static TypedTable? Find(string name) => ByName.GetValueOrDefault(name);
}
