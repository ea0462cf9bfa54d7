using System.Text.Json;

namespace ConeService.Contract.Datasets;

/// <summary>What changed in the data package between two versions.</summary>
/// <param name="DatasetVersion">Version of the data package in use, of which overlays are left out here.</param>
/// <param name="From">The earlier version.</param>
/// <param name="EarlierVersions">The versions that can be asked for.</param>
/// <param name="Items">The tables that differ, by id.</param>
public sealed record DatasetChanges(
    string DatasetVersion, string From, IReadOnlyList<string> EarlierVersions, IReadOnlyList<TableChanges> Items);

/// <summary>What changed in a table. Rows are told by the ids of today, whatever they were called then.</summary>
/// <param name="Id">Name of the table.</param>
/// <param name="Name">What it holds.</param>
/// <param name="IsNew">Whether the earlier version had no such table.</param>
/// <param name="FieldsAdded">Fields that came.</param>
/// <param name="FieldsRemoved">Fields that went.</param>
/// <param name="RowsAdded">Keys of rows that came.</param>
/// <param name="RowsRemoved">Keys of rows that went.</param>
/// <param name="Cells">Cells of rows in both that differ.</param>
public sealed record TableChanges(
    string Id,
    string Name,
    bool IsNew,
    IReadOnlyList<string> FieldsAdded,
    IReadOnlyList<string> FieldsRemoved,
    IReadOnlyList<string> RowsAdded,
    IReadOnlyList<string> RowsRemoved,
    IReadOnlyList<CellChange> Cells);

/// <summary>A cell that differs.</summary>
/// <param name="Row">Key of the row.</param>
/// <param name="FieldName">The field.</param>
/// <param name="Before">What it held; null for nothing.</param>
/// <param name="After">What it holds; null for nothing.</param>
public sealed record CellChange(string Row, string FieldName, JsonElement Before, JsonElement After);
