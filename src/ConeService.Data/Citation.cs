namespace ConeService.Data;

/// <summary>A row that cites a source.</summary>
/// <param name="Table">The table.</param>
/// <param name="Row">Key of the row; the parts of a longer key are joined by a slash.</param>
public sealed record Citation(string Table, string Row);
