using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>Lists what loads are judged by: rules, kinds of firing, heats of kilns, and where sources contradict each other.</summary>
internal sealed class LoadRuleCatalogue(Dataset dataset)
{
    private readonly DisagreementIndex disagreements = new(dataset);

    /// <summary>All load rules.</summary>
    public LoadRuleList Rules() => new(dataset.VersionId, [.. dataset.LoadRules.Select(Answer)]);

    /// <summary>A load rule.</summary>
    /// <exception cref="RefusedException">There is none of that id.</exception>
    public LoadRuleDetail Rule(string id)
    {
        var row = Rows.Find(dataset, "load-rules", dataset.LoadRules, r => r.Id, id, "load rule", "/v1/load-rules");
        return new(dataset.VersionId, Answer(row), disagreements.Concerning("load-rules", row.Id));
    }

    /// <summary>The kinds of reason, with the load rules they may rest on.</summary>
    public ReasonCodeList ReasonCodes() => new(
        dataset.VersionId,
        [.. Enum.GetValues<ReasonCode>().Select(code => new ReasonCodeDescription(
            code, ReasonMaker.Title(code), ReasonMaker.Meaning(code),
            [.. dataset.LoadRules.Where(r => r.ReasonCodes.Contains(code)).Select(r => r.Id)]))]);

    /// <summary>The kinds of firing and the kilns.</summary>
    public FiringKindList Kinds() => new(
        dataset.VersionId,
        [.. dataset.FiringKinds.Select(Answer)],
        [.. dataset.KilnHeats.Select(Answer)],
        disagreements.ConcerningAny("firing-kinds", "kiln-heats"));

    /// <summary>All disagreements.</summary>
    public DisagreementList Disagreements() => new(dataset.VersionId, disagreements.All);

    private static LoadRule Answer(LoadRuleRow row) => new(
        Id: row.Id,
        Topic: row.Topic,
        Name: row.Rule,
        Severity: row.Severity,
        ValueMin: row.ValueMin,
        ValueMax: row.ValueMax,
        Unit: row.Unit,
        ConeMin: row.ConeMin,
        ConeMax: row.ConeMax,
        AppliesTo: row.AppliesTo,
        ReasonCodes: row.ReasonCodes,
        Rationale: row.Rationale,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);

    private static FiringKindDescription Answer(FiringKindRow row) => new(
        Id: row.Id,
        Name: row.Name,
        KilnHeats: row.KilnHeats,
        Atmospheres: row.Atmospheres,
        WrongAtmosphere: row.WrongAtmosphere,
        WrongAtmosphereEffect: row.WrongAtmosphereEffect,
        ConeMin: row.ConeMin,
        ConeMax: row.ConeMax,
        Takes: row.Takes,
        FirstFire: row.FirstFire,
        Food: row.Food,
        TakesIn: row.TakesIn,
        DoesToOthers: row.DoesToOthers,
        Cautions: row.Cautions,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);

    private static KilnHeatDescription Answer(KilnHeatRow row) => new(
        Id: row.Id,
        Name: row.Name,
        Reduction: row.Reduction,
        ClearanceMillimetres: row.ClearanceMillimetres,
        Cautions: row.Cautions,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);
}
