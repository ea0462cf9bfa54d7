using System.Globalization;
using System.Text.Json;
using ConeService.Contract.Cones;
using CsvHelper;

namespace ConeService.Api.Http;

/// <summary>
/// A list as CSV, one item a line: the same members as in JSON, under their names in snake case. A member of an object inside an
/// item is <c>owner_member</c>; items of a list inside one stand in one cell with semicolons between them, and objects there as
/// <c>member=value</c>. A cone is written <c>cone 06</c>. The last column is the version of the data package. What stands beside
/// the items in JSON is not in the CSV.
/// </summary>
internal static class ListCsv
{
    private const string Items = "items";
    private const string Version = "datasetVersion";
    private const string Between = "; ";

    /// <summary>An answer of JSON as CSV.</summary>
    /// <param name="answer">The answer: an object with a list of objects.</param>
    /// <param name="list">Name of the list where it is not <c>items</c>.</param>
    /// <param name="every">A column that is the same in every line, such as the chart of its end points.</param>
    /// <param name="columnsOf">The answer whose items have the columns; null: the answer itself.</param>
    public static PreparedBody Body<T>(T answer, string? list = null, (string Name, string Value)? every = null, T? columnsOf = null)
        where T : class
    {
        using var json = JsonDocument.Parse(JsonBody.Bytes(answer));
        using var whole = JsonDocument.Parse(JsonBody.Bytes(columnsOf ?? answer));
        return PreparedBody.Text(Write(json.RootElement, whole.RootElement, list, every), Csv.MediaType, negotiated: true);
    }

    private static string Write(JsonElement answer, JsonElement whole, string? list, (string Name, string Value)? every)
    {
        var columns = new ListColumns();
        foreach (var item in whole.GetProperty(list ?? Items).EnumerateArray()) columns.Add(item);
        using var text = new StringWriter(CultureInfo.InvariantCulture);
        using var csv = CsvWriter.Create(text, Csv.Writing, leaveOpen: true);
        string[] before = every is { } e ? [e.Name] : [];
        csv.WriteRecord([.. before, .. columns.Names, JsonNamingPolicy.SnakeCaseLower.ConvertName(Version)]);
        foreach (var item in answer.GetProperty(list ?? Items).EnumerateArray())
        {
            if (every is { } same) csv.WriteField(same.Value);
            foreach (var path in columns.Paths) csv.WriteField(Cell(item, path));
            csv.WriteField(answer.GetProperty(Version).GetString());
            csv.EndRecord();
        }

        csv.Flush();
        return text.ToString();
    }

    private static string? Cell(JsonElement item, IReadOnlyList<string> path)
    {
        var owner = default(JsonElement);
        var value = item;
        foreach (var name in path)
        {
            owner = value;
            if (value.ValueKind != JsonValueKind.Object || !value.TryGetProperty(name, out value)) return null;
        }

        return Csv.Inert(Text(value, path[^1], owner));
    }

    private static string? Text(JsonElement value, string name, JsonElement owner) => value.ValueKind switch
    {
        JsonValueKind.Null => null,
        JsonValueKind.String => Word(value.GetString()!, name, owner),
        JsonValueKind.Array => string.Join(Between, value.EnumerateArray().Select(i => Text(i, name, owner))),
        JsonValueKind.Object => string.Join(' ', value.EnumerateObject()
            .Where(m => m.Value.ValueKind != JsonValueKind.Null)
            .Select(m => $"{JsonNamingPolicy.SnakeCaseLower.ConvertName(m.Name)}={Text(m.Value, m.Name, value)}")),
        _ => value.GetRawText(),
    };

    private static string Word(string text, string name, JsonElement owner)
    {
        if (IsCone(text) && NamesCones(name, owner)) return Csv.Cone(text)!;
        // A fact on cones gives its value as the source does: 05-3 would be a day in May.
        return owner.TryGetProperty("unit", out var unit) && unit.ValueKind == JsonValueKind.String
            && unit.GetString()!.StartsWith("cone", StringComparison.Ordinal) && char.IsDigit(text[0]) && name != "unit"
            ? $"cones {text}" : text;
    }

    private static bool IsCone(string text) => ConeSpelling.TryRead(text, out var cone, out _) && cone.ToString() == text;

    // Numbers are numbers in JSON, so a range of texts that are cones is a range of cones; and an item all of whose names are
    // those of a cone is the cone itself.
    private static bool NamesCones(string name, JsonElement owner) =>
        name.Contains("cone", StringComparison.OrdinalIgnoreCase)
        || name is "min" or "best" or "max" or "previous" or "next"
        || (name is "id" or "name" && owner.TryGetProperty("wholeStep", out _));
}
