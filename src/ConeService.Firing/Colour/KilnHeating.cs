namespace ConeService.Firing.Colour;

/// <summary>How a kiln is heated; the words of a load check.</summary>
public enum KilnHeating
{
    /// <summary>Electric.</summary>
    Electric,

    /// <summary>Gas.</summary>
    Gas,

    /// <summary>Wood.</summary>
    Wood,

    /// <summary>Raku.</summary>
    Raku,

    /// <summary>Kept for salt or soda vapour.</summary>
    Vapour,
}
