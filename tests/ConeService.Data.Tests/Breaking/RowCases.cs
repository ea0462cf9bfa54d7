using static ConeService.Data.Tests.BreakingCase;

namespace ConeService.Data.Tests;

/// <summary>Rows and cells that the schema refuses.</summary>
internal static class RowCases
{
    private const string Chart = "test-chart,Test chart,large,regular,yes,no,seen-chart,published,";

    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Charts("a_quote_inside_an_unquoted_cell", FaultRules.CsvQuoting, null, "Test chart", "Test \"chart"),
        Charts("a_quote_that_is_never_closed", FaultRules.CsvQuoting, null, "Test chart", "\"Test chart"),
        Of("a_header_with_another_name", FaultRules.Header, "sources.csv", 1, null, p => p.Replace("sources.csv", "id,kind,", "id,sort,")),
        Of("a_file_without_header", FaultRules.Header, "cone-facts.csv", 1, null,
            p => p.Replace("cone-facts.csv", p.Text("cone-facts.csv").Split('\n')[0] + "\n", "")),
        Charts("a_row_with_too_many_cells", FaultRules.RowShape, null, Chart, Chart + ","),
        Charts("a_row_with_too_few_cells", FaultRules.RowShape, null, Chart, Chart[..^1]),
        Of("a_blank_line", FaultRules.RowShape, "charts.csv", 3, null, p => p.Append("charts.csv", "")),
        Charts("a_cell_that_ends_with_a_blank", FaultRules.BlankEdges, "title", "Test chart", "Test chart "),
        Charts("a_quoted_cell_that_starts_with_a_blank", FaultRules.BlankEdges, "title", "Test chart", "\" Test chart\""),
        Charts("a_line_break_in_a_cell", FaultRules.ControlCharacter, "title", "Test chart", "\"Test\nchart\""),
        Celsius("a_number_with_an_exponent", "1.031e3"),
        Celsius("a_number_with_a_plus_sign", "+1031"),
        Celsius("a_number_with_a_separator", "\"1,031\""),
        Celsius("a_number_with_a_leading_zero", "01031"),
        Celsius("a_number_beyond_all_size", new string('9', 40)),
        Of("a_whole_number_with_a_fraction", FaultRules.Type, "cones.csv", 2, "whole_step",
            p => p.Replace("cones.csv", "022,-22,whole,0,", "022,-22,whole,0.0,")),
        Of("a_list_with_a_blank_item", FaultRules.Type, "cone-facts.csv", 3, "source",
            p => p.Replace("cone-facts.csv", "seen-chart;recalled", "seen-chart;")),
        Of("a_list_that_names_an_item_twice", FaultRules.Type, "cone-facts.csv", 3, "source",
            p => p.Replace("cone-facts.csv", "seen-chart;recalled", "seen-chart;seen-chart")),
        Charts("a_required_cell_that_is_blank", FaultRules.Required, "title", "Test chart", ""),
        Charts("a_word_that_is_not_listed", FaultRules.Enum, "cone_form", "large", "huge"),
        Of("a_value_without_the_form_asked_for", FaultRules.Pattern, "cone-facts.csv", 2, "id",
            p => p.Replace("cone-facts.csv", "end-point-right-angle-bend", "end point")),
        Of("a_number_below_the_least", FaultRules.Minimum, "end-points.csv", 2, "rate_celsius_per_hour",
            p => p.Replace("end-points.csv", "05,60,", "05,0.5,")),
        Of("a_number_above_the_greatest", FaultRules.Maximum, "end-points.csv", 3, "rate_celsius_per_hour",
            p => p.Replace("end-points.csv", "05,150,", "05,600.1,")),
        Of("a_value_that_stands_twice", FaultRules.Unique, "sources.csv", 4, "citation", p =>
        {
            p.EditField("sources", "citation", f => f["constraints"]!["unique"] = true);
            p.Replace("sources.csv", "A book from memory", "Arithmetic");
        }),
        Of("a_key_that_stands_twice", FaultRules.PrimaryKey, "charts.csv", 3, "id", p => p.Append("charts.csv", Chart)),
        Of("a_key_of_several_fields_that_stands_twice", FaultRules.PrimaryKey, "end-points.csv", 6, "chart/cone/rate",
            p => p.Append("end-points.csv", "test-chart,04,150,1070,,seen-chart,published,")),
        Of("a_reference_to_a_row_that_is_not_there", FaultRules.ForeignKey, "charts.csv", 2, "source",
            p => p.Replace("charts.csv", "seen-chart", "lost-chart")),
        Of("a_cone_that_is_not_there", FaultRules.ForeignKey, "end-points.csv", 4, "cone",
            p => p.Replace("end-points.csv", "04,60,", "15,60,")),
        Of("an_item_that_refers_to_a_row_that_is_not_there", FaultRules.ItemReference, "cone-facts.csv", 3, "source",
            p => p.Replace("cone-facts.csv", "recalled", "lost")),
        Of("text_out_of_order", FaultRules.RowOrder, "sources.csv", 6, "id",
            p => p.Append("sources.csv", "older,chart,Another,,,n/a,whole")),
        Of("numbers_out_of_order", FaultRules.RowOrder, "end-points.csv", 6, "rate_celsius_per_hour",
            p => p.Append("end-points.csv", "test-chart,04,108,1066,,seen-chart,published,")),
        Of("a_blank_number_after_a_number", FaultRules.RowOrder, "end-points.csv", 6, "rate_celsius_per_hour",
            p => p.Append("end-points.csv", "test-chart,04,,1066,,seen-chart,published,")),
        Of("a_row_out_of_the_order_of_the_table_it_refers_to", FaultRules.RowOrder, "end-points.csv", 6, "cone",
            p => p.Append("end-points.csv", "test-chart,06,60,998,,seen-chart,published,")),
    ];

    private static BreakingCase Charts(string name, string rule, string? field, string old, string replacement) =>
        Of(name, rule, "charts.csv", 2, field, p => p.Replace("charts.csv", old, replacement));

    private static BreakingCase Celsius(string name, string text) =>
        Of(name, FaultRules.Type, "end-points.csv", 2, "celsius", p => p.Replace("end-points.csv", "1031", text));
}
