namespace ConeService.Data;

/// <summary>A figure of a schedule segment that its source states.</summary>
public enum PublishedField
{
    /// <summary>The rate.</summary>
    Rate,

    /// <summary>The target.</summary>
    Target,

    /// <summary>The hold.</summary>
    Hold,
}
