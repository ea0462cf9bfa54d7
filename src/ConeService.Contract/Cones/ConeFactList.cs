using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Contract.Cones;

/// <summary>What is known of how cones behave.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Topic">The topic asked for; null for all.</param>
/// <param name="Topics">Every topic there is.</param>
/// <param name="Facts">The facts, one statement each, with source and confidence.</param>
public sealed record ConeFactList(string DatasetVersion, string? Topic, IReadOnlyList<string> Topics, IReadOnlyList<ConeFactRow> Facts)
{
    /// <summary>The facts of one topic, or all.</summary>
    /// <exception cref="RefusedException">There is no such topic.</exception>
    public static ConeFactList Of(Dataset dataset, string? topic)
    {
        string[] topics = [.. dataset.ConeFacts.Select(f => f.Topic).Distinct().Order(StringComparer.Ordinal)];
        if (topic is not null && !topics.Contains(topic))
        {
            throw new RefusedException(new Finding(
                "topic-unknown", "topic", topic, $"There is no topic “{topic}”.", [.. topics],
                NearMatches.Find(topic, topics) is [var near, ..] ? $"Probably {near}." : null));
        }

        return new(dataset.VersionId, topic, topics, [.. dataset.ConeFacts.Where(f => topic is null || f.Topic == topic)]);
    }
}
