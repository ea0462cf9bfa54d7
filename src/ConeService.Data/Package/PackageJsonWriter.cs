using System.Text.Encodings.Web;
using System.Text.Json;

namespace ConeService.Data;

/// <summary>A data package as one JSON document.</summary>
public static class PackageJsonWriter
{
    private static readonly JsonWriterOptions Written = new() { Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping, Indented = false };

    /// <summary>
    /// <c>name</c>, <c>version</c>, <c>title</c>, <c>license</c>, and <c>tables</c> with the rows of each under its name: an object a
    /// row, numbers as numbers, lists as lists. Corrections are applied; rows of overlays are left out.
    /// </summary>
    /// <param name="dataset">The package.</param>
    public static byte[] Write(Dataset dataset)
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Written))
        {
            json.WriteStartObject();
            json.WriteString("name", dataset.Name);
            json.WriteString("version", dataset.BaseVersion);
            json.WriteString("title", dataset.Title);
            json.WriteString("license", dataset.License);
            json.WriteStartObject("tables");
            foreach (var table in dataset.Tables) Table(json, table, dataset.Name);
            json.WriteEndObject();
            json.WriteEndObject();
        }

        return bytes.ToArray();
    }

    private static void Table(Utf8JsonWriter json, PackageTable table, string package)
    {
        json.WriteStartArray(table.Name);
        foreach (var row in table.Rows.Where(r => r.Package == package))
        {
            json.WriteStartObject();
            foreach (var field in table.Fields) Value(json, field.Name, row[field.Name]);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static void Value(Utf8JsonWriter json, string name, object? value)
    {
        json.WritePropertyName(name);
        switch (value)
        {
            case null: json.WriteNullValue(); break;
            case decimal number: json.WriteNumberValue(number); break;
            case int number: json.WriteNumberValue(number); break;
            case string text: json.WriteStringValue(text); break;
            default:
                json.WriteStartArray();
                foreach (var item in (string[])value) json.WriteStringValue(item);
                json.WriteEndArray();
                break;
        }
    }
}
