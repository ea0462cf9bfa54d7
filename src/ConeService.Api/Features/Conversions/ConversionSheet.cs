
namespace ConeService.Api.Features.Conversions;

/// <summary>A CSV of conversions as it was sent, with the columns that are its sender's own.</summary>
/// <param name="Columns">The header: <see cref="Known"/> names in lower case, the others as sent.</param>
/// <param name="Rows">The cells of each line that is not empty, as sent; a row may have fewer cells than the header.</param>
/// <param name="Lines">The line of the file each row begins in; the header is line 1.</param>
internal sealed record ConversionSheet(
    IReadOnlyList<string> Columns, IReadOnlyList<IReadOnlyList<string>> Rows, IReadOnlyList<long> Lines)
{
    public const string Cone = "cone";
    public const string Temperature = "temperature";
    public const string Rate = "rate";
    public const string Chart = "chart";

    /// <summary>The columns that are read.</summary>
    public static IReadOnlyList<string> Known { get; } = [Cone, Temperature, Rate, Chart];

    /// <summary>Where a column stands; null when the file has none of that name.</summary>
    public int? Place(string column)
    {
        for (var i = 0; i < Columns.Count; i++)
        {
            if (Columns[i] == column) return i;
        }

        return null;
    }

    /// <summary>The columns that are only carried through.</summary>
    public IReadOnlyList<string> Carried => [.. Columns.Where(c => !Known.Contains(c))];
}
