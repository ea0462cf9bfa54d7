using System.Collections.Frozen;
using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Materials;

/// <summary>The bodies and coats of a data package with its overlays.</summary>
internal sealed class KnownMaterials
{
    private readonly Dataset dataset;
    private readonly FrozenDictionary<string, Body> bodies;
    private readonly FrozenDictionary<string, Coat> coats;

    /// <summary>Reads them.</summary>
    public KnownMaterials(Dataset dataset, PotterScale scale)
    {
        this.dataset = dataset;
        bodies = dataset.ClayBodies.ToFrozenDictionary(r => r.Id, r => Read(r, scale), StringComparer.Ordinal);
        var names = dataset.Glazes.ToDictionary(g => g.Id, g => g.Name, StringComparer.Ordinal);
        coats = dataset.Glazes.ToFrozenDictionary(r => r.Id, r => Read(r, scale, names), StringComparer.Ordinal);
    }

    /// <summary>The body of an id, or null.</summary>
    public Body? FindBody(string id) => bodies.GetValueOrDefault(id);

    /// <summary>The coat of an id, or null.</summary>
    public Coat? FindCoat(string id) => coats.GetValueOrDefault(id);

    /// <summary>What is wrong with an id that a body had before; null for any other.</summary>
    public Finding? RenamedBody(string id, string field) => RenamedId.Of(dataset, "clay-bodies", id, field);

    /// <summary>What is wrong with an id that a coat had before; null for any other.</summary>
    public Finding? RenamedCoat(string id, string field) => RenamedId.Of(dataset, "glazes", id, field);

    /// <summary>Ids of bodies that a caller may have meant.</summary>
    public IReadOnlyList<string> NearBodies(string id) => NearMatches.Find(id, bodies.Keys);

    /// <summary>Ids of coats that a caller may have meant.</summary>
    public IReadOnlyList<string> NearCoats(string id) => NearMatches.Find(id, coats.Keys);

    private static Body Read(ClayBodyRow row, PotterScale scale) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Sources = row.Sources,
        Confidence = row.RangeConfidence,
        Cautions = row.Cautions,
        BisqueMin = scale.Of(row.BisqueConeMin),
        BisqueMax = scale.Of(row.BisqueConeMax),
        Mature = row.MatureConeBest is null
            ? null
            : new(scale.Of(row.MatureConeMin!), scale.Of(row.MatureConeBest), scale.Of(row.MatureConeMax!)),
        FirstStep = row.FirstStep,
        WarpAt = row.WarpConesOverBest,
        BloatAt = row.BloatConesOverBest,
        SlumpAt = row.SlumpConesOverBest,
        MeltAt = row.MeltConesOverBest,
        BloatSoonerInReduction = row.BloatConesSoonerInReduction ?? 0,
        Underfired = Message.Verbatim(row.Underfired),
        Overfired = Message.Verbatim(row.Overfired),
        Shelf = row.Shelf is null ? null : WithinSentence(row.Shelf),
        HoldsWater = row.HoldsWater,
        ThermalShock = row.ThermalShock,
        Atmospheres = new(row.Atmospheres),
    };

    private static Coat Read(GlazeRow row, PotterScale scale, Dictionary<string, string> names) => new()
    {
        Id = row.Id,
        Name = row.Name,
        Sources = row.Sources,
        Confidence = row.RangeConfidence,
        Cautions = row.Cautions,
        Kind = row.Kind,
        Min = scale.Of(row.ConeMin),
        Best = row.ConeBest is null ? null : scale.Of(row.ConeBest),
        Max = row.ConeMax is null ? null : scale.Of(row.ConeMax),
        Atmospheres = new(row.Atmospheres),
        WrongAtmosphere = row.WrongAtmosphere,
        WrongAtmosphereEffect = row.WrongAtmosphereEffect,
        Alternative = row.Alternative is null ? null : names[row.Alternative],
        FiredIn = new(row.FiredIn),
        AppliedOn = new(row.AppliedOn),
        Underfired = Message.Verbatim(WithinSentence(row.Underfired)),
        Overfired = Message.Verbatim(row.Overfired),
        RunRisk = row.RunRisk,
        GivesOff = new(row.GivesOff),
        SpoiledBy = new(row.SpoiledBy),
        IsMetallic = row.Metallic == YesNo.Yes,
        Food = row.Food,
    };

    private static string WithinSentence(string text) => char.ToLowerInvariant(text[0]) + text[1..];
}
