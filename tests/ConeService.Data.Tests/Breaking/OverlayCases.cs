using System.Text.Json.Nodes;

namespace ConeService.Data.Tests;

/// <summary>Overlays that reach beyond what is theirs.</summary>
internal static class OverlayCases
{
    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Overlay("a_row_with_the_id_of_a_base_row", FaultRules.OverlayOwnIds, "sources.csv", 3, "id",
            o => o.Append("sources.csv", "recalled,measurement,Own,,,own,whole")),
        // The base chart sorts before the overlay's, so the cell stands first.
        Overlay("a_cell_added_to_a_base_chart", FaultRules.OverlayOwnChart, "end-points.csv", 2, "chart", o =>
            o.Replace("end-points.csv", "confidence,note\n", "confidence,note\ntest-chart,03,60,1090,1994,north-shed-tests,published,\n")),
        Overlay("a_table_that_is_not_open", FaultRules.OverlayTable, "datapackage.json", null, "cone-facts", o =>
        {
            o.EditDescriptor(j => j["resources"]!.AsArray()
                .Add(InMemoryPackage.Unsealed(InMemoryPackage.Table(JsonNode.Parse(Repository.Data("datapackage.json"))!, "cone-facts"))
                    .DeepClone()));
            o.Put("cone-facts.csv", "id\n");
        }),
        Overlay("a_table_that_the_base_does_not_have", FaultRules.OverlayTable, "datapackage.json", null, "kilns", o =>
        {
            o.EditDescriptor(j =>
            {
                var table = InMemoryPackage.Table(j, "sources").DeepClone();
                (table["name"], table["path"]) = ("kilns", "kilns.csv");
                j["resources"]!.AsArray().Add(table);
            });
            o.Put("kilns.csv", "id\n");
        }),
        Overlay("a_table_with_fewer_fields", FaultRules.OverlayFields, "datapackage.json", null, "end-points",
            o => o.EditTable("end-points", t => t["schema"]!["fields"]!.AsArray().RemoveAt(7))),
        Overlay("a_row_that_the_base_schema_refuses", FaultRules.Maximum, "end-points.csv", 3, "rate_celsius_per_hour", o =>
        {
            o.EditField("end-points", "rate_celsius_per_hour", f => f["constraints"]!["maximum"] = 9999);
            o.Replace("end-points.csv", "04,60,", "04,700,");
        }),
        new("a_rank_of_another_cone", FaultRules.ConeRank, "end-points.csv", 3, "cone_rank", s =>
        {
            s.Base.Rank("end-points", "cone", "-5", "-5", "-4", "-4");
            s.AddOverlay().Rank("end-points", "cone", "-5", "4");
        }) { Package = "north-shed" },
        Overlay("a_version_of_the_overlay_that_is_not_semantic", FaultRules.VersionInChangelog, "datapackage.json", null, "version",
            o => o.EditDescriptor(j => j["version"] = "two")),
        Overlay("an_overlay_change_log_with_another_version", FaultRules.VersionInChangelog, "CHANGELOG.md", 1, null,
            o => o.Put("CHANGELOG.md", "## 2.0.0\n")),
        Overlay("an_overlay_without_name", FaultRules.Descriptor, "datapackage.json", null, "name",
            o => o.EditDescriptor(j => j.AsObject().Remove("name"))),
        Overlay("a_reference_to_neither_base_nor_overlay", FaultRules.ForeignKey, "charts.csv", 2, "source",
            o => o.Replace("charts.csv", "north-shed-tests", "south-shed-tests")),
        new("an_overlay_with_the_name_of_the_base", FaultRules.OverlayName, "datapackage.json", null, "name", s => s.AddOverlay("minimal")),
        new("an_id_that_another_overlay_uses", FaultRules.OverlayOwnIds, "sources.csv", 3, "id", s =>
        {
            s.AddOverlay("east-shed").Append("sources.csv", "shared,measurement,Own,,,own,whole");
            s.AddOverlay().Append("sources.csv", "shared,measurement,Own,,,own,whole");
        }) { Package = "north-shed" },
    ];

    private static BreakingCase Overlay(string name, string rule, string file, int? line, string? field, Action<InMemoryPackage> breakIt) =>
        new(name, rule, file, line, field, s => breakIt(s.AddOverlay())) { Package = "north-shed" };
}
