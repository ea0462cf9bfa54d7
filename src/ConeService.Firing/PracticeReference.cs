using ConeService.Contract.Answers;
using ConeService.Contract.Practice;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Practice;

namespace ConeService.Firing;

/// <summary>Firing processes, cautions, and limits of exposure and food contact.</summary>
public sealed class PracticeReference
{
    private readonly Dataset data;
    private readonly CautionIndex cautions;

    internal PracticeReference(Dataset dataset) => (data, cautions) = (dataset, new(dataset));

    /// <summary>The processes.</summary>
    public ProcessList Processes() =>
        new(data.VersionId, Notices.LocalCodes, Notices.LeachTest, [.. data.Processes.Select(PracticeAnswers.Of)]);

    /// <summary>A process with what is added, its cautions, and what can be said of food.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public ProcessDetail Process(string id)
    {
        var process = Rows.Find(data, "processes", data.Processes, r => r.Id, id, "process", "/v1/processes");
        var added = data.ProcessAdditions.Where(a => a.Process == process.Id).Select(PracticeAnswers.Of).ToList();
        var links = cautions.Links(process.Cautions);
        var limits = cautions.ExposureLimits(process.Cautions);
        var food = Food(process);
        IEnumerable<IEnumerable<string>> cited =
        [
            process.Sources, .. added.Select(a => a.Sources), .. links.Select(l => l.Sources), .. limits.Select(l => l.Sources),
            .. food.Limits.Select(l => l.Sources),
        ];
        return new(
            data.VersionId,
            Notices.LocalCodes,
            PracticeAnswers.Of(process),
            food,
            added,
            links,
            limits,
            [.. cited.SelectMany(s => s).Distinct()]);
    }

    /// <summary>The cautions.</summary>
    public CautionList Cautions() => new(data.VersionId, Notices.LocalCodes, [.. data.Cautions.Select(PracticeAnswers.Of)]);

    /// <summary>A caution with everything that belongs to it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public CautionDetail Caution(string id)
    {
        var caution = Rows.Find(data, "cautions", data.Cautions, r => r.Id, id, "caution", "/v1/cautions");
        var food = data.FoodContactLimits.Where(l => l.Cautions.Contains(caution.Id)).Select(PracticeAnswers.Of).ToList();
        return new(
            data.VersionId,
            Notices.LocalCodes,
            PracticeAnswers.Of(caution),
            cautions.ExposureLimits([caution.Id]),
            food,
            [.. data.Processes.Where(p => p.Cautions.Contains(caution.Id)).Select(p => p.Id)],
            [.. data.Colorants.Where(c => c.Cautions.Contains(caution.Id)).Select(c => c.Id)],
            food.Count > 0 || caution.Kind == HazardKind.FoodContact ? Notices.LeachTest : null);
    }

    /// <summary>The limits of exposure and of food contact.</summary>
    public LimitList Limits() => new(
        data.VersionId,
        Notices.LocalCodes,
        Notices.LeachTest,
        [
            .. data.ExposureLimits.Select(l => Contract.Practice.Limit.Of(PracticeAnswers.Of(l))),
            .. data.FoodContactLimits.Select(l => Contract.Practice.Limit.Of(PracticeAnswers.Of(l))),
        ]);

    /// <summary>A limit.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public LimitDetail Limit(string id)
    {
        if (Rows.TryFind(data, "exposure-limits", data.ExposureLimits, l => l.Id, id) is { } exposure)
            return Of(Contract.Practice.Limit.Of(PracticeAnswers.Of(exposure)), null, exposure.Cautions);
        var food = Rows.TryFind(data, "food-contact-limits", data.FoodContactLimits, l => l.Id, id) ?? throw Rows.Refuse(
            "limit", id, data.ExposureLimits.Select(l => l.Id).Concat(data.FoodContactLimits.Select(l => l.Id)), "/v1/limits");
        return Of(Contract.Practice.Limit.Of(PracticeAnswers.Of(food)), Notices.LeachTest, food.Cautions);
    }

    private LimitDetail Of(Limit limit, Message? foodContact, IReadOnlyList<string> of) =>
        new(data.VersionId, Notices.LocalCodes, limit, foodContact, cautions.Links(of));

    private FoodContactAnswer Food(ProcessRow process) => new(
        process.FoodContact,
        Notices.LeachTest,
        process.FoodContactNote,
        process.FoodContact == ProcessFoodContact.NotApplicable ? [] : PracticeAnswers.InUse(data.FoodContactLimits));
}
