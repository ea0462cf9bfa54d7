namespace ConeService.Data;

/// <summary>What a segment of a firing is for.</summary>
public enum FiringStage
{
    /// <summary>Free water leaves.</summary>
    Drying,

    /// <summary>The last free water leaves as steam.</summary>
    Steam,

    /// <summary>Water bound in the clay leaves; quartz inverts.</summary>
    BoundWater,

    /// <summary>Carbon, sulphur, resin or cover coat burns out.</summary>
    BurnOut,

    /// <summary>Smoke marks the ware.</summary>
    Smoke,

    /// <summary>Plain heating.</summary>
    Rise,

    /// <summary>The body is reduced.</summary>
    BodyReduction,

    /// <summary>The way to the last ramp.</summary>
    Approach,

    /// <summary>Salt or soda is put in.</summary>
    Vapour,

    /// <summary>The last ramp and hold: what the cone records.</summary>
    Maturing,

    /// <summary>The kiln is cleared of reduction at the peak.</summary>
    CleanUp,

    /// <summary>A fall of some tens of degrees and a hold, to heal the glaze.</summary>
    DropAndHold,

    /// <summary>Cooling as fast as the kiln goes.</summary>
    CrashCooling,

    /// <summary>Crystals grow.</summary>
    Growth,

    /// <summary>Cooling at a rate that the controller holds.</summary>
    SlowCooling,

    /// <summary>Done outside the kiln or after it; not programmed.</summary>
    PostFiring,
}
