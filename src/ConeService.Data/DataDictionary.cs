using System.Globalization;
using System.Text;

namespace ConeService.Data;

/// <summary>The description of a data package for reading: docs/data-dictionary.md is generated from datapackage.json with it.</summary>
public static class DataDictionary
{
    /// <summary>Describes every table and field as Markdown; the same package always gives the same text.</summary>
    /// <param name="files">The package; only its datapackage.json is read.</param>
    /// <exception cref="InvalidPackageException">The descriptor cannot be relied on.</exception>
    public static string Render(IPackageFiles files)
    {
        var faults = new List<PackageFault>();
        var descriptor = PackageSnapshot.Take(files, faults) is { } snapshot
            ? DescriptorReader.Read(snapshot, isOverlay: false, faults)
            : null;
        if (descriptor is null)
            throw new InvalidPackageException(faults);

        var text = new StringBuilder();
        text.Append("# Data dictionary\n\n");
        text.Append("Generated from data/datapackage.json; change that file, not this one.\n\n");
        text.Append(CultureInfo.InvariantCulture, $"{descriptor.Title}, version {descriptor.Version}, licence {descriptor.License}.\n");
        foreach (var table in descriptor.Tables)
            Table(text, table);
        return text.ToString();
    }

    private static void Table(StringBuilder text, TableSchema table)
    {
        text.Append(CultureInfo.InvariantCulture, $"\n## {table.Title} (`{table.Path}`)\n\n{table.Description}\n\n");
        text.Append(CultureInfo.InvariantCulture, $"- Key: {Names(table.PrimaryKey)}\n");
        text.Append(CultureInfo.InvariantCulture, $"- Row order: {(table.RowOrder.Count > 0 ? Names(table.RowOrder) : "free")}\n");
        text.Append(CultureInfo.InvariantCulture, $"- A studio's overlay may add rows: {(table.Overlay ? "yes" : "no")}\n\n");
        text.Append("| field | type | unit | required | allowed | refers to | description |\n");
        text.Append("| --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var field in table.Fields)
        {
            string[] cells =
            [
                $"`{field.Name}`", field.Type.Word(), field.Unit ?? (field.UnitField is { } other ? $"as in `{other}`" : ""),
                field.Constraints.Required ? "yes" : "no",
                Allowed(field.Constraints), RefersTo(table, field), field.Description,
            ];
            text.Append(CultureInfo.InvariantCulture, $"| {string.Join(" | ", cells.Select(Cell))} |\n");
        }
    }

    private static string Allowed(FieldConstraints constraints)
    {
        var parts = new List<string>();
        if (constraints.Enum is { } words)
            parts.Add(string.Join(", ", words.Select(w => $"`{w}`")));
        if (constraints.PatternText is { } pattern)
            parts.Add($"`{pattern}`");
        if (constraints.Minimum is { } minimum)
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"at least {minimum}"));
        if (constraints.Maximum is { } maximum)
            parts.Add(string.Create(CultureInfo.InvariantCulture, $"at most {maximum}"));
        if (constraints.Unique)
            parts.Add("each value once");
        return string.Join("; ", parts);
    }

    private static string RefersTo(TableSchema table, FieldSchema field)
    {
        var keys = table.ForeignKeys.Where(k => k.Fields.Contains(field.Name))
            .Select(k => $"{k.Table}.{k.References[k.Fields.ToList().IndexOf(field.Name)]}");
        var items = field.ItemReference is { } item ? [$"{item.Table}.{item.Field} (each item)"] : Array.Empty<string>();
        return string.Join(", ", keys.Concat(items));
    }

    private static string Names(IEnumerable<string> fields) => string.Join(", ", fields.Select(f => $"`{f}`"));

    // A bar would end the cell, inside code spans too.
    private static string Cell(string text) => text.Replace("|", "\\|", StringComparison.Ordinal);
}
