using System.Text.RegularExpressions;

namespace ConeService.Data;

/// <summary>What datapackage.json says, checked.</summary>
internal sealed record PackageDescriptor(
    string Name, string Version, string? Title, string? License, IReadOnlyList<TableSchema> Tables, PackageSeal Seal)
{
    public const string FileName = "datapackage.json";

    /// <summary>Major and minor version; null when the version is none, which is a fault of its own.</summary>
    public Version? Minor { get; } = SemVer.Minor(Version);
}

/// <summary>One table: its file, fields, keys and forced order.</summary>
internal sealed record TableSchema(
    string Name, string Path, string Title, string Description, bool Overlay, IReadOnlyList<FieldSchema> Fields,
    IReadOnlyList<string> PrimaryKey, IReadOnlyList<ForeignKey> ForeignKeys, IReadOnlyList<string> RowOrder)
{
    /// <summary>Place of a field in the row, −1 when the table has no such field.</summary>
    public int IndexOf(string field)
    {
        for (var i = 0; i < Fields.Count; i++)
        {
            if (Fields[i].Name == field)
                return i;
        }

        return -1;
    }

    public int[] IndexesOf(IReadOnlyList<string> fields) => [.. fields.Select(IndexOf)];
}

/// <summary>
/// One field of a table. <paramref name="Unit"/> is a code of UCUM; <paramref name="UnitField"/> names the field of the row that has
/// the unit instead.
/// </summary>
internal sealed record FieldSchema(
    string Name, FieldType Type, string Description, string? Unit, string? UnitField, FieldConstraints Constraints, char Delimiter,
    ItemReference? ItemReference);

/// <summary>What a cell of a field must satisfy. <paramref name="Pattern"/> is anchored at both ends.</summary>
internal sealed record FieldConstraints(
    bool Required, bool Unique, IReadOnlyList<string>? Enum, string? PatternText, Regex? Pattern, decimal? Minimum, decimal? Maximum);

/// <summary>What each item of a list field refers to.</summary>
internal sealed record ItemReference(string Table, string Field);

/// <summary>Fields that together name a row of another table.</summary>
internal sealed record ForeignKey(IReadOnlyList<string> Fields, string Table, IReadOnlyList<string> References);

internal enum FieldType
{
    String,
    Number,
    Integer,
    List,
}
