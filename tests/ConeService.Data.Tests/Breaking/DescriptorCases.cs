using System.Text.Json.Nodes;
using static ConeService.Data.Tests.BreakingCase;

namespace ConeService.Data.Tests;

/// <summary>Descriptors that cannot be read, contradict themselves or describe what the service cannot use.</summary>
internal static class DescriptorCases
{
    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Descriptor("json_of_another_type", "$.name", p => p.Put("datapackage.json", "{\n  \"name\": 5\n}\n")) with { Package = "in-memory",
            Line = 2 },
        Descriptor("json_that_ends_early", null, p => p.Put("datapackage.json", "{\n")) with { Package = "in-memory", Line = 2 },
        Descriptor("json_that_is_null", null, p => p.Put("datapackage.json", "null")) with { Package = "in-memory" },
        Descriptor("a_property_that_stands_twice", "$.name",
            p => p.Put("datapackage.json", "{ \"name\": \"a\", \"name\": \"b\" }")) with { Package = "in-memory", Line = 1 },
        Descriptor("no_name", "name", p => p.EditDescriptor(j => j.AsObject().Remove("name"))) with { Package = "in-memory" },
        Descriptor("a_name_with_capitals", "name", p => p.EditDescriptor(j => j["name"] = "Minimal")) with { Package = "Minimal" },
        Descriptor("no_version", "version", p => p.EditDescriptor(j => j.AsObject().Remove("version"))),
        Descriptor("no_title", "title", p => p.EditDescriptor(j => j.AsObject().Remove("title"))),
        Descriptor("no_licence", "licenses", p => p.EditDescriptor(j => j.AsObject().Remove("licenses"))),
        Descriptor("two_licences", "licenses",
            p => p.EditDescriptor(j => j["licenses"]!.AsArray().Add(new JsonObject { ["name"] = "MIT" }))),
        Descriptor("a_table_that_is_null", "resources[7]", p => p.EditDescriptor(j => j["resources"]!.AsArray().Insert(7, null))),
        Table("a_table_without_title", "charts.title", t => t.AsObject().Remove("title")),
        Table("a_table_without_key", "charts.primaryKey", t => t["schema"]!.AsObject().Remove("primaryKey")),
        Table("a_key_that_is_no_field", "charts.primaryKey", t => t["schema"]!["primaryKey"] = new JsonArray("name")),
        Table("a_row_order_that_is_no_field", "charts.rowOrder", t => t["rowOrder"] = new JsonArray("name")),
        Table("another_encoding", "charts.encoding", t => t["encoding"] = "latin-1"),
        Table("another_delimiter", "charts.dialect.delimiter", t => t["dialect"]!["delimiter"] = ";"),
        Table("another_line_end", "charts.dialect.lineTerminator", t => t["dialect"]!["lineTerminator"] = "\r\n"),
        Table("no_header_row", "charts.dialect.header", t => t["dialect"]!["header"] = false),
        Table("other_missing_values", "charts.missingValues", t => t["schema"]!["missingValues"] = new JsonArray("", "NA")),
        Table("unique_keys", "charts.uniqueKeys", t => t["schema"]!["uniqueKeys"] = new JsonArray(new JsonArray("title"))),
        Table("a_foreign_key_to_no_table", "charts.foreignKeys", t => t["schema"]!["foreignKeys"]![0]!["reference"]!["resource"] = "books"),
        Table("a_foreign_key_without_fields", "charts.foreignKeys", t => t["schema"]!["foreignKeys"]![0]!["fields"] = new JsonArray()),
        Table("a_foreign_key_of_no_field", "charts.foreignKeys", t => t["schema"]!["foreignKeys"]![0]!["fields"] = new JsonArray("book")),
        Table("a_field_that_is_null", "charts.schema.fields[9]", t => t["schema"]!["fields"]!.AsArray().Add(null)),
        Table("a_field_that_stands_twice", "charts.schema.fields",
            t => t["schema"]!["fields"]!.AsArray().Add(t["schema"]!["fields"]![1]!.DeepClone())),
        Descriptor("two_tables_of_one_name", "resources", p => p.EditDescriptor(j =>
        {
            var copy = InMemoryPackage.Table(j, "charts").DeepClone();
            copy["path"] = "charts-2.csv";
            j["resources"]!.AsArray().Add(copy);
        })),
        Descriptor("two_tables_of_one_file", "resources", p => p.EditDescriptor(j =>
        {
            var copy = InMemoryPackage.Table(j, "charts").DeepClone();
            copy["name"] = "charts-2";
            j["resources"]!.AsArray().Add(copy);
        })),
        Field("a_field_without_description", "charts.title.description", "title", f => f.AsObject().Remove("description")),
        Field("an_unknown_type", "charts.title.type", "title", f => f["type"] = "datetime"),
        Field("an_unknown_constraint", "charts.title.constraints.maxLength", "title", f => f["constraints"]!["maxLength"] = 9),
        Field("an_empty_enum", "charts.title.constraints.enum", "title", f => f["constraints"]!["enum"] = new JsonArray()),
        Field("a_pattern_that_is_none", "charts.title.constraints.pattern", "title", f => f["constraints"]!["pattern"] = "(["),
        Field("a_minimum_of_a_text", "charts.title.constraints", "title", f => f["constraints"]!["minimum"] = 1),
        Field("an_item_reference_of_a_text", "charts.title.itemReference", "title",
            f => f["itemReference"] = new JsonObject { ["resource"] = "sources", ["field"] = "id" }),
        Field("item_constraints_of_a_text", "charts.title.itemConstraints", "title",
            f => f["itemConstraints"] = new JsonObject { ["pattern"] = "[a-z]+" }),
        List("a_list_with_two_delimiters", "cone-facts.source.itemDelimiter", f => f["itemDelimiter"] = ";,"),
        List("items_of_numbers", "cone-facts.source.itemDelimiter", f => f["type"] = "number"),
        List("a_pattern_of_a_list_as_a_whole", "cone-facts.source.constraints", f => f["constraints"]!["pattern"] = "[a-z-]+"),
        List("items_that_are_required", "cone-facts.source.itemConstraints",
            f => f["itemConstraints"] = new JsonObject { ["required"] = true }),
        List("an_unknown_constraint_of_items", "cone-facts.source.itemConstraints.maxLength",
            f => f["itemConstraints"] = new JsonObject { ["maxLength"] = 9 }),
        List("an_earlier_list_without_delimiter", "cone-facts.source.delimiter", f => Earlier(f).Remove("delimiter")),
        List("an_earlier_list_of_numbers", "cone-facts.source.itemType", f => Earlier(f)["itemType"] = "number"),
        List("an_item_reference_without_field", "cone-facts.source.itemReference", f => f["itemReference"]!.AsObject().Remove("field")),
        List("an_item_reference_to_no_field", "cone-facts.source.itemReference", f => f["itemReference"]!["field"] = "name"),
        Of("a_table_the_service_needs_left_out", FaultRules.MissingTable, "datapackage.json", null, "cone-facts", p =>
        {
            p.EditDescriptor(j => j["resources"]!.AsArray().Remove(InMemoryPackage.Table(j, "cone-facts")));
            p.Remove("cone-facts.csv");
        }),
        Shape("a_field_the_service_needs_left_out", "charts.note", p =>
        {
            p.EditTable("charts", t => t["schema"]!["fields"]!.AsArray().RemoveAt(8));
            p.Put("charts.csv", p.Text("charts.csv").Replace(",note\n", "\n", StringComparison.Ordinal)
                .Replace("published,\n", "published\n", StringComparison.Ordinal));
        }),
        Shape("a_field_the_service_does_not_know", "charts.colour", p =>
        {
            p.EditTable("charts", t => t["schema"]!["fields"]!.AsArray()
                .Add(new JsonObject { ["name"] = "colour", ["type"] = "string", ["description"] = "Colour." }));
            p.Put("charts.csv", p.Text("charts.csv").Replace(",note\n", ",note,colour\n", StringComparison.Ordinal)
                .Replace("published,\n", "published,,red\n", StringComparison.Ordinal));
        }),
        Shape("a_field_of_another_type", "sources.year", p =>
        {
            p.EditField("sources", "year", f => f["type"] = "integer");
        }),
        Shape("a_needed_field_that_may_be_blank", "charts.title",
            p => p.EditField("charts", "title", f => f["constraints"]!["required"] = false)),
        Shape("a_confidence_the_service_does_not_know", "charts.confidence",
            p => p.EditField("charts", "confidence", f => f["constraints"]!["enum"]!.AsArray().Add("certain"))),
        Shape("a_reference_the_service_follows_left_out", "charts.source",
            p => p.EditTable("charts", t => t["schema"]!["foreignKeys"] = new JsonArray())),
        Shape("a_key_other_than_the_service_needs", "cone-facts.primaryKey",
            p => p.EditTable("cone-facts", t => t["schema"]!["primaryKey"] = new JsonArray("id", "topic"))),
    ];

    private static BreakingCase Table(string name, string place, Action<JsonNode> edit) =>
        Descriptor(name, place, p => p.EditTable("charts", edit));

    private static BreakingCase Field(string name, string place, string field, Action<JsonNode> edit) =>
        Descriptor(name, place, p => p.EditField("charts", field, edit));

    private static BreakingCase List(string name, string place, Action<JsonNode> edit) =>
        Descriptor(name, place, p => p.EditField("cone-facts", "source", edit));

    // The type list, as packages before 1.7 have it.
    private static JsonObject Earlier(JsonNode field)
    {
        (field["type"], field["delimiter"]) = ("list", ";");
        field.AsObject().Remove("itemDelimiter");
        return field.AsObject();
    }

    private static BreakingCase Shape(string name, string place, Action<InMemoryPackage> breakIt) =>
        Of(name, FaultRules.TableFields, "datapackage.json", null, place, breakIt);
}
