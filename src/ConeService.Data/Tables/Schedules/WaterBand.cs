namespace ConeService.Data;

/// <summary>A band of temperature in which the thickness of the wall limits the rate.</summary>
public enum WaterBand
{
    /// <summary>Free water leaves.</summary>
    Drying,

    /// <summary>The last free water leaves as steam.</summary>
    Steam,

    /// <summary>Water bound in the clay leaves; quartz inverts.</summary>
    BoundWater,

    /// <summary>Carbon and sulphur burn out.</summary>
    BurnOut,

    /// <summary>Quartz inverts back while the ware cools.</summary>
    CoolingInversion,
}
