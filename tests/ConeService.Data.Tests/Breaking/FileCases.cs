using System.Text;
using System.Text.Json.Nodes;
using static ConeService.Data.Tests.BreakingCase;

namespace ConeService.Data.Tests;

/// <summary>Files that are missing, too many or not plain text.</summary>
internal static class FileCases
{
    public static IReadOnlyList<BreakingCase> All { get; } =
    [
        Of("a_file_that_cannot_be_read", FaultRules.UnreadableFile, "cones.csv", null, null,
            p => p.MakeUnreadable("cones.csv")) with { Package = "in-memory" },
        Of("no_descriptor", FaultRules.MissingFile, "datapackage.json", null, null,
            p => p.Remove("datapackage.json")) with { Package = "in-memory" },
        Of("no_change_log", FaultRules.MissingFile, "CHANGELOG.md", null, null, p => p.Remove("CHANGELOG.md")),
        Of("no_file_for_a_table", FaultRules.MissingFile, "charts.csv", null, null, p => p.Remove("charts.csv")),
        Of("a_table_that_nobody_described", FaultRules.UnlistedFile, "extra.csv", null, null, p => p.Put("extra.csv", "id\n")),
        Of("a_byte_that_is_not_utf_8", FaultRules.Utf8, "charts.csv", 2, null,
            p => p.PutBytes("charts.csv", [.. Encoding.UTF8.GetBytes(p.Text("charts.csv")[..^1]), 0xFF, (byte)'\n'])),
        Of("a_byte_order_mark", FaultRules.ByteOrderMark, "charts.csv", 1, null, p => p.Put("charts.csv", "\uFEFF" + p.Text("charts.csv"))),
        Of("a_file_of_another_size_than_sealed", FaultRules.Seal, "charts.csv", null, null,
            p => Seal(p, "bytes", 1 + p.Read("charts.csv").Length)),
        Of("a_file_of_another_hash_than_sealed", FaultRules.Seal, "charts.csv", null, null,
            p => Seal(p, "hash", "sha256:" + new string('0', 64))),
        Of("a_hash_of_another_kind", FaultRules.Descriptor, "datapackage.json", null, "charts.hash",
            p => Seal(p, "hash", new string('0', 32))),
        Of("a_sealed_file_without_name", FaultRules.Descriptor, "datapackage.json", null, "seal.files[0].path",
            p => p.EditDescriptor(j => j["seal"] = new JsonObject { ["files"] = new JsonArray(new JsonObject { ["bytes"] = 5 }) })),
        Of("a_sealed_file_that_is_missing", FaultRules.Seal, "LICENSE", null, null, p =>
        {
            p.Put("LICENSE", "CC\n");
            p.Seal();
            p.Remove("LICENSE");
        }),
        Of("a_descriptor_that_is_another_than_sealed", FaultRules.Seal, "datapackage.json", null, "seal.hash", p =>
        {
            p.Seal();
            p.Replace("datapackage.json", "for a shared pottery studio", "of a shared pottery studio");
        }),
        Of("carriage_returns", FaultRules.LineFeedsOnly, "end-points.csv", 3, null,
            p => p.Replace("end-points.csv", "1046,1915,seen-chart,published,\n", "1046,1915,seen-chart,published,\r\n")),
        Of("carriage_returns_in_the_change_log", FaultRules.LineFeedsOnly, "CHANGELOG.md", 1, null,
            p => p.Put("CHANGELOG.md", p.Text("CHANGELOG.md").ReplaceLineEndings("\r\n"))),
        Of("no_final_newline", FaultRules.FinalNewline, "end-points.csv", 5, null,
            p => p.Put("end-points.csv", p.Text("end-points.csv").TrimEnd('\n'))),
        Of("a_change_log_without_final_newline", FaultRules.FinalNewline, "CHANGELOG.md", 1, null, p => p.Put("CHANGELOG.md", "## 1.0.0")),
    ];

    private static void Seal(InMemoryPackage package, string member, JsonNode value) =>
        package.EditTable("charts", t => t[member] = value);
}
