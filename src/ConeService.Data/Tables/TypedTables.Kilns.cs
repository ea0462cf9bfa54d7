namespace ConeService.Data;

/// <summary>The tables behind the kiln model.</summary>
internal static partial class TypedTables
{
    public static TypedTable<KilnDefaultRow> KilnDefaults { get; } = new(
        "kiln-defaults", ["id"],
        [Column.Text("id"), Column.Number("value"), Column.Text("unit"), Column.Text("meaning"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Number("value"), r.Text("unit"), r.Text("meaning"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<KilnMaterialRow> KilnMaterials { get; } = new(
        "kiln-materials", ["id"],
        [Column.Text("id"), Column.Text("use") with { Words = ["comparison", "load", "wall"] }, Column.OptionalNumber("density_kilograms_per_cubic_metre"), Column.OptionalNumber("conductivity_constant"), Column.OptionalNumber("conductivity_slope"), Column.OptionalNumber("conductivity_square"), Column.Text("heat_scale") with { Words = ["celsius", "kelvin"] }, Column.Number("heat_constant"), Column.Number("heat_slope"), Column.Number("heat_inverse_square"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Text("use"), r.OptionalNumber("density_kilograms_per_cubic_metre"), r.OptionalNumber("conductivity_constant"), r.OptionalNumber("conductivity_slope"), r.OptionalNumber("conductivity_square"), r.Text("heat_scale"), r.Number("heat_constant"), r.Number("heat_slope"), r.Number("heat_inverse_square"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    public static TypedTable<KilnSizeRow> KilnSizes { get; } = new(
        "kiln-sizes", ["heat", "from_litres"],
        [Column.Text("heat") with { Words = ["electric", "gas"] }, Column.Number("from_litres"), Column.Reference("wall_material", "kiln-materials"), Column.Number("wall_millimetres"), Column.Number("kilowatts_per_square_metre"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("heat"), r.Number("from_litres"), r.Text("wall_material"), r.Number("wall_millimetres"), r.Number("kilowatts_per_square_metre"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    private static IReadOnlyList<TypedTable> Kilns => [KilnDefaults, KilnMaterials, KilnSizes];
}
