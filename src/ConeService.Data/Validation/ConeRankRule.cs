using System.Globalization;

namespace ConeService.Data;

/// <summary>
/// The rank beside a cone is the position of that cone in the table of cones, so that a table that was joined or sorted by it can't
/// take cone 06 for cone 6. A correction of a cone corrects its rank too.
/// </summary>
internal sealed class ConeRankRule : IPackageRule
{
    private static readonly IReadOnlyList<TypedTable> Ranked = [.. TypedTables.All.Where(t => t.Columns.Any(c => c.IsRank))];

    // By the text of the cone and not by the row of cones: what is wrong there is told there, and once.
    public IReadOnlyList<string> Reads => [];

    // A table with faults is passed over by itself: the others are judged nevertheless.
    public IEnumerable<PackageFault> Check(PackageContent content) =>
        Ranked.Where(t => content.Sound(t.Name)).SelectMany(t => Check(content.Tables[t.Name], t));

    private static IEnumerable<PackageFault> Check(MergedTable table, TypedTable typed)
    {
        foreach (var column in typed.Columns.Where(c => typed.Columns.Any(r => r.IsRank && r.Name == Column.RankOf(c.Name))))
        {
            var rank = Column.RankOf(column.Name);
            var (cone, at) = (table.Schema.IndexOf(column.Name), table.Schema.IndexOf(rank));
            foreach (var (part, row) in table.Rows)
            {
                decimal? expected = row.Values[cone] is string text ? ConeNumber.Parse(text)?.Position : null;
                if ((decimal?)row.Values[at] == expected)
                    continue;
                yield return new(part.Package, part.Schema.Path, row.Line, rank, FaultRules.ConeRank, string.Create(
                    CultureInfo.InvariantCulture,
                    $"is {Shown(row.Cells[at])}; for the cone {Shown(row.Cells[cone])} in {column.Name} it must be "
                    + $"{expected?.ToString(CultureInfo.InvariantCulture) ?? "blank"}, its position in cones"));
            }
        }
    }

    private static string Shown(string cell) => cell.Length == 0 ? "blank" : cell;
}
