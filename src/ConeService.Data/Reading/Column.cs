namespace ConeService.Data;

/// <summary>What the service needs a field to be. Columns are declared by <see cref="RowColumns"/>.</summary>
internal sealed record Column(string Name, FieldType Type, bool Required)
{
    /// <summary>The words a field may use at most, when each of them has a meaning in code.</summary>
    public IReadOnlyList<string>? Words { get; init; }

    /// <summary>
    /// The table whose <c>id</c> the field must be declared to refer to: code follows the reference without looking back.
    /// </summary>
    public string? RefersTo { get; init; }

    /// <summary>The minor version of the package that brought the column; null when it was there from the start.</summary>
    public Version? Since { get; init; }

    /// <summary>The column whose place in the key this one has taken; null for most.</summary>
    public string? InsteadOf { get; init; }

    /// <summary>True where a package of any version may do without the column: no row of its table has anything to say in it.</summary>
    public bool MayBeLeftOut { get; init; }

    /// <summary>True for the rank of a cone, which stands beside it and never in a key.</summary>
    public bool IsRank { get; init; }

    /// <summary>Name of the column that holds the rank of the cone in another.</summary>
    public static string RankOf(string cone) => cone + "_rank";

    /// <summary>The cell of a row that was written before the column was there, from its other cells by name.</summary>
    public Func<Func<string, string>, string> Absent { get; init; } = static _ => "";

    /// <summary>Whether a package of this version may do without the column.</summary>
    public bool MayBeAbsent(Version? version) => MayBeLeftOut || version < Since;

    /// <summary>
    /// The field of a table that was written before the column was there. What fills it comes from code, so nothing is checked.
    /// </summary>
    public FieldSchema AbsentField() =>
        new(Name, Type, "", null, null, new FieldConstraints(false, false, null, null, null, null, null), ';', null);

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
