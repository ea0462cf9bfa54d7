using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Batches;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing.Reading;

namespace ConeService.Firing;

/// <summary>Answers several questions one by one: a refused one gets its problems, the others their answers.</summary>
internal static class Batch
{
    /// <summary>Answers every question.</summary>
    /// <typeparam name="TItem">A question.</typeparam>
    /// <typeparam name="TAnswer">Its answer.</typeparam>
    /// <param name="datasetVersion">Version of the data package.</param>
    /// <param name="items">The questions; the batch as a whole must be valid (<see cref="BatchCheck"/>).</param>
    /// <param name="answer">Answers one.</param>
    /// <param name="shared">Members that stand beside the questions and not in each.</param>
    public static BatchAnswer<TAnswer> Answer<TItem, TAnswer>(
        string datasetVersion, IReadOnlyList<TItem?> items, Func<TItem, TAnswer> answer, params string[] shared)
        where TItem : class
        where TAnswer : class
    {
        var budget = new FindingBudget();
        var results = items.Patiently().Select((item, i) => Listed(One(item, i, answer, shared), budget)).ToList();
        var answered = results.Count(r => r.Answer is not null);
        return new(datasetVersion, answered, results.Count - answered, results);
    }

    private static BatchResult<TAnswer> Listed<TAnswer>(BatchResult<TAnswer> result, FindingBudget budget)
        where TAnswer : class
    {
        var (listed, more) = budget.Share(result.Problems);
        return result with { Problems = listed, MoreProblems = more };
    }

    private static BatchResult<TAnswer> One<TItem, TAnswer>(TItem? item, int index, Func<TItem, TAnswer> answer, string[] shared)
        where TItem : class
        where TAnswer : class
    {
        var at = string.Create(CultureInfo.InvariantCulture, $"/items/{index}");
        if (item is null)
        {
            return new(index + 1, null, [new(
                FindingCodes.MemberMissing, at, null, Message.Of("batches.item-null"), [Message.Of("batches.item-allowed")])]);
        }

        try
        {
            return new(index + 1, answer(item), []);
        }
        catch (RefusedException refused)
        {
            return new(index + 1, null, [.. refused.Findings.Select(f => f with { Field = Pointer(f.Field, at, shared) })]);
        }
    }

    // The whole of a question is “/” or empty; what a question shares with the others stands once, beside them.
    private static string Pointer(string field, string at, string[] shared)
    {
        if (field is "" or "/") return at;
        var pointer = field[0] == '/' ? field : "/" + field;
        return shared.Contains(pointer.Split('/')[1], StringComparer.Ordinal) ? pointer : at + pointer;
    }
}
