namespace ConeService.Data;

/// <summary>How much a reason weighs.</summary>
public enum ReasonSeverity
{
    /// <summary>Worth knowing; the piece may go in.</summary>
    Note,

    /// <summary>Whoever fires must look at it.</summary>
    Review,

    /// <summary>The piece must not go into this firing.</summary>
    Refuse,
}
