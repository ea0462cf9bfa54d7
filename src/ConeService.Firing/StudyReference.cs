using ConeService.Contract.Answers;
using ConeService.Contract.Study;
using ConeService.Data;
using ConeService.Firing.Practice;
using ConeService.Firing.Study;
using ConeService.Firing.Study.Asking;
using ConeService.Firing.Study.Searching;

namespace ConeService.Firing;

/// <summary>What learners look up: faults of ware, landmarks of a firing, terms of the trade.</summary>
public sealed class StudyReference
{
    private const int MostHits = 20;

    private readonly Dataset data;
    private readonly CautionIndex cautions;
    private readonly ILookup<string, FaultCauseRow> causes;
    private readonly ConeReference cones;
    private readonly SearchIndex index;
    private readonly QuestionBank bank;

    internal StudyReference(Dataset dataset, ConeReference cones)
    {
        (data, this.cones, cautions, index) = (dataset, cones, new(dataset), new(dataset));
        bank = new(dataset, cones.DefaultChart);
        causes = dataset.FaultCauses.ToLookup(c => c.Fault, StringComparer.Ordinal);
    }

    /// <summary>The faults of ware, or those that show at a stage of the work.</summary>
    /// <param name="stage">The stage, such as opening; null for all.</param>
    /// <exception cref="RefusedException">No fault has such a word.</exception>
    public FaultList Faults(string? stage = null)
    {
        var filter = new RowFilter();
        var kept = filter.Keep(data.Faults, stage, "stage", r => r.Stages.Select(EnumWords.Word));
        filter.ThrowAny();
        return new(data.VersionId, [.. kept.Select(r => StudyAnswers.Of(r, causes[r.Id]))]);
    }

    /// <summary>A fault with its causes, the gases that feed it, and what belongs to it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public FaultDetail Fault(string id)
    {
        var fault = Rows.Find(data, "faults", data.Faults, r => r.Id, id, "fault", "/v1/faults");
        var landmarks = causes[fault.Id].SelectMany(c => c.Landmarks).ToHashSet(StringComparer.Ordinal);
        return new(
            data.VersionId,
            StudyAnswers.Of(fault, causes[fault.Id]),
            FaultLinks(data.Faults.Where(f => fault.Unlike.Contains(f.Id))),
            cautions.Links(fault.Cautions),
            [.. data.Landmarks.Where(l => landmarks.Contains(l.Id)).Select(l => Link("landmarks", l.Id, l.Landmark))])
        {
            GasReleases = [.. data.GasReleases.Where(g => g.Faults.Contains(fault.Id)).Select(StudyAnswers.Of)],
            Oxides = [.. data.OxideExpansions.Where(o => o.FaultOfMore == fault.Id).Select(StudyAnswers.Of)],
        };
    }

    /// <summary>The landmarks of a firing, or those of a phase.</summary>
    /// <param name="phase">heating, cooling, either or look; null for all.</param>
    /// <exception cref="RefusedException">No landmark has such a word.</exception>
    public LandmarkList Landmarks(string? phase = null)
    {
        var filter = new RowFilter();
        var kept = filter.Keep(data.Landmarks, phase, "phase", r => [EnumWords.Word(r.Phase)]);
        filter.ThrowAny();
        return new(data.VersionId, Notices.LocalCodes, [.. kept.Select(StudyAnswers.Of)]);
    }

    /// <summary>A landmark with its cautions and the faults that are tied to it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public LandmarkDetail Landmark(string id)
    {
        var landmark = Rows.Find(data, "landmarks", data.Landmarks, r => r.Id, id, "landmark", "/v1/landmarks");
        var faults = data.FaultCauses.Where(c => c.Landmarks.Contains(landmark.Id)).Select(c => c.Fault).ToHashSet(StringComparer.Ordinal);
        return new(
            data.VersionId,
            Notices.LocalCodes,
            StudyAnswers.Of(landmark),
            cautions.Links(landmark.Cautions),
            FaultLinks(data.Faults.Where(f => faults.Contains(f.Id))));
    }

    /// <summary>The terms of the trade.</summary>
    public TermList Terms() => new(data.VersionId, [.. data.Terms.Select(StudyAnswers.Of)]);

    /// <summary>A term with those to read next.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public TermDetail Term(string id)
    {
        var term = Rows.Find(data, "terms", data.Terms, r => r.Id, id, "term", "/v1/glossary");
        return new(
            data.VersionId,
            StudyAnswers.Of(term),
            [.. data.Terms.Where(t => term.See.Contains(t.Id)).Select(t => Link("glossary", t.Id, t.Term))]);
    }

    /// <summary>Finds what everyday words are about.</summary>
    /// <param name="query">The words.</param>
    /// <exception cref="RefusedException">There are none, or too many.</exception>
    public SearchAnswer Search(string? query)
    {
        var asked = SearchQuestion.Read(query);
        var (answer, hits) = ConeWords.Of(asked, cones);
        var words = SearchWords.Of(asked);
        // Where a cone is asked about, its number and the words around it say nothing of other things.
        if (answer is not null) words = [.. words.Where(w => !ConeWords.IsNumber(w))];
        IReadOnlyList<SearchHit> found = [.. hits, .. index.Find(words)];
        return new(
            data.VersionId,
            asked,
            answer,
            [.. found.Take(MostHits)],
            found.Count > MostHits,
            [.. SearchWords.Split(asked).Distinct(StringComparer.Ordinal).Where(
                w => SearchWords.Of(w) is [var stem] && words.Contains(stem) && !index.Knows(stem) && !SearchWords.IsSlight(stem))],
            found.Count == 0 ? index.Probably(asked) : []);
    }

    /// <summary>Questions with one right answer each, drawn by a seed.</summary>
    /// <param name="topic">Their topic; null for all.</param>
    /// <param name="count">How many, 1 to 100; null: 10.</param>
    /// <param name="seed">1 to 1000000: the same gives the same questions; null: 1.</param>
    /// <exception cref="RefusedException">Something can't be read; carries every finding.</exception>
    public QuestionList Questions(string? topic = null, string? count = null, string? seed = null) => bank.Draw(topic, count, seed);

    private static IReadOnlyList<NamedLink> FaultLinks(IEnumerable<FaultRow> faults) =>
        [.. faults.Select(f => Link("faults", f.Id, f.Fault))];

    private static NamedLink Link(string list, string id, string name) => new(id, name, new Address($"/v1/{list}/{id}"));
}
