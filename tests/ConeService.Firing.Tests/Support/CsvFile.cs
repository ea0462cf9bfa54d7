using Microsoft.VisualBasic.FileIO;

namespace ConeService.Firing.Tests.Support;

/// <summary>Reads a CSV beside the tests with the framework's own parser, not the one the service uses.</summary>
internal static class CsvFile
{
    public static List<Dictionary<string, string>> Read(string path)
    {
        using var parser = new TextFieldParser(Path.Combine(AppContext.BaseDirectory, path))
        {
            TextFieldType = FieldType.Delimited,
            Delimiters = [","],
            HasFieldsEnclosedInQuotes = true,
            TrimWhiteSpace = false,
        };
        var header = parser.ReadFields()!;
        var rows = new List<Dictionary<string, string>>();
        while (!parser.EndOfData) rows.Add(header.Zip(parser.ReadFields()!).ToDictionary(p => p.First, p => p.Second));
        return rows;
    }
}
