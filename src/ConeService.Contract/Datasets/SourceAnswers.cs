using ConeService.Contract.Json;

namespace ConeService.Contract.Datasets;

/// <summary>The bibliography.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Items">The sources, by id.</param>
public sealed record SourceList(string DatasetVersion, IReadOnlyList<Source> Items);

/// <summary>One source.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Source">The source.</param>
/// <param name="CitedBy">How many rows of each table cite it.</param>
public sealed record SourceDetail(string DatasetVersion, [property: Flat] Source Source, IReadOnlyList<SourceUse> CitedBy);

/// <summary>How often a table cites a source.</summary>
/// <param name="Table">The table.</param>
/// <param name="Rows">Number of rows.</param>
public sealed record SourceUse(string Table, int Rows);
