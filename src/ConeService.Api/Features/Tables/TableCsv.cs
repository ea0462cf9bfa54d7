using System.Globalization;
using ConeService.Api.Http;
using ConeService.Contract.Datasets;
using ConeService.Data;
using CsvHelper;

namespace ConeService.Api.Features.Tables;

/// <summary>
/// A table as CSV for a spreadsheet: its fields as columns, items of a list with semicolons between them, cones as <c>cone 06</c>, and
/// last the version of the data package.
/// </summary>
internal static class TableCsv
{
    private const string Cones = "cones";
    private const string Between = "; ";

    /// <summary>The body.</summary>
    /// <param name="table">The table.</param>
    /// <param name="dataset">The package.</param>
    public static PreparedBody Body(TableDetail table, Dataset dataset)
    {
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = CsvWriter.Create(text, Csv.Writing, leaveOpen: true);
        var fields = table.Fields;
        csv.WriteRecord([.. fields.Select(f => f.Id), "dataset_version"]);
        foreach (var row in dataset.Tables.First(t => t.Name == table.Table.Id).Rows)
        {
            foreach (var field in fields) csv.WriteField(Cell(row, field, table.Table.Id));
            csv.WriteField(table.DatasetVersion);
            csv.EndRecord();
        }

        csv.Flush();
        return PreparedBody.Text(text.ToString(), Csv.MediaType, negotiated: true);
    }

    private static string? Cell(PackageRow row, TableField field, string table)
    {
        var isCone = field.RefersTo == Cones || (table == Cones && field.Id == "id");
        return row[field.Id] switch
        {
            null => null,
            string[] items => Csv.Inert(string.Join(Between, isCone ? items.Select(i => Csv.Cone(i)) : items)),
            string text when isCone => Csv.Cone(text),
            // The value of a fact as its source gives it: 05-3 would be a day in May.
            string text when char.IsDigit(text[0]) && OfCones(row, field) => $"cones {text}",
            string text => Csv.Inert(text),
            var value => string.Create(CultureInfo.InvariantCulture, $"{value}"),
        };
    }

    private static bool OfCones(PackageRow row, TableField field) =>
        field.Id != "unit" && row["unit"] is string unit && unit.StartsWith("cone", StringComparison.Ordinal);
}
