using ConeService.Contract.Answers;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;

namespace ConeService.Contract.Batches;

/// <summary>What must hold for a batch as a whole; its questions are judged one by one.</summary>
public static class BatchCheck
{
    /// <summary>Most questions of a batch.</summary>
    public const int Most = 100;

    /// <summary>Checks a batch.</summary>
    /// <param name="items">Its questions.</param>
    /// <param name="most">Most questions of such a batch.</param>
    /// <exception cref="RefusedException">There are none, or too many.</exception>
    public static void Require<T>(IReadOnlyList<T?>? items, int most = Most)
        where T : class
    {
        var check = new RequestCheck();
        Message[] allowed = [Message.Of("batches.items-allowed", ("most", most))];
        check.Require(items is { Count: > 0 }, FindingCodes.EmptyRequest, "/items", null, Message.Of("batches.no-items"), allowed);
        check.Require(
            items is null || items.Count <= most, FindingCodes.TooManyItems, "/items", null,
            Message.Of("batches.too-many-items", ("count", items?.Count)), allowed, Message.Of("batches.send-several"));
        check.Done();
    }
}
