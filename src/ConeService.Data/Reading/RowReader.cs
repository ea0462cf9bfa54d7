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

    /// <summary>A list that may be blank: no items then.</summary>
    public IReadOnlyList<string> OptionalList(string field) => (string[]?)Value(field) ?? [];

    public T Word<T>(string field)
        where T : struct, Enum => EnumWords.Of<T>(Text(field));

    public T? OptionalWord<T>(string field)
        where T : struct, Enum => OptionalText(field) is { } word ? EnumWords.Of<T>(word) : null;

    /// <summary>A list of words; no items when blank.</summary>
    public IReadOnlyList<T> Words<T>(string field)
        where T : struct, Enum => [.. OptionalList(field).Select(EnumWords.Of<T>)];

    public Confidence Confidence(string field) => ConfidenceWords.All[Text(field)];

    private object? Value(string field) => row.Values[schema.IndexOf(field)];
}
