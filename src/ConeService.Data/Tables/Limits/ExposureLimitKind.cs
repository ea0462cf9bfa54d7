namespace ConeService.Data;

/// <summary>What sort of limit of exposure a value is.</summary>
public enum ExposureLimitKind
{
    /// <summary>PEL: the legal limit of OSHA.</summary>
    PermissibleExposureLimit,

    /// <summary>AL: from here measuring and medical duties begin.</summary>
    ActionLevel,

    /// <summary>REL: recommended by NIOSH.</summary>
    RecommendedExposureLimit,

    /// <summary>WEL: the legal limit of HSE; a limit value of the European Union.</summary>
    WorkplaceExposureLimit,

    /// <summary>TLV: recommended by ACGIH.</summary>
    ThresholdLimitValue,

    /// <summary>IDLH: from here escape is in danger.</summary>
    ImmediatelyDangerous,
}
