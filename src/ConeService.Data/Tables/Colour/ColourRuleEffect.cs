namespace ConeService.Data;

/// <summary>What a colour rule does.</summary>
public enum ColourRuleEffect
{
    /// <summary>Another colour takes the place of the usual one.</summary>
    ReplacesColour,

    /// <summary>The usual colour moves.</summary>
    ShiftsColour,

    /// <summary>The colour is lost.</summary>
    LosesColour,

    /// <summary>Gas or fume leaves the glaze.</summary>
    GivesOffGas,

    /// <summary>Pots nearby take colour.</summary>
    StainsNeighbours,

    /// <summary>The glaze runs more.</summary>
    MoreFluid,

    /// <summary>A warning to users or makers.</summary>
    Warning,

    /// <summary>Told; never decides a colour.</summary>
    Statement,
}
