namespace ConeService.Data;

/// <summary>Values of one row by field name. Only for rows of sound tables whose shape was checked.</summary>
internal readonly struct RowReader(TableSchema schema, TableRow row)
{
    public string Text(string field) => (string)Value(field)!;

    public string? OptionalText(string field) => (string?)Value(field);

    public decimal Number(string field) => (decimal)Value(field)!;

    public decimal? OptionalNumber(string field) => (decimal?)Value(field);

    public int? OptionalInteger(string field) => (int?)Value(field);

    public IReadOnlyList<string> List(string field) => (string[])Value(field)!;

    public Confidence Confidence(string field) => ConfidenceWords.All[Text(field)];

    private object? Value(string field) => row.Values[schema.IndexOf(field)];
}
