using ConeService.Contract.Answers;
using ConeService.Contract.Practice;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Practice;

namespace ConeService.Firing;

/// <summary>Firing processes, cautions, and limits of exposure and food contact.</summary>
public sealed class PracticeReference
{
    // As people write them, for how the rows do.
    private static readonly Dictionary<string, string> Jurisdictions = new(StringComparer.Ordinal)
    {
        ["eu"] = "european-union",
        ["uk"] = "united-kingdom",
        ["us"] = "usa",
        ["united-states"] = "usa",
    };

    private readonly Dataset data;
    private readonly CautionIndex cautions;

    internal PracticeReference(Dataset dataset) => (data, cautions) = (dataset, new(dataset));

    /// <summary>The processes, or those of a kiln and an atmosphere.</summary>
    /// <param name="kiln">What heats the kiln; null for all. <c>any</c> of a process stands for every kiln.</param>
    /// <param name="atmosphere">The atmosphere; null for all.</param>
    /// <exception cref="RefusedException">No process has such a word; carries every finding.</exception>
    public ProcessList Processes(string? kiln = null, string? atmosphere = null)
    {
        var filter = new RowFilter();
        var kilns = filter.Keep(data.Processes, kiln, "kiln", r => r.Kilns.Contains(ProcessKiln.Any)
            ? EnumWords.All<ProcessKiln>() : r.Kilns.Select(EnumWords.Word));
        var atmospheres = filter.Keep(data.Processes, atmosphere, "atmosphere", r => r.Atmospheres.Select(EnumWords.Word));
        filter.ThrowAny();
        return new(
            data.VersionId, Notices.LocalCodes, Notices.LeachTest,
            [.. kilns.Intersect(atmospheres).Select(r => PracticeAnswers.Of(r, data))]);
    }

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
            PracticeAnswers.Of(process, data),
            food,
            added,
            links,
            limits,
            [.. cited.SelectMany(s => s).Distinct()]);
    }

    /// <summary>The cautions, or those that belong to something and to a stage of the work.</summary>
    /// <param name="appliesTo">What they belong to, such as lead or gas-kiln; null for all.</param>
    /// <param name="stage">The stage, such as mixing; null for all.</param>
    /// <exception cref="RefusedException">No caution has such a word; carries every finding.</exception>
    public CautionList Cautions(string? appliesTo = null, string? stage = null)
    {
        var filter = new RowFilter();
        var things = filter.Keep(data.Cautions, appliesTo, "appliesTo", r => r.AppliesTo);
        var stages = filter.Keep(data.Cautions, stage, "stage", r => r.Stages.Select(EnumWords.Word));
        filter.ThrowAny();
        return new(data.VersionId, Notices.LocalCodes, [.. things.Intersect(stages).Select(r => PracticeAnswers.Of(r, data))]);
    }

    /// <summary>A caution with everything that belongs to it.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public CautionDetail Caution(string id)
    {
        var caution = Rows.Find(data, "cautions", data.Cautions, r => r.Id, id, "caution", "/v1/cautions");
        var food = data.FoodContactLimits.Where(l => l.Cautions.Contains(caution.Id)).Select(PracticeAnswers.Of).ToList();
        return new(
            data.VersionId,
            Notices.LocalCodes,
            PracticeAnswers.Of(caution, data),
            cautions.ExposureLimits([caution.Id]),
            food,
            [.. data.Processes.Where(p => p.Cautions.Contains(caution.Id)).Select(p => p.Id)],
            [.. data.Colorants.Where(c => c.Cautions.Contains(caution.Id)).Select(c => c.Id)],
            food.Count > 0 || caution.Kind == HazardKind.FoodContact ? Notices.LeachTest : null);
    }

    /// <summary>The limits of exposure and of food contact, or those of a jurisdiction and of a substance.</summary>
    /// <param name="jurisdiction">Where they apply, such as european-union, or short eu, uk, us; null for all.</param>
    /// <param name="substance">The substance, its first word, its formula, or the metal that ware gives off; null for all.</param>
    /// <exception cref="RefusedException">No limit has such a word; carries every finding.</exception>
    public LimitList Limits(string? jurisdiction = null, string? substance = null)
    {
        IReadOnlyList<Limit> all =
        [
            .. data.ExposureLimits.Select(l => Contract.Practice.Limit.Of(PracticeAnswers.Of(l))),
            .. data.FoodContactLimits.Select(l => Contract.Practice.Limit.Of(PracticeAnswers.Of(l))),
        ];
        var filter = new RowFilter();
        var places = filter.Keep(
            all, jurisdiction, "jurisdiction", l => [l.Exposure?.Jurisdiction ?? l.FoodContactLimit!.Jurisdiction], Jurisdictions);
        var substances = filter.Keep(all, substance, "substance", Substances);
        filter.ThrowAny();
        return new(data.VersionId, Notices.LocalCodes, Notices.LeachTest, [.. places.Intersect(substances)]);
    }

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

    // “silica, respirable crystalline” is asked for as silica, “manganese compounds and fume” as manganese.
    private static IEnumerable<string> Substances(Limit limit) => limit.Exposure is { } exposure
        ? [exposure.Substance, exposure.Substance.Split(',', ' ', '(')[0], exposure.ChemicalForm]
        : limit.FoodContactLimit!.Metals;

    private LimitDetail Of(Limit limit, Message? foodContact, IReadOnlyList<string> of) =>
        new(data.VersionId, Notices.LocalCodes, limit, foodContact, cautions.Links(of));

    private FoodContactAnswer Food(ProcessRow process) => new(
        process.FoodContact,
        Notices.LeachTest,
        process.FoodContactNote,
        process.FoodContact == ProcessFoodContact.NotApplicable ? [] : PracticeAnswers.InUse(data.FoodContactLimits));
}
