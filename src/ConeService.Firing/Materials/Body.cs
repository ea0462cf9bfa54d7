using ConeService.Contract.Materials;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Firing.Materials;

/// <summary>A clay body as the load check sees it.</summary>
internal sealed class Body : Material
{
    /// <summary>Lowest cone of its bisque.</summary>
    public required PotterCone BisqueMin { get; init; }

    /// <summary>Highest cone of its bisque.</summary>
    public required PotterCone BisqueMax { get; init; }

    /// <summary>The cones of its bisque as people say them.</summary>
    public Message BisqueSpoken => new ConeRange(BisqueMin, BisqueMax, BisqueMax).Spoken;

    /// <summary>Where it is mature; null where its base clay decides.</summary>
    public required ConeRange? Mature { get; init; }

    /// <summary>What the first step over the best cone does.</summary>
    public FirstStep FirstStep { get; init; }

    /// <summary>Whole cones over the best cone at which each harm begins; null where not known.</summary>
    public decimal? WarpAt { get; init; }

    /// <inheritdoc cref="WarpAt"/>
    public decimal? BloatAt { get; init; }

    /// <inheritdoc cref="WarpAt"/>
    public decimal? SlumpAt { get; init; }

    /// <inheritdoc cref="WarpAt"/>
    public decimal? MeltAt { get; init; }

    /// <summary>How many cones sooner it bloats in reduction.</summary>
    public decimal BloatSoonerInReduction { get; init; }

    /// <summary>What it is like below its range.</summary>
    public required Message Underfired { get; init; }

    /// <summary>What it is like above its range.</summary>
    public required Message Overfired { get; init; }

    /// <summary>How it sticks to the shelf, for the middle of a sentence; null where nothing is known.</summary>
    public string? Shelf { get; init; }

    /// <summary>Whether it holds water.</summary>
    public HoldsWater HoldsWater { get; init; }

    /// <summary>Whether it stands being drawn red hot.</summary>
    public ThermalShock ThermalShock { get; init; }

    /// <summary>Atmospheres it is used in.</summary>
    public required EnumSet<Atmosphere> Atmospheres { get; init; }

    /// <summary>
    /// True when its own bisque already matures it, as with most earthenware and bone china: a later, cooler glaze fire then
    /// does not leave it under-fired.
    /// </summary>
    public bool MaturesInBisque => Mature is not null && BisqueMax.Order >= Mature.Best.Order;

    /// <summary>The same body with other cones of maturity.</summary>
    internal Body With(ConeRange mature) => new()
    {
        Id = Id,
        Name = Name,
        Sources = Sources,
        Confidence = Confidence,
        Cautions = Cautions,
        BisqueMin = BisqueMin,
        BisqueMax = BisqueMax,
        Mature = mature,
        Underfired = Underfired,
        Overfired = Overfired,
        HoldsWater = HoldsWater,
        ThermalShock = ThermalShock,
        Atmospheres = Atmospheres,
    };

    /// <summary>What the body comes to at a cone above its best.</summary>
    /// <param name="cone">The cone.</param>
    /// <param name="reduction">True in a reducing fire.</param>
    public OverfireStep StepAt(PotterCone cone, bool reduction)
    {
        if (Mature is null) return OverfireStep.None;
        var over = Mature.Best.StepsTo(cone);
        // Reduction can bring bloating below the best cone already.
        if (over >= MeltAt) return OverfireStep.Melts;
        if (over >= SlumpAt) return OverfireStep.Slumps;
        if (over >= BloatAt - (reduction ? BloatSoonerInReduction : 0)) return OverfireStep.Bloats;
        return over >= WarpAt ? OverfireStep.Warps : OverfireStep.None;
    }
}

/// <summary>A range of cones with the best of them.</summary>
/// <param name="Min">Lowest.</param>
/// <param name="Best">Best.</param>
/// <param name="Max">Highest.</param>
internal sealed record ConeRange(PotterCone Min, PotterCone Best, PotterCone Max)
{
    /// <summary>The range as people say it.</summary>
    public Message Spoken => Min == Max
        ? Message.Of("materials.cone", ("cone", Min.Text))
        : Message.Of("materials.cones", ("min", Min.Text), ("max", Max.Text));
}
