namespace ConeService.Data;

/// <summary>An id that a row had in an earlier version; it still finds its row.</summary>
/// <param name="Table">The table of the row.</param>
/// <param name="Old">The id the row had.</param>
/// <param name="New">The id the row has now.</param>
/// <param name="Since">The version of the package that renamed it.</param>
public sealed record RenamedIdRow(string Table, string Old, string New, string Since);
