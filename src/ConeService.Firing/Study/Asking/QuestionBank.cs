using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Problems;
using ConeService.Contract.Study;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Study.Asking;

/// <summary>Questions of a data package. Immutable.</summary>
internal sealed class QuestionBank
{
    private const int UsualCount = 10;
    private const int MostQuestions = 100;
    private const int UsualSeed = 1;
    private const int GreatestSeed = 1_000_000;

    private readonly string version;
    private readonly IReadOnlyList<QuestionDraft> drafts;
    private readonly IReadOnlyList<string> topics;

    /// <summary>Makes the questions that a package can answer.</summary>
    public QuestionBank(Dataset data, string chart)
    {
        var evidenced = new Evidenced(data);
        version = data.VersionId;
        drafts = [.. new ConeQuestions(data, evidenced, chart).All(), .. new PracticeQuestions(data, evidenced).All()];
        topics = [.. drafts.Select(d => d.Topic).Distinct(StringComparer.Ordinal)];
    }

    /// <summary>Draws questions; fewer than asked for where the topic has fewer.</summary>
    /// <exception cref="RefusedException">A topic is unknown, or a number is none of those allowed; carries every finding.</exception>
    public QuestionList Draw(string? topic, string? count, string? seed)
    {
        var (findings, assumed) = (new List<Finding>(), new List<Assumption>());
        if (topic is not null && !topics.Contains(topic))
        {
            findings.Add(new(
                FindingCodes.TopicUnknown, "topic", topic, Message.Of("cones.topic-unknown", ("topic", topic)), Message.Verbatim(topics),
                NearMatches.Probably(topic, topics)));
        }

        var most = Number("count", count, MostQuestions, UsualCount, findings, assumed);
        var by = Number("seed", seed, GreatestSeed, UsualSeed, findings, assumed);
        if (findings.Count > 0) throw new RefusedException(findings);
        var drawing = new Drawing(by);
        // One topic after another, so that a short sheet has something of each.
        var byTopic = topics.Where(t => topic is null || t == topic)
            .Select(t => drawing.Shuffle(drafts.Where(d => d.Topic == t))).ToList();
        var drawn = Enumerable.Range(0, byTopic.Select(t => t.Count).DefaultIfEmpty().Max())
            .SelectMany(i => byTopic.Where(t => i < t.Count).Select(t => t[i])).Take(most);
        return new(
            version, topic, topics, by.ToString(CultureInfo.InvariantCulture), [.. drawn.Select(d => Asked(d, drawing))], assumed);
    }

    private static Question Asked(QuestionDraft draft, Drawing drawing)
    {
        var choices = drawing.Shuffle(draft.Wrong.Prepend(draft.Right))
            .Select((text, i) => new Choice(((char)('A' + i)).ToString(), text)).ToList();
        return new(
            $"{draft.Topic}-{draft.About.Replace('.', '-')}", draft.Stem, draft.Topic, choices,
            choices.First(c => c.Text == draft.Right).Letter, draft.Why, draft.Sources, draft.Confidence,
            TableAddress.Of(draft.Table, draft.Key));
    }

    private static int Number(string name, string? sent, int most, int usual, List<Finding> findings, List<Assumption> assumed)
    {
        if (sent is null)
        {
            var text = usual.ToString(CultureInfo.InvariantCulture);
            assumed.Add(new(name, text, Message.Of("questions.assumed", ("name", name))));
            return usual;
        }

        if (int.TryParse(sent, NumberStyles.None, CultureInfo.InvariantCulture, out var number) && number >= 1 && number <= most)
            return number;

        findings.Add(new(
            FindingCodes.NumberOutOfRange, name, sent, Message.Of("questions.number", ("name", name), ("most", most)),
            Message.Verbatim(["1", most.ToString(CultureInfo.InvariantCulture)])));
        return usual;
    }
}
