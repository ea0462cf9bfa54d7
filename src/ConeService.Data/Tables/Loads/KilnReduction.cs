namespace ConeService.Data;

/// <summary>What reduction does in a kiln.</summary>
public enum KilnReduction
{
    /// <summary>The kiln is made for it.</summary>
    Usual,

    /// <summary>It shortens the life of the elements.</summary>
    HarmsElements,

    /// <summary>Ware is reduced after the draw.</summary>
    OutsideTheKiln,
}
