namespace ConeService.Data;

/// <summary>What a firing process is fired in.</summary>
public enum ProcessKiln
{
    /// <summary>Electric kiln.</summary>
    Electric,

    /// <summary>Gas kiln.</summary>
    Gas,

    /// <summary>Oil kiln.</summary>
    Oil,

    /// <summary>Wood kiln.</summary>
    Wood,

    /// <summary>Charcoal kiln.</summary>
    Charcoal,

    /// <summary>A pit in the ground.</summary>
    Pit,

    /// <summary>No kiln: fuel around the ware.</summary>
    OpenFire,

    /// <summary>A metal drum or bin.</summary>
    Drum,

    /// <summary>Any kiln.</summary>
    Any,
}
