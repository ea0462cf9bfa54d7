using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Cones;

/// <summary>How cones behave, topic by topic.</summary>
internal static class ConeFacts
{
    /// <summary>The facts of one topic, or all.</summary>
    /// <exception cref="RefusedException">There is no such topic.</exception>
    public static ConeFactList Of(Dataset dataset, string? topic)
    {
        string[] topics = [.. dataset.ConeFacts.Select(f => f.Topic).Distinct().Order(StringComparer.Ordinal)];
        if (topic is not null && !topics.Contains(topic))
        {
            throw new RefusedException(new Finding(
                FindingCodes.TopicUnknown, "topic", topic, Message.Of("cones.topic-unknown", ("topic", topic)), Message.Verbatim(topics),
                NearMatches.Probably(topic, topics)));
        }

        return new(
            dataset.VersionId, topic, topics,
            [.. dataset.ConeFacts.Where(f => topic is null || f.Topic == topic).Select(f => Fact(f, dataset))]);
    }

    private static ConeFact Fact(ConeFactRow row, Dataset dataset) => new(
        row.Id, row.Topic, row.Statement, row.ValuePrinted, row.ValueLow, row.ValueHigh, row.Unit, row.Sources, row.Confidence, row.Note,
        Message.ToStudents(dataset, "cone-facts", row.Id));
}
