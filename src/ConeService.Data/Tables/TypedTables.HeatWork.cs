namespace ConeService.Data;

/// <summary>The tables behind heat-work answers.</summary>
internal static partial class TypedTables
{
    public static TypedTable<ThermocoupleToleranceRow> ThermocoupleTolerances { get; } = new(
        "thermocouple-tolerances", since: new(1, 1), keyFields: 1, r => new(
        r.Text("id"), r.Text("type"), r.Text("standard"), r.Text("class"), r.OneOf("formula", "beyond", "greater"),
        r.Number("floor_celsius"), r.Number("share_of_celsius"), r.OptionalNumber("from_celsius"), r.Number("lowest_celsius"),
        r.OptionalNumber("highest_celsius"), r.Source(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<HeatWorkDefaultRow> HeatWorkDefaults { get; } = new(
        "heat-work-defaults", since: new(1, 1), keyFields: 1, r => new(
        r.Text("id"), r.Number("value"), r.Text("unit"), r.Text("meaning"), r.Source(), r.Confidence(), r.OptionalText("note"),
        r.Evidence()));

    public static TypedTable<EquationRow> Equations { get; } = new("equations", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Text("name"), r.Text("equation"), r.Text("symbols"), r.OptionalReferenceList("rests_on", "equations"),
        r.Text("documentation"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ThermocoupleLimitRow> ThermocoupleLimits { get; } = new(
        "thermocouple-limits", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Text("type"), r.Integer("wire_gauge"), r.Number("wire_millimetres"), r.Number("celsius"), r.Number("fahrenheit"),
        r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<ThermocoupleAgeingRow> ThermocoupleAgeing { get; } = new(
        "thermocouple-ageing", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.List("types"), r.Text("mechanism"), r.OptionalNumber("celsius_low"), r.OptionalNumber("celsius_high"),
        r.Word("atmosphere", Atmospheres.OfReactions), r.OneOf("reads", "breaks", "either", "high", "low"), r.Text("effect"),
        r.Text("change"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    private static IReadOnlyList<TypedTable> HeatWork =>
        [ThermocoupleTolerances, ThermocoupleLimits, ThermocoupleAgeing, HeatWorkDefaults, Equations];
}
