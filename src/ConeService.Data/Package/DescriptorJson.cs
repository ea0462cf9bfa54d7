using System.Text.Json;
using System.Text.Json.Serialization;

namespace ConeService.Data;

// datapackage.json as written: everything may be missing here; DescriptorReader decides what must not be.
// Properties not named are tolerated, since the standard allows custom ones; the exception is `constraints`,
// where an unknown name would be a promise nobody keeps.

internal sealed record PackageJson(string? Name, string? Title, string? Version, LicenseJson?[]? Licenses, ResourceJson?[]? Resources,
    SealJson? Seal);

internal sealed record SealJson(SealedFileJson?[]? Files, string? Hash);

internal sealed record SealedFileJson(string? Path, long? Bytes, string? Hash);

internal sealed record LicenseJson(string? Name);

internal sealed record ResourceJson(
    string? Name, string? Path, string? Title, string? Description, string? Encoding,
    DialectJson? Dialect, string[]? RowOrder, bool Overlay, SchemaJson? Schema, long? Bytes, string? Hash);

internal sealed record DialectJson(string? Delimiter, string? LineTerminator, bool? Header);

internal sealed record SchemaJson(
    FieldJson?[]? Fields, string[]? PrimaryKey, ForeignKeyJson?[]? ForeignKeys, string[]? MissingValues, JsonElement? UniqueKeys);

internal sealed record FieldJson(
    string? Name, string? Type, string? Description, string? Unit, ConstraintsJson? Constraints,
    string? ItemDelimiter, ConstraintsJson? ItemConstraints, ItemReferenceJson? ItemReference, string? UnitField,
    // Of the type list, as packages before 1.7 have it.
    string? Delimiter, string? ItemType);

internal sealed record ConstraintsJson(
    bool Required, bool Unique, string[]? Enum, string? Pattern, decimal? Minimum, decimal? Maximum)
{
    [JsonExtensionData]
    public Dictionary<string, JsonElement>? Unknown { get; set; }
}

internal sealed record ItemReferenceJson(string? Resource, string? Field);

internal sealed record ForeignKeyJson(string[]? Fields, ForeignKeyReferenceJson? Reference);

internal sealed record ForeignKeyReferenceJson(string? Resource, string[]? Fields);

[JsonSourceGenerationOptions(PropertyNamingPolicy = JsonKnownNamingPolicy.CamelCase, AllowDuplicateProperties = false)]
[JsonSerializable(typeof(PackageJson))]
internal sealed partial class DescriptorJsonContext : JsonSerializerContext;
