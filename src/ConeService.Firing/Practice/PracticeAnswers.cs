using ConeService.Contract.Practice;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Practice;

/// <summary>Rows of processes, cautions and limits as answers.</summary>
internal static class PracticeAnswers
{
    public static Caution Of(CautionRow row, Dataset data) => new(
        Id: row.Id,
        Name: row.Hazard,
        HazardKind: row.Kind,
        Severity: row.Severity,
        AppliesTo: row.AppliesTo,
        Who: row.Who,
        Stages: row.Stages,
        When: row.When,
        Control: row.Control,
        Figures: row.Figures,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note,
        Student: Message.ToStudents(data, "cautions", row.Id));

    public static ExposureLimit Of(ExposureLimitRow row) => new(
        Id: row.Id,
        Substance: row.Substance,
        ChemicalForm: row.ChemicalForm,
        ExposureLimitKind: row.Kind,
        Averaging: row.Averaging,
        Value: row.Value,
        ShortTermValue: row.ShortTermValue,
        Unit: row.Unit,
        Body: row.Body,
        Jurisdiction: row.Jurisdiction,
        Standing: row.Standing,
        Year: row.Year,
        Cautions: row.Cautions,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note,
        Instrument: row.Instrument,
        Section: row.Section,
        EffectiveFrom: row.EffectiveFrom,
        SupersededBy: row.SupersededBy,
        CheckedOn: row.CheckedOn,
        SeenVia: row.SeenVia);

    public static FoodContactLimit Of(FoodContactLimitRow row) => new(
        Id: row.Id,
        Jurisdiction: row.Jurisdiction,
        Instrument: row.Instrument,
        Standing: row.Standing,
        Category: row.Category,
        Ware: row.Ware,
        Metals: row.Metals,
        Value: row.Value,
        Unit: row.Unit,
        Rule: row.Rule,
        RuleConfidence: row.RuleConfidence,
        Test: row.Test,
        Cautions: row.Cautions,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note,
        Section: row.Section,
        EffectiveFrom: row.EffectiveFrom,
        SupersededBy: row.SupersededBy,
        CheckedOn: row.CheckedOn,
        SeenVia: row.SeenVia);

    /// <summary>The food-contact limits that authorities use today: a standard binds only where one of them names it.</summary>
    public static IReadOnlyList<FoodContactLimit> InUse(IReadOnlyList<FoodContactLimitRow> limits) =>
        [.. limits.Where(l => l is { Standing: not FoodLimitStanding.Historic, SupersededBy: null, Jurisdiction: not "international" })
            .Select(Of)];

    public static FiringProcess Of(ProcessRow row, Dataset data) => new(
        Id: row.Id,
        Name: row.Process,
        Kilns: row.Kilns,
        KilnNote: row.KilnNote,
        Atmospheres: row.Atmospheres,
        AtmosphereNote: row.AtmosphereNote,
        ConeMin: row.ConeMin,
        ConeMax: row.ConeMax,
        Porosity: row.Porosity,
        Watertight: row.Watertight,
        WatertightNote: row.WatertightNote,
        FoodContact: row.FoodContact,
        FoodContactNote: row.FoodContactNote,
        Microwave: row.Microwave,
        Dishwasher: row.Dishwasher,
        CareNote: row.CareNote,
        FiringsMin: row.FiringsMin,
        FiringsMax: row.FiringsMax,
        DurationMinutesMin: row.DurationHoursMin * 60,
        DurationMinutesMax: row.DurationHoursMax * 60,
        DurationNote: row.DurationNote,
        Effect: row.Effect,
        Use: row.Use,
        PeopleNearby: row.PeopleNearby,
        Cautions: row.Cautions,
        SourcedFields: row.SourcedFields,
        Sources: row.Sources,
        // Of a process the answer tells how far the fields that it names as sourced can be trusted.
        Confidence: row.SourcedFields is [var sourced, ..] && row.Evidence is { } evidence
            ? evidence.Of(sourced, row.Confidence)
            : row.Confidence,
        Note: row.Note,
        Student: Message.ToStudents(data, "processes", row.Id));

    public static AddedMaterial Of(ProcessAdditionRow row) => new(
        Material: row.Material,
        When: row.When,
        CelsiusMin: row.CelsiusLow,
        CelsiusMax: row.CelsiusHigh,
        ConeMin: row.ConeLow,
        ConeMax: row.ConeHigh,
        Sources: row.Sources,
        Confidence: row.Confidence,
        Note: row.Note);
}
