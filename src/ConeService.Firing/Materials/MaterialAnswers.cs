using ConeService.Contract.Materials;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Materials;

/// <summary>How the rows of bodies and coats stand in answers.</summary>
internal static class MaterialAnswers
{
    /// <summary>A body in a list.</summary>
    public static ClayBodySummary Summary(ClayBodyRow row) => new(
        row.Id,
        row.Name,
        row.Description,
        new(row.BisqueConeMin, null, row.BisqueConeMax),
        row.MatureConeMin is null ? null : new(row.MatureConeMin, row.MatureConeBest, row.MatureConeMax),
        row.Atmospheres,
        row.RangeConfidence,
        row.Sources);

    /// <summary>A coat in a list.</summary>
    public static GlazeSummary Summary(GlazeRow row) => new(
        row.Id,
        row.Name,
        row.Kind,
        new(row.ConeMin, row.ConeBest, row.ConeMax),
        row.Atmospheres,
        row.FiredIn,
        row.RunRisk,
        row.RangeConfidence,
        row.Sources);

    /// <summary>A body.</summary>
    public static ClayBody Of(ClayBodyRow row, Dataset data) => new(
        Id: row.Id,
        Name: row.Name,
        Description: row.Description,
        BisqueConeMin: row.BisqueConeMin,
        BisqueConeMax: row.BisqueConeMax,
        MatureConeMin: row.MatureConeMin,
        MatureConeBest: row.MatureConeBest,
        MatureConeMax: row.MatureConeMax,
        FirstStep: row.FirstStep,
        WarpConesOverBest: row.WarpConesOverBest,
        BloatConesOverBest: row.BloatConesOverBest,
        SlumpConesOverBest: row.SlumpConesOverBest,
        MeltConesOverBest: row.MeltConesOverBest,
        BloatConesSoonerInReduction: row.BloatConesSoonerInReduction,
        Underfired: row.Underfired,
        Overfired: row.Overfired,
        Shelf: row.Shelf,
        HoldsWater: row.HoldsWater,
        ThermalShock: row.ThermalShock,
        Atmospheres: row.Atmospheres,
        ColourOxidation: row.ColourOxidation,
        ColourReduction: row.ColourReduction,
        AbsorptionPercentMin: row.AbsorptionPercentMin,
        AbsorptionPercentMax: row.AbsorptionPercentMax,
        ShrinkagePercentMin: row.ShrinkagePercentMin,
        ShrinkagePercentMax: row.ShrinkagePercentMax,
        ExpansionNote: row.ExpansionNote,
        UseNote: row.UseNote,
        Cautions: row.Cautions,
        Sources: row.Sources,
        RangeConfidence: row.RangeConfidence,
        Confidence: row.Confidence,
        Note: row.Note,
        Student: Message.ToStudents(data, "clay-bodies", row.Id));

    /// <summary>A coat.</summary>
    public static Glaze Of(GlazeRow row, Dataset data) => new(
        Id: row.Id,
        Name: row.Name,
        CoatKind: row.Kind,
        ConeMin: row.ConeMin,
        ConeBest: row.ConeBest,
        ConeMax: row.ConeMax,
        Atmospheres: row.Atmospheres,
        AtmosphereNote: row.AtmosphereNote,
        WrongAtmosphere: row.WrongAtmosphere,
        WrongAtmosphereEffect: row.WrongAtmosphereEffect,
        Alternative: row.Alternative,
        FiredIn: row.FiredIn,
        AppliedOn: row.AppliedOn,
        AppliedToNote: row.AppliedToNote,
        Underfired: row.Underfired,
        Overfired: row.Overfired,
        RunRisk: row.RunRisk,
        RunNote: row.RunNote,
        GivesOff: row.GivesOff,
        SpoiledBy: row.SpoiledBy,
        Metallic: row.Metallic,
        Food: row.Food,
        FiringsNote: row.FiringsNote,
        ThirdFireNote: row.ThirdFireNote,
        HazardsNote: row.HazardsNote,
        Cautions: row.Cautions,
        Sources: row.Sources,
        RangeConfidence: row.RangeConfidence,
        Confidence: row.Confidence,
        Note: row.Note,
        Student: Message.ToStudents(data, "glazes", row.Id));
}
