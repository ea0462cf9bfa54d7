using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing;

/// <summary>Tells callers who name a row by an id that it had before what its id is now.</summary>
internal static class RenamedId
{
    /// <summary>What is wrong with an id in a body or a query; null when the row never had another.</summary>
    /// <param name="dataset">The package.</param>
    /// <param name="table">Name of the table.</param>
    /// <param name="id">The id as sent.</param>
    /// <param name="field">The parameter or JSON pointer.</param>
    public static Finding? Of(Dataset dataset, string table, string id, string field) =>
        Of(FindingCodes.RenamedValue, dataset, table, id, field);

    /// <summary>Refuses an id in a path that the row had before.</summary>
    /// <param name="dataset">The package.</param>
    /// <param name="table">Name of the table.</param>
    /// <param name="id">The id as sent.</param>
    /// <param name="parameter">Name of the parameter of the path.</param>
    /// <exception cref="RefusedException">The row has another id now, which the finding names.</exception>
    public static void Refuse(Dataset dataset, string table, string id, string parameter)
    {
        if (Of(FindingCodes.Renamed, dataset, table, id, parameter) is { } finding) throw new RefusedException(finding);
    }

    private static Finding? Of(string code, Dataset dataset, string table, string id, string field)
    {
        var current = dataset.CurrentId(table, id);
        return current == id ? null : new(
            code, field, id, Message.Of("answers.renamed", ("old", id), ("now", current)), Message.Verbatim([current]),
            Message.Of("answers.write", ("text", current)));
    }
}
