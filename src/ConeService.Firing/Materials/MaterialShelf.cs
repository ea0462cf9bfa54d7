using System.Collections.Frozen;
using ConeService.Contract.Answers;
using ConeService.Data;

namespace ConeService.Firing.Materials;

/// <summary>The bodies and coats of a data package with its overlays.</summary>
internal sealed class MaterialShelf
{
    private readonly Dataset dataset;
    private readonly FrozenDictionary<string, Body> bodies;
    private readonly FrozenDictionary<string, Coat> coats;

    /// <summary>Builds the shelf.</summary>
    public MaterialShelf(Dataset dataset, ConeMarks marks)
    {
        this.dataset = dataset;
        bodies = dataset.ClayBodies.ToFrozenDictionary(r => r.Id, r => Read(r, marks), StringComparer.Ordinal);
        var names = dataset.Glazes.ToDictionary(g => g.Id, g => g.Name, StringComparer.Ordinal);
        coats = dataset.Glazes.ToFrozenDictionary(r => r.Id, r => Read(r, marks, names), StringComparer.Ordinal);
    }

    /// <summary>The body of an id, or null.</summary>
    public Body? FindBody(string id) => bodies.GetValueOrDefault(dataset.CurrentId("clay-bodies", id));

    /// <summary>The coat of an id, or null.</summary>
    public Coat? FindCoat(string id) => coats.GetValueOrDefault(dataset.CurrentId("glazes", id));

    /// <summary>Ids of bodies that a caller may have meant.</summary>
    public IReadOnlyList<string> NearBodies(string id) => NearMatches.Find(id, bodies.Keys);

    /// <summary>Ids of coats that a caller may have meant.</summary>
    public IReadOnlyList<string> NearCoats(string id) => NearMatches.Find(id, coats.Keys);

    private static Body Read(ClayBodyRow row, ConeMarks marks) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Sources = row.Sources,
        Confidence = row.RangeConfidence,
        Cautions = row.Cautions,
        BisqueMin = marks.Of(row.BisqueConeMin),
        BisqueMax = marks.Of(row.BisqueConeMax),
        Mature = row.MatureConeBest is null ? null : new(marks.Of(row.MatureConeMin!), marks.Of(row.MatureConeBest), marks.Of(row.MatureConeMax!)),
        FirstStep = row.FirstStep,
        WarpAt = row.WarpConesOverBest,
        BloatAt = row.BloatConesOverBest,
        SlumpAt = row.SlumpConesOverBest,
        MeltAt = row.MeltConesOverBest,
        BloatSoonerInReduction = row.BloatConesSoonerInReduction ?? 0,
        Underfired = row.Underfired,
        Overfired = row.Overfired,
        Shelf = row.Shelf,
        HoldsWater = row.HoldsWater,
        ThermalShock = row.ThermalShock,
        Atmospheres = new(row.Atmospheres),
    };

    private static Coat Read(GlazeRow row, ConeMarks marks, Dictionary<string, string> names) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Sources = row.Sources,
        Confidence = row.RangeConfidence,
        Cautions = row.Cautions,
        Kind = row.Kind,
        Min = marks.Of(row.ConeMin),
        Best = row.ConeBest is null ? null : marks.Of(row.ConeBest),
        Max = row.ConeMax is null ? null : marks.Of(row.ConeMax),
        Atmospheres = new(row.Atmospheres),
        WrongAtmosphere = row.WrongAtmosphere,
        WrongAtmosphereEffect = row.WrongAtmosphereEffect,
        Alternative = row.Alternative is null ? null : names[row.Alternative],
        FiredIn = new(row.FiredIn),
        AppliedOn = new(row.AppliedOn),
        Underfired = row.Underfired,
        Overfired = row.Overfired,
        RunRisk = row.RunRisk,
        GivesOff = new(row.GivesOff),
        SpoiledBy = new(row.SpoiledBy),
        IsMetallic = row.Metallic == YesNo.Yes,
        Food = row.Food,
    };
}
