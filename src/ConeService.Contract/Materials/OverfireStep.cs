namespace ConeService.Contract.Materials;

/// <summary>How far over-firing has gone.</summary>
public enum OverfireStep
{
    /// <summary>Not at all, or nothing is known.</summary>
    None,

    /// <summary>Rims and thin walls move.</summary>
    Warps,

    /// <summary>Bubbles swell in the wall.</summary>
    Bloats,

    /// <summary>The form sinks.</summary>
    Slumps,

    /// <summary>The ware flows onto the shelf.</summary>
    Melts,
}
