namespace ConeService.Data;

/// <summary>Which atmospheres each use may name, in the order of the vocabulary.</summary>
public static class Atmospheres
{
    /// <summary>Of firings and of processes: what the kiln is given.</summary>
    public static IReadOnlyList<Atmosphere> OfFirings { get; } = [Atmosphere.Oxidation, Atmosphere.Neutral, Atmosphere.Reduction];

    /// <summary>Of questions on colour and of colour rules: also what vapour, smoke and reducers do at the glaze.</summary>
    public static IReadOnlyList<Atmosphere> OfColours { get; } =
        [.. OfFirings, Atmosphere.SaltSoda, Atmosphere.PostFireReduction, Atmosphere.LocalReduction];

    /// <summary>Of colour notes: a source may name none, and the colour is then told in any.</summary>
    public static IReadOnlyList<Atmosphere> OfColourNotes { get; } = [Atmosphere.Any, .. OfColours];

    /// <summary>Of gases and wires: what happens in air, what happens without enough of it, and what happens in both.</summary>
    public static IReadOnlyList<Atmosphere> OfReactions { get; } = [Atmosphere.Any, Atmosphere.Oxidation, Atmosphere.Reduction];

    /// <summary>The atmospheres of a use.</summary>
    public static IReadOnlyList<Atmosphere> Of(AtmosphereUse use) => use switch
    {
        AtmosphereUse.Firing => OfFirings,
        AtmosphereUse.Colour => OfColours,
        AtmosphereUse.ColourNote => OfColourNotes,
        AtmosphereUse.Reaction => OfReactions,
        _ => throw new ArgumentOutOfRangeException(nameof(use), use, null),
    };
}
