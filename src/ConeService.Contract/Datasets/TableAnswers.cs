using System.Text.Json;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Datasets;

/// <summary>The tables of the data package.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Rows">Number of rows of all of them.</param>
/// <param name="Items">The tables, by id.</param>
public sealed record TableList(string DatasetVersion, int Rows, IReadOnlyList<Table> Items);

/// <summary>A table of the data package.</summary>
/// <param name="Id">Name of the table.</param>
/// <param name="Name">What it holds.</param>
/// <param name="Description">The same in a sentence.</param>
/// <param name="Key">The fields of its key.</param>
/// <param name="Rows">Number of rows.</param>
public sealed record Table(string Id, string Name, string Description, IReadOnlyList<string> Key, int Rows)
{
    /// <summary>Address of the table.</summary>
    public Address Href => TableAddress.Of(Id);
}

/// <summary>A table with its rows.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Table">The table.</param>
/// <param name="Fields">Its fields.</param>
/// <param name="Items">Its rows, in their order.</param>
public sealed record TableDetail(
    string DatasetVersion, [property: Flat] Table Table, IReadOnlyList<TableField> Fields, IReadOnlyList<StoredRow> Items);

/// <summary>A field of a table.</summary>
/// <param name="Id">Name of the field.</param>
/// <param name="Name">What it says.</param>
/// <param name="FieldType">string, number, integer or list.</param>
/// <param name="Unit">Its unit, a code of UCUM; null where it has none, or where it stands in the row.</param>
/// <param name="UnitField">The field of the row that has its unit; null for others.</param>
/// <param name="RefersTo">The table whose ids it holds; null for others.</param>
public sealed record TableField(string Id, string Name, string FieldType, string? Unit, string? UnitField, string? RefersTo);

/// <summary>A row of a table.</summary>
/// <param name="Table">The table.</param>
/// <param name="Id">Its key, the parts joined by an at sign.</param>
/// <param name="Name">What a person calls it; its key where it has no name.</param>
/// <param name="Values">Its values by field: texts, numbers, lists of texts; null where it has none. Corrections are applied.</param>
public sealed record StoredRow(string Table, string Id, string Name, IReadOnlyDictionary<string, JsonElement> Values)
{
    /// <summary>Address of the row.</summary>
    public Address Href => TableAddress.Of(Table, Id);
}

/// <summary>A row of a table with its sources.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="StoredRow">The row.</param>
/// <param name="Place">Where in its source it stands.</param>
/// <param name="Sources">Ids of its sources, most important first.</param>
/// <param name="CitedSources">The sources themselves.</param>
public sealed record StoredRowDetail(
    string DatasetVersion, [property: Flat] StoredRow StoredRow, Message Place, IReadOnlyList<string> Sources,
    IReadOnlyList<Source> CitedSources);
