using System.Globalization;
using ConeService.Contract.Answers;

namespace ConeService.Contract.Datasets;

/// <summary>Addresses of tables, rows and printed cells of the data package.</summary>
public static class TableAddress
{
    /// <summary>Stands between the parts of a key in an address; no word of the package has it.</summary>
    public const char Between = '@';

    private const string Unstated = "unstated";

    /// <summary>A table.</summary>
    public static Address Of(string table) => new("/v1/tables/" + table);

    /// <summary>A row.</summary>
    /// <param name="table">The table.</param>
    /// <param name="id">Its id in addresses: its key, the parts joined by <see cref="Between"/>.</param>
    public static Address Of(string table, string id) => new($"/v1/tables/{table}/{Escape(id)}");

    /// <summary>A printed cell.</summary>
    public static Address OfCell(string chart, string cone, decimal? rate) => new($"/v1/charts/{Escape(chart)}/cells/{CellId(cone, rate)}");

    /// <summary>A cell among those of its chart: the cone, and the rate as it is printed.</summary>
    public static string CellId(string cone, decimal? rate) =>
        $"{cone}{Between}{rate?.ToString(CultureInfo.InvariantCulture) ?? Unstated}";

    // The sign between the parts may stand in a path as it is (RFC 3986, 3.3).
    private static string Escape(string id) => string.Join(Between, id.Split(Between).Select(Uri.EscapeDataString));
}
