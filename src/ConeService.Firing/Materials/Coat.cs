using System.Collections.Frozen;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Materials;

/// <summary>A glaze or decoration as the load check sees it.</summary>
internal sealed class Coat : Material
{
    /// <summary>What sort of coat it is.</summary>
    public CoatKind Kind { get; init; }

    /// <summary>Lowest cone.</summary>
    public required PotterCone Min { get; init; }

    /// <summary>Best cone; null where the body decides.</summary>
    public required PotterCone? Best { get; init; }

    /// <summary>Highest cone; null where the body decides.</summary>
    public required PotterCone? Max { get; init; }

    /// <summary>Atmospheres in which it gives what it is meant to give.</summary>
    public required EnumSet<Atmosphere> Atmospheres { get; init; }

    /// <summary>What any other atmosphere leads to.</summary>
    public ReasonSeverity WrongAtmosphere { get; init; }

    /// <summary>What happens in any other atmosphere; null where nothing is known.</summary>
    public string? WrongAtmosphereEffect { get; init; }

    /// <summary>Name of a coat that gives something like it in another atmosphere; null where there is none.</summary>
    public string? Alternative { get; init; }

    /// <summary>Kinds of firing it is fired in.</summary>
    public required EnumSet<FiringKind> FiredIn { get; init; }

    /// <summary>States of the ware it goes on.</summary>
    public required EnumSet<PieceState> AppliedOn { get; init; }

    /// <summary>What it is like below its range, for the middle of a sentence.</summary>
    public required Message Underfired { get; init; }

    /// <summary>What it is like above its range; null where nothing is known.</summary>
    public Message? Overfired { get; init; }

    /// <summary>How readily it runs above its range.</summary>
    public RunRisk RunRisk { get; init; }

    /// <summary>What it gives off that reaches neighbours.</summary>
    public EnumSet<Fume> GivesOff { get; init; }

    /// <summary>Vapours of neighbours that spoil it.</summary>
    public EnumSet<Fume> SpoiledBy { get; init; }

    /// <summary>True when it leaves a metal film.</summary>
    public bool IsMetallic { get; init; }

    /// <summary>Use with food.</summary>
    public CoatFood Food { get; init; }

    /// <summary>True when it melts to a glass of its own in the main fire.</summary>
    public bool Melts => Kind is CoatKind.Glaze or CoatKind.RakuGlaze or CoatKind.SelfGlazing;

    /// <summary>True when its name says that it is matt, a caller's own name too; of any other the surface is not known.</summary>
    public bool IsMatt => isMatt ??= Name.Split(' ', ',', '-', '(', ')', '/').Any(w => MattWords.Contains(w));

    private static readonly FrozenSet<string> MattWords =
        FrozenSet.ToFrozenSet(["matt", "matte", "mat"], StringComparer.OrdinalIgnoreCase);

    private bool? isMatt;

    /// <summary>True when it goes on fired glaze, into a low firing of its own.</summary>
    public bool IsOverglaze => FiredIn.Has(FiringKind.Overglaze);

    /// <summary>The same coat with another range.</summary>
    internal Coat With(ConeRange range) => new()
    {
        Id = Id,
        Name = Name,
        Sources = Sources,
        Confidence = Confidence,
        Cautions = Cautions,
        Kind = Kind,
        Min = range.Min,
        Best = range.Best,
        Max = range.Max,
        Atmospheres = Atmospheres,
        WrongAtmosphere = WrongAtmosphere,
        FiredIn = FiredIn,
        AppliedOn = AppliedOn,
        Underfired = Underfired,
        Overfired = Overfired,
        RunRisk = RunRisk,
        Food = Food,
    };

    /// <summary>The range as people say it.</summary>
    public Message Range => Max is null
        ? Message.Of("materials.cone-and-above", ("cone", Min.Text))
        : new ConeRange(Min, Best ?? Max, Max).Spoken;
}
