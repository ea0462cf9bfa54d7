namespace ConeService.Data;

/// <summary>Over what an exposure limit is taken.</summary>
public enum ExposureAveraging
{
    /// <summary>Mean of eight hours.</summary>
    EightHours,

    /// <summary>Time-weighted mean; the span was not printed.</summary>
    TimeWeighted,

    /// <summary>Never above.</summary>
    Ceiling,

    /// <summary>Ceiling, measured over fifteen minutes.</summary>
    FifteenMinuteCeiling,
}
