namespace ConeService.Data;

/// <summary>What was really read of a source.</summary>
public enum SourceVia
{
    /// <summary>The work itself, on paper or as its publisher gives it out.</summary>
    Work,

    /// <summary>Pictures of its pages.</summary>
    Scan,

    /// <summary>A copy that others typed, drew or mirrored.</summary>
    Reproduction,

    /// <summary>What another work says of it.</summary>
    Report,

    /// <summary>Nothing: it was recalled.</summary>
    Memory,

    /// <summary>No work at all: practice of the trade, and arithmetic.</summary>
    NotApplicable,
}
