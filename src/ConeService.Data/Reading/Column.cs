namespace ConeService.Data;

/// <summary>What the service needs a field to be.</summary>
internal sealed record Column(string Name, FieldType Type, bool Required)
{
    /// <summary>The words a field may use at most, when each of them has a meaning in code.</summary>
    public IReadOnlyList<string>? Words { get; init; }

    /// <summary>The table whose <c>id</c> the field must be declared to refer to: code follows the reference without looking back.</summary>
    public string? RefersTo { get; init; }

    public static Column Text(string name) => new(name, FieldType.String, true);

    /// <summary>A text that names a row of another table by its id.</summary>
    public static Column Reference(string name, string table) => Text(name) with { RefersTo = table };

    public static Column OptionalText(string name) => new(name, FieldType.String, false);

    public static Column Number(string name) => new(name, FieldType.Number, true);

    public static Column OptionalNumber(string name) => new(name, FieldType.Number, false);

    public static Column OptionalInteger(string name) => new(name, FieldType.Integer, false);

    public static Column OptionalReference(string name, string table) => OptionalText(name) with { RefersTo = table };

    /// <summary>A text that is one of the words of an enum.</summary>
    public static Column Word<T>(string name)
        where T : struct, Enum => Text(name) with { Words = EnumWords.All<T>() };

    public static Column OptionalWord<T>(string name)
        where T : struct, Enum => OptionalText(name) with { Words = EnumWords.All<T>() };

    /// <summary>A list of words of an enum, at least one.</summary>
    public static Column WordList<T>(string name)
        where T : struct, Enum => new(name, FieldType.List, true) { Words = EnumWords.All<T>() };

    public static Column OptionalWordList<T>(string name)
        where T : struct, Enum => new(name, FieldType.List, false) { Words = EnumWords.All<T>() };

    /// <summary>A list of ids of another table, at least one.</summary>
    public static Column ReferenceList(string name, string table) => new(name, FieldType.List, true) { RefersTo = table };

    public static Column OptionalReferenceList(string name, string table) => new(name, FieldType.List, false) { RefersTo = table };

    public static Column List(string name) => new(name, FieldType.List, true);

    public static Column OptionalList(string name) => new(name, FieldType.List, false);

    /// <summary>The sources of a row, each an id of the bibliography.</summary>
    public static Column SourceList() => new("source", FieldType.List, true) { RefersTo = "sources" };

    public static Column Source() => Reference("source", "sources");

    public static Column Confidence() => new("confidence", FieldType.String, true) { Words = [.. ConfidenceWords.All.Keys] };

    /// <summary>Why a described field cannot fill this column, or null.</summary>
    public string? Objection(TableSchema table, FieldSchema field)
    {
        if (field.Type != Type)
            return $"is of type {field.Type.Word()}; the service reads {Type.Word()}";
        if (Required && !field.Constraints.Required)
            return "may be blank; the service needs a value";
        if (RefersTo is not null && !Refers(table, field))
            return $"does not refer to {RefersTo}.id; the service follows this reference";
        if (Words is null || field.Constraints.Enum?.All(Words.Contains) == true)
            return null;
        return $"allows other words than {string.Join(", ", Words)}; the service knows only these";
    }

    private bool Refers(TableSchema table, FieldSchema field) =>
        field.Type == FieldType.List
            ? field.ItemReference == new ItemReference(RefersTo!, "id")
            : table.ForeignKeys.Any(k => k is { Fields: [var only], References: ["id"] } && only == Name && k.Table == RefersTo);
}
