using System.Globalization;
using System.Text;
using ConeService.Data;
using Microsoft.Data.Sqlite;

namespace ConeService.Packaging;

/// <summary>
/// A data package as a SQLite database. Each table has its name in snake case and its fields as columns; a list is a table of its own,
/// <c>owner_field</c>, with the key of the row, the place in the list from 1, and the item. Keys and references are declared, those of
/// the items of lists too. <c>package</c> names the package, <c>field</c> describes every column. Corrections are applied.
/// </summary>
public static class PackageDatabaseWriter
{
    private const string List = "list";

    /// <summary>Writes the base package; rows of overlays are left out.</summary>
    /// <param name="dataset">The package.</param>
    /// <param name="path">The file, which must not be there yet.</param>
    /// <exception cref="SqliteException">A row breaks a key or a reference, or the file can't be written.</exception>
    public static void Write(Dataset dataset, string path)
    {
        var settings = new SqliteConnectionStringBuilder { DataSource = path, ForeignKeys = true, Pooling = false };
        using var connection = new SqliteConnection(settings.ToString());
        connection.Open();
        Run(connection, "PRAGMA page_size = 4096; PRAGMA journal_mode = OFF;");
        using (var transaction = connection.BeginTransaction())
        {
            // Rows of a table may refer to rows that come later; all is held against all at the end.
            Run(connection, "PRAGMA defer_foreign_keys = ON;");
            About(connection, dataset);
            foreach (var table in dataset.Tables) Create(connection, table);
            foreach (var table in dataset.Tables) Fill(connection, table, dataset.Name);
            transaction.Commit();
        }

        Run(connection, "VACUUM;");
    }

    private static void About(SqliteConnection connection, Dataset dataset)
    {
        Run(connection, """
            CREATE TABLE package (name TEXT NOT NULL PRIMARY KEY, version TEXT NOT NULL, title TEXT NOT NULL, license TEXT NOT NULL);
            CREATE TABLE field (table_name TEXT NOT NULL, name TEXT NOT NULL, type TEXT NOT NULL, unit TEXT, unit_field TEXT,
              description TEXT NOT NULL, PRIMARY KEY (table_name, name));
            """);
        Insert(connection, "package", ["name", "version", "title", "license"],
            [dataset.Name, dataset.BaseVersion, dataset.Title, dataset.License]);
        foreach (var table in dataset.Tables)
        {
            foreach (var field in table.Fields)
            {
                Insert(connection, "field", ["table_name", "name", "type", "unit", "unit_field", "description"],
                    [Snake(table.Name), field.Name, field.Type, field.Unit, field.UnitField, field.Description]);
            }
        }
    }

    private static void Create(SqliteConnection connection, PackageTable table)
    {
        var columns = table.Fields.Where(f => f.Type != List).Select(f =>
            $"{Quoted(f.Name)} {Type(f)}{(f.Required || table.Key.Contains(f.Name) ? " NOT NULL" : "")}{References(f)}");
        Run(connection, $"CREATE TABLE {Quoted(Snake(table.Name))} ({string.Join(", ", columns)}, PRIMARY KEY ({Names(table.Key)}));");
        foreach (var list in table.Fields.Where(f => f.Type == List))
        {
            var owner = table.Key.Select(k => $"{Quoted(k)} TEXT NOT NULL");
            Run(connection, $"""
                CREATE TABLE {Quoted(Links(table, list))} ({string.Join(", ", owner)}, place INTEGER NOT NULL,
                item TEXT NOT NULL{References(list)}, PRIMARY KEY ({Names(table.Key)}, place),
                FOREIGN KEY ({Names(table.Key)}) REFERENCES {Quoted(Snake(table.Name))} ({Names(table.Key)}));
                """);
        }
    }

    private static void Fill(SqliteConnection connection, PackageTable table, string package)
    {
        var single = table.Fields.Where(f => f.Type != List).Select(f => f.Name).ToList();
        foreach (var row in table.Rows.Where(r => r.Package == package))
        {
            Insert(connection, Snake(table.Name), single, [.. single.Select(f => row[f])]);
            foreach (var list in table.Fields.Where(f => f.Type == List))
            {
                foreach (var (at, item) in row.Items(list.Name).Index())
                    Insert(
                        connection, Links(table, list), [.. table.Key, "place", "item"], [.. table.Key.Select(k => row[k]), at + 1, item]);
            }
        }
    }

    private static void Insert(SqliteConnection connection, string table, IReadOnlyList<string> columns, IReadOnlyList<object?> values)
    {
        using var command = connection.CreateCommand();
        var parameters = columns.Select((_, i) => "$" + i.ToString(CultureInfo.InvariantCulture)).ToList();
        command.CommandText = $"INSERT INTO {Quoted(table)} ({Names(columns)}) VALUES ({string.Join(", ", parameters)});";
        foreach (var (name, value) in parameters.Zip(values))
        {
            // A decimal would be bound as text, and a number that is a text sorts as one.
            command.Parameters.AddWithValue(name, value is decimal number ? (double)number : value ?? DBNull.Value);
        }

        command.ExecuteNonQuery();
    }

    private static void Run(SqliteConnection connection, string sql)
    {
        using var command = connection.CreateCommand();
        command.CommandText = sql;
        command.ExecuteNonQuery();
    }

    private static string Type(PackageField field) => field.Type switch
    {
        "number" => "REAL",
        "integer" => "INTEGER",
        _ => "TEXT",
    };

    private static string References(PackageField field) =>
        field.RefersTo is { } table ? $" REFERENCES {Quoted(Snake(table))} (id)" : "";

    private static string Links(PackageTable table, PackageField list) => $"{Snake(table.Name)}_{list.Name}";

    private static string Names(IEnumerable<string> columns) => string.Join(", ", columns.Select(Quoted));

    private static string Snake(string name) => new StringBuilder(name).Replace('-', '_').ToString();

    private static string Quoted(string name) => $"\"{name}\"";
}
