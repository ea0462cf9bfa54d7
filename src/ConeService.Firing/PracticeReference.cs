using ConeService.Contract.Answers;
using ConeService.Contract.Practice;
using ConeService.Data;
using ConeService.Firing.Practice;

namespace ConeService.Firing;

/// <summary>Firing processes, cautions, and limits of exposure and food contact.</summary>
public sealed class PracticeReference
{
    private readonly Dataset dataset;
    private readonly CautionDescriber cautions;
    private readonly ProcessDescriber processes;

    internal PracticeReference(Dataset dataset)
    {
        this.dataset = dataset;
        cautions = new(dataset);
        processes = new(dataset);
    }

    /// <summary>The processes.</summary>
    public ProcessList Processes() => processes.List();

    /// <summary>A process.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public ProcessDetail Process(string id) => processes.Describe(
        Rows.Find(dataset, "processes", dataset.Processes, r => r.Id, id, "process", "/v1/processes"));

    /// <summary>The cautions.</summary>
    public CautionList Cautions() => cautions.Cautions();

    /// <summary>A caution with everything that belongs to it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public CautionDetail Caution(string id) => cautions.Describe(
        Rows.Find(dataset, "cautions", dataset.Cautions, r => r.Id, id, "caution", "/v1/cautions"));

    /// <summary>The limits of exposure and of food contact.</summary>
    public LimitList Limits() => cautions.Limits();

    /// <summary>A limit.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public LimitDetail Limit(string id)
    {
        if (Rows.TryFind(dataset, "exposure-limits", dataset.ExposureLimits, l => l.Id, id) is { } exposure) return cautions.Describe(exposure);
        return cautions.Describe(Rows.TryFind(dataset, "food-contact-limits", dataset.FoodContactLimits, l => l.Id, id) ?? throw Rows.Refuse(
            "limit", id, dataset.ExposureLimits.Select(l => l.Id).Concat(dataset.FoodContactLimits.Select(l => l.Id)), "/v1/limits"));
    }
}
