namespace ConeService.Data;

/// <summary>What heats a kiln. A word of the contract.</summary>
public enum KilnHeat
{
    /// <summary>Elements of resistance wire.</summary>
    Electric,

    /// <summary>Gas or oil burners.</summary>
    Gas,

    /// <summary>Wood; bonfire, pit and drum too.</summary>
    Wood,

    /// <summary>A light kiln that is opened red hot.</summary>
    Raku,

    /// <summary>A kiln kept for salt or soda.</summary>
    Vapour,
}
