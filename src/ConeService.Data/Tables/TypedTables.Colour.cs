namespace ConeService.Data;

/// <summary>The tables of colour, processes and cautions.</summary>
internal static partial class TypedTables
{
    public static TypedTable<CautionRow> Cautions { get; } = new(
        "cautions", ["id"],
        [Column.Text("id"), Column.Text("hazard"), Column.Word<HazardKind>("kind"), Column.Word<Severity>("severity"), Column.List("applies_to"), Column.WordList<Exposed>("who"), Column.WordList<WorkStage>("stages"), Column.Text("when"), Column.Text("control"), Column.OptionalText("figures"), Column.SourceList(), Column.Confidence(), Column.OptionalText("note")],
        r => new(r.Text("id"), r.Text("hazard"), r.Word<HazardKind>("kind"), r.Word<Severity>("severity"), r.List("applies_to"), r.Words<Exposed>("who"), r.Words<WorkStage>("stages"), r.Text("when"), r.Text("control"), r.OptionalText("figures"), r.List("source"), r.Confidence("confidence"), r.OptionalText("note")));

    private static IReadOnlyList<TypedTable> Colour => [Cautions];
}
