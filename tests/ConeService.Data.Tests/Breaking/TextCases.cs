using static ConeService.Data.Tests.BreakingCase;

namespace ConeService.Data.Tests;

/// <summary>Texts that tell of nothing, or in words that don't belong there. The minimal package has two cone facts.</summary>
internal static class TextCases
{
    private const string First = "cone-facts,end-point-right-angle-bend,student,en,";
    private const string Second = "cone-facts,held-cone-keeps-bending,student,en,";

    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Text("a_text_of_a_row_that_is_not_there", FaultRules.TextRow, 2, "row", "cone-facts,no-such-fact,technician,en,It bends."),
        Text("a_row_that_students_are_not_told_of", FaultRules.TextRow, null, "row", First + "It bends."),
        Text("a_row_that_is_told_in_another_language_only", FaultRules.TextRow, null, "row",
            First + "It bends.", "cone-facts,held-cone-keeps-bending,student,nl,Hij buigt."),
        Words("a_text_that_calls_something_safe", "This is safe."),
        Words("a_text_that_calls_a_glaze_food_safe", "A food-safe cone."),
        Words("a_text_that_promises_no_harm", "It is harmless."),
        Words("a_text_in_the_shorthand_of_the_archive", "It bends (seen once)."),
        Words("a_text_with_the_id_of_a_source", "It bends, says seen-chart."),
        Words("a_text_with_the_id_of_a_row", "It bends, as end-point-right-angle-bend has it."),
        Words("a_text_with_a_brace", "It is cone {cone}."),
    ];

    private static BreakingCase Words(string name, string text) =>
        Text(name, FaultRules.TextWords, 3, "text", First + "It bends.", Second + text);

    private static BreakingCase Text(string name, string rule, int? line, string field, params string[] rows) =>
        Of(name, rule, "texts.csv", line, field, p =>
        {
            foreach (var row in rows) p.Append("texts.csv", row.Contains(", ", StringComparison.Ordinal) ? Quoted(row) : row);
        });

    // The text is the fifth cell.
    private static string Quoted(string row)
    {
        var cells = row.Split(',', 5);
        return string.Join(',', cells[..4]) + $",\"{cells[4]}\"";
    }
}
