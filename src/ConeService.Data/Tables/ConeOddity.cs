namespace ConeService.Data;

/// <summary>Why an answer that a cone decides needs a warning.</summary>
public enum ConeOddity
{
    /// <summary>Its end point moves less with the rate than its neighbours': the slope is too high among them.</summary>
    RateInsensitive,

    /// <summary>Its end point moves more with the rate than its neighbours': the slope is too low among them.</summary>
    RateSensitive,

    /// <summary>At the slowest printed rate it goes down within 5 °C of the next cone.</summary>
    NearlyTied,
}
