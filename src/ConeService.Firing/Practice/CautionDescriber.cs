using System.Collections.Frozen;
using ConeService.Contract.Practice;
using ConeService.Data;

namespace ConeService.Firing.Practice;

/// <summary>Answers on cautions and limits, and links to them.</summary>
internal sealed class CautionDescriber
{
    private readonly Dataset data;
    private readonly FrozenDictionary<string, CautionLink> links;

    /// <summary>Reads the cautions of a data package.</summary>
    public CautionDescriber(Dataset dataset)
    {
        data = dataset;
        links = dataset.Cautions.ToFrozenDictionary(
            c => c.Id, c => new CautionLink(c.Id, c.Hazard, c.Severity, c.Control, c.Sources, "/v1/cautions/" + c.Id));
    }

    /// <summary>Every caution.</summary>
    public CautionList Cautions() => new(data.VersionId, Notices.LocalCodes, data.Cautions);

    /// <summary>Every limit.</summary>
    public LimitList Limits() => new(data.VersionId, Notices.LocalCodes, Notices.LeachTest, data.ExposureLimits, data.FoodContactLimits);

    /// <summary>One caution with everything that belongs to it.</summary>
    public CautionDetail Describe(CautionRow caution)
    {
        var food = data.FoodContactLimits.Where(l => l.Cautions.Contains(caution.Id)).ToList();
        return new(
            data.VersionId,
            Notices.LocalCodes,
            caution,
            ExposureLimits([caution.Id]),
            food,
            [.. data.Processes.Where(p => p.Cautions.Contains(caution.Id)).Select(p => p.Id)],
            [.. data.Colorants.Where(c => c.Cautions.Contains(caution.Id)).Select(c => c.Id)],
            food.Count > 0 || caution.Kind == HazardKind.FoodContact ? Notices.LeachTest : null);
    }

    /// <summary>One limit of exposure.</summary>
    public LimitDetail Describe(ExposureLimitRow limit) => new(data.VersionId, Notices.LocalCodes, limit, null, null, Links(limit.Cautions));

    /// <summary>One food-contact limit.</summary>
    public LimitDetail Describe(FoodContactLimitRow limit) => new(data.VersionId, Notices.LocalCodes, null, limit, Notices.LeachTest, Links(limit.Cautions));

    /// <summary>Links to cautions, each once, in the order given.</summary>
    public IReadOnlyList<CautionLink> Links(params IEnumerable<string> ids) => [.. ids.Distinct(StringComparer.Ordinal).Select(id => links[id])];

    /// <summary>The limits of exposure that belong to any of the cautions.</summary>
    public IReadOnlyList<ExposureLimitRow> ExposureLimits(IReadOnlyList<string> cautions) =>
        [.. data.ExposureLimits.Where(l => l.Cautions.Any(cautions.Contains))];
}
