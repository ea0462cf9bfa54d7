using System.Collections.Frozen;
using ConeService.Contract.Answers;
using ConeService.Contract.Practice;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Practice;

/// <summary>The cautions of a data package by id, and what belongs to them. Immutable.</summary>
internal sealed class CautionIndex
{
    private readonly FrozenDictionary<string, CautionLink> links;
    private readonly IReadOnlyList<ExposureLimitRow> limits;

    /// <summary>Reads the cautions of a data package.</summary>
    public CautionIndex(Dataset dataset)
    {
        limits = dataset.ExposureLimits;
        links = dataset.Cautions.ToFrozenDictionary(
            c => c.Id, c => new CautionLink(
                c.Id, c.Hazard, c.Severity, c.Control, c.Sources, new Address("/v1/cautions/" + c.Id),
                Message.ToStudents(dataset, "cautions", c.Id)));
    }

    /// <summary>Links to cautions, each once, in the order given.</summary>
    public IReadOnlyList<CautionLink> Links(params IEnumerable<string> ids) =>
        [.. ids.Distinct(StringComparer.Ordinal).Select(id => links[id])];

    /// <summary>The limits of exposure that belong to any of the cautions.</summary>
    public IReadOnlyList<ExposureLimit> ExposureLimits(IReadOnlyList<string> cautions) =>
        [.. limits.Where(l => l.Cautions.Any(cautions.Contains)).Select(PracticeAnswers.Of)];
}
