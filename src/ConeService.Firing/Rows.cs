using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing;

/// <summary>Finds rows by the ids that callers name.</summary>
internal static class Rows
{
    /// <summary>The row of an id.</summary>
    /// <param name="dataset">The package.</param>
    /// <param name="table">Name of the table.</param>
    /// <param name="rows">Its rows.</param>
    /// <param name="idOf">Id of a row.</param>
    /// <param name="id">The id as sent.</param>
    /// <param name="noun">What sort of thing was asked for, for the refusal.</param>
    /// <param name="list">Address of the list, for the refusal.</param>
    /// <exception cref="RefusedException">No row has the id; what it is now, or ids that are near, are named.</exception>
    public static T Find<T>(Dataset dataset, string table, IReadOnlyList<T> rows, Func<T, string> idOf, string id, string noun, string list)
        where T : class =>
        TryFind(dataset, table, rows, idOf, id) ?? throw Refuse(noun, id, rows.Select(idOf), list);

    /// <summary>The row of an id; null when no row has or had it.</summary>
    /// <exception cref="RefusedException">The row has another id now.</exception>
    public static T? TryFind<T>(Dataset dataset, string table, IReadOnlyList<T> rows, Func<T, string> idOf, string id)
        where T : class
    {
        RenamedId.Refuse(dataset, table, id, "id");
        return rows.FirstOrDefault(r => idOf(r) == id);
    }

    /// <summary>The refusal of an id that no row has.</summary>
    public static RefusedException Refuse(string noun, string id, IEnumerable<string> known, string list)
    {
        var near = NearMatches.Find(id, known);
        return new(new Finding(
            FindingCodes.NotFound, "id", id,
            // The noun chooses a branch of the sentence, whose names have no blanks.
            Message.Of("answers.not-found", ("noun", noun.Replace(' ', '-')), ("id", id)),
            Message.Verbatim(near),
            near.Count > 0
                ? Message.Of("answers.not-found-near", ("near", near[0]), ("list", list))
                : Message.Of("answers.not-found-listed", ("list", list))));
    }
}
