using ConeService.Contract.Loads;
using ConeService.Data;

namespace ConeService.Firing.Materials;

/// <summary>Where sources contradict each other, by the rows that it concerns.</summary>
internal sealed class DisagreementIndex
{
    private readonly ILookup<string, Disagreement> byRow;

    /// <summary>Indexes the disagreements of a data package.</summary>
    public DisagreementIndex(Dataset dataset)
    {
        All = [.. dataset.Disagreements.Select(Answer)];
        byRow = All.SelectMany(d => d.Concerns.Select(row => (row, d))).ToLookup(x => x.row, x => x.d, StringComparer.Ordinal);
    }

    /// <summary>All of them, in the order of the data package.</summary>
    public IReadOnlyList<Disagreement> All { get; }

    /// <summary>Those that concern a row.</summary>
    public IReadOnlyList<Disagreement> Concerning(string table, string id) => [.. byRow[$"{table}/{id}"]];

    /// <summary>Those that concern any row of some tables.</summary>
    public IReadOnlyList<Disagreement> ConcerningAny(params string[] tables) =>
        [.. All.Where(d => d.Concerns.Any(row => tables.Contains(row.Split('/')[0])))];

    private static Disagreement Answer(DisagreementRow row) => new(
        Id: row.Id,
        Name: row.Topic,
        Concerns: row.Concerns,
        PositionA: row.PositionA,
        SourceA: row.SourceA,
        PositionB: row.PositionB,
        SourceB: row.SourceB,
        Comment: row.Comment,
        Adopted: row.Adopted,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);
}
