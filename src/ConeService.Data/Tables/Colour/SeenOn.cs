namespace ConeService.Data;

/// <summary>Where a colour shows.</summary>
public enum SeenOn
{
    /// <summary>In the glaze that holds the colorant.</summary>
    OwnGlaze,

    /// <summary>On pots nearby, by vapour.</summary>
    NeighbouringPots,
}
