namespace ConeService.Data;

/// <summary>How far a row of the data package can be trusted.</summary>
public enum Confidence
{
    /// <summary>Seen in two independent places.</summary>
    Corroborated,

    /// <summary>Seen once in the source named.</summary>
    Published,

    /// <summary>Recalled; the source was not re-read.</summary>
    FromMemory,

    /// <summary>Practice of the trade without a single source.</summary>
    CommonPractice,

    /// <summary>Computed from cited rows.</summary>
    Derived,

    /// <summary>A judgement.</summary>
    Estimate,
}
