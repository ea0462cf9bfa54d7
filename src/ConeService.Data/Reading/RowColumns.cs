using System.Globalization;

namespace ConeService.Data;

/// <summary>
/// The columns of a table, each named once, where its value goes into the row: the expression that makes a row declares the
/// columns when the table is defined, and reads them in the same order from every row. It must name the same columns whatever
/// the values are, so it is a constructor call and nothing else.
/// </summary>
internal sealed class RowColumns
{
    private readonly List<Column>? _declared;
    private readonly int[] _places;
    private object?[] _values = [];
    private int _next;
    private Version? _since;
    private Func<Func<string, string>, string>? _absent;
    private bool _mayBeLeftOut;

    private RowColumns(List<Column>? declared, int[] places) => (_declared, _places) = (declared, places);

    /// <summary>The columns that a row's expression names, in its order.</summary>
    public static IReadOnlyList<Column> Declare<T>(Func<RowColumns, T> bind)
    {
        var declared = new List<Column>();
        bind(new RowColumns(declared, []));
        return declared.Select(c => c.Name).Distinct(StringComparer.Ordinal).Count() == declared.Count
            ? declared
            : throw new InvalidOperationException($"A column of {typeof(T).Name} is named twice.");
    }

    /// <summary>
    /// A reader of rows of which each column stands at the place given. Only for rows of sound tables whose shape was checked.
    /// </summary>
    public static RowColumns Reader(int[] places) => new(null, places);

    /// <summary>Makes the row out of these values.</summary>
    public T Read<T>(TableRow row, Func<RowColumns, T> bind)
    {
        (_values, _next) = (row.Values, 0);
        return bind(this);
    }

    /// <summary>The next column came with a minor version of the package; an older one may lack it.</summary>
    /// <param name="major">Major version.</param>
    /// <param name="minor">Minor version.</param>
    /// <param name="absent">The cell that an older row is read with, from its other cells by name; blank when null.</param>
    public RowColumns Since(int major, int minor, Func<Func<string, string>, string>? absent = null)
    {
        if (_declared is not null)
            (_since, _absent) = (new Version(major, minor), absent);
        return this;
    }

    /// <summary>The next column may be left out by a package of any version.</summary>
    public RowColumns LeftOut()
    {
        _mayBeLeftOut = _declared is not null;
        return this;
    }

    public string Text(string name) => Declares(name, FieldType.String, true) ? "" : (string)Next()!;

    public string? OptionalText(string name) => Declares(name, FieldType.String, false) ? null : (string?)Next();

    public decimal Number(string name) => Declares(name, FieldType.Number, true) ? 0 : (decimal)Next()!;

    public decimal? OptionalNumber(string name) => Declares(name, FieldType.Number, false) ? null : (decimal?)Next();

    public int Integer(string name) => Declares(name, FieldType.Integer, true) ? 0 : (int)Next()!;

    public int? OptionalInteger(string name) => Declares(name, FieldType.Integer, false) ? null : (int?)Next();

    /// <summary>Items, at least one.</summary>
    public IReadOnlyList<string> List(string name) => Declares(name, FieldType.List, true) ? [] : (string[])Next()!;

    /// <summary>Items; none when blank.</summary>
    public IReadOnlyList<string> OptionalList(string name) => Declares(name, FieldType.List, false) ? [] : (string[]?)Next() ?? [];

    /// <summary>The id of a row of another table.</summary>
    public string Reference(string name, string table) => Declares(name, FieldType.String, true, table) ? "" : (string)Next()!;

    public string? OptionalReference(string name, string table) => Declares(name, FieldType.String, false, table) ? null : (string?)Next();

    /// <summary>
    /// A cone and, since 1.6, its rank in a column of its own beside it. A row carries the cone alone: the rank says the same once
    /// more, for whoever joins or sorts the file (<see cref="ConeRankRule"/>).
    /// </summary>
    public string Cone(string name)
    {
        var cone = Reference(name, "cones");
        Since(1, 6, absent: RankOf(name, "0")).Rank(name, required: true);
        return cone;
    }

    /// <summary>The same, where the cone may be blank: so is its rank then.</summary>
    public string? OptionalCone(string name)
    {
        var cone = OptionalReference(name, "cones");
        Since(1, 6, absent: RankOf(name, "")).Rank(name, required: false);
        return cone;
    }

    /// <summary>A text that is a part of the key in the place of another column, which was that part in earlier packages.</summary>
    /// <param name="name">Name of the column.</param>
    /// <param name="insteadOf">The column whose place it has taken.</param>
    public string KeyText(string name, string insteadOf)
    {
        var text = Text(name);
        if (_declared is not null)
            _declared[^1] = _declared[^1] with { InsteadOf = insteadOf };
        return text;
    }

    /// <summary>Ids of rows of another table, at least one.</summary>
    public IReadOnlyList<string> ReferenceList(string name, string table) =>
        Declares(name, FieldType.List, true, table) ? [] : (string[])Next()!;

    public IReadOnlyList<string> OptionalReferenceList(string name, string table) =>
        Declares(name, FieldType.List, false, table) ? [] : (string[]?)Next() ?? [];

    /// <summary>One of a few words that have no type of their own.</summary>
    public string OneOf(string name, params ReadOnlySpan<string> words) =>
        Declares(name, FieldType.String, true, null, words) ? "" : (string)Next()!;

    /// <summary>A word of a closed vocabulary.</summary>
    /// <param name="name">Name of the column.</param>
    /// <param name="of">The words that the column may hold; null: every one of the vocabulary.</param>
    public T Word<T>(string name, IReadOnlyList<T>? of = null)
        where T : struct, Enum => Declares(name, FieldType.String, true, of) ? default : EnumWords.Of<T>((string)Next()!);

    public T? OptionalWord<T>(string name, IReadOnlyList<T>? of = null)
        where T : struct, Enum =>
        !Declares(name, FieldType.String, false, of) && Next() is string word ? EnumWords.Of<T>(word) : null;

    /// <summary>Words of a closed vocabulary, at least one.</summary>
    public IReadOnlyList<T> WordList<T>(string name, IReadOnlyList<T>? of = null)
        where T : struct, Enum => Declares(name, FieldType.List, true, of) ? [] : Words<T>();

    public IReadOnlyList<T> OptionalWordList<T>(string name, IReadOnlyList<T>? of = null)
        where T : struct, Enum => Declares(name, FieldType.List, false, of) ? [] : Words<T>();

    /// <summary>The sources of a row, each an id of the bibliography.</summary>
    public IReadOnlyList<string> SourceList() => ReferenceList("source", "sources");

    /// <summary>The one source of a row.</summary>
    public string Source() => Reference("source", "sources");

    public Confidence Confidence(string name = "confidence") => Word<Confidence>(name);

    /// <summary>
    /// What a row says of its evidence beyond source and confidence. Tables of which no row says any may do without the columns.
    /// </summary>
    public RowEvidence Evidence()
    {
        var locator = Since(1, 7).LeftOut().OptionalText("locator");
        return RowEvidence.Read(locator, Since(1, 7).LeftOut().OptionalList("value_confidence"));
    }

    // What is no cone is a fault of the cone's own cell; its rank must not be a second one.
    private static Func<Func<string, string>, string> RankOf(string name, string otherwise) => cell =>
        ConeNumber.Parse(cell(name))?.Position.ToString(CultureInfo.InvariantCulture) ?? otherwise;

    private void Rank(string name, bool required)
    {
        if (Declares(Column.RankOf(name), FieldType.Number, required))
            _declared![^1] = _declared[^1] with { IsRank = true };
        else
            _next++;
    }

    private T[] Words<T>()
        where T : struct, Enum
    {
        if (Next() is not string[] items)
            return [];
        var words = new T[items.Length];
        for (var i = 0; i < items.Length; i++)
            words[i] = EnumWords.Of<T>(items[i]);
        return words;
    }

    private object? Next() => _values[_places[_next++]];

    private bool Declares<T>(string name, FieldType type, bool required, IReadOnlyList<T>? of)
        where T : struct, Enum =>
        _declared is not null && Declares(name, type, required, null, [.. EnumWords.All(of)]);

    /// <summary>True while the table is being defined: there is no value yet.</summary>
    private bool Declares(string name, FieldType type, bool required, string? table = null, ReadOnlySpan<string> words = default)
    {
        if (_declared is null)
            return false;
        var column = new Column(name, type, required)
        {
            RefersTo = table,
            Words = words.IsEmpty ? null : words.ToArray(),
            Since = _since,
            MayBeLeftOut = _mayBeLeftOut,
        };
        _declared.Add(_absent is null ? column : column with { Absent = _absent });
        (_since, _absent, _mayBeLeftOut) = (null, null, false);
        return true;
    }
}
