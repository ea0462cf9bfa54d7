namespace ConeService.Data;

/// <summary>The tables behind the kiln model and the model of room.</summary>
internal static partial class TypedTables
{
    public static TypedTable<KilnDefaultRow> KilnDefaults { get; } = new("kiln-defaults", since: new(1, 4), keyFields: 1, r => new(
        r.Text("id"), r.Number("value"), r.Text("unit"), r.Text("meaning"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<LoadingDefaultRow> LoadingDefaults { get; } = new("loading-defaults", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Number("value"), r.Text("unit"), r.Text("statement"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<KilnMaterialRow> KilnMaterials { get; } = new("kiln-materials", since: new(1, 4), keyFields: 1, r => new(
        r.Text("id"), r.OneOf("use", "comparison", "load", "wall"), r.OptionalNumber("density_kilograms_per_cubic_metre"),
        r.OptionalNumber("conductivity_constant"), r.OptionalNumber("conductivity_slope"),
        r.OptionalNumber("conductivity_square"), r.OneOf("heat_scale", "celsius", "kelvin"), r.Number("heat_constant"),
        r.Number("heat_slope"), r.Number("heat_inverse_square"), r.SourceList(), r.Confidence(), r.OptionalText("note"), r.Evidence()));

    public static TypedTable<KilnSizeRow> KilnSizes { get; } = new("kiln-sizes", since: new(1, 4), keyFields: 2, r => new(
        r.OneOf("heat", "electric", "gas"), r.Number("from_litres"), r.Reference("wall_material", "kiln-materials"),
        r.Number("wall_millimetres"), r.Number("kilowatts_per_square_metre"), r.SourceList(), r.Confidence(),
        r.OptionalText("note"), r.Evidence()));

    public static TypedTable<AltitudeRow> Altitudes { get; } = new("altitudes", since: new(1, 7), keyFields: 1, r => new(
        r.Text("id"), r.Number("elevation_feet"), r.Number("elevation_metres"), r.Number("pressure_hectopascals"),
        r.Number("oxygen_hectopascals"), r.Number("boiling_celsius"), r.Number("gas_input_less_percent"), r.SourceList(),
        r.Confidence(), r.OptionalText("note"), r.Evidence()));

    private static IReadOnlyList<TypedTable> Kilns => [KilnDefaults, KilnMaterials, KilnSizes, LoadingDefaults, Altitudes];
}
