using ConeService.Data;

namespace ConeService.Firing.Materials;

/// <summary>What bodies and coats have in common: a name, and where its figures come from.</summary>
internal abstract class Material
{
    /// <summary>Id in the data package or an overlay; null for a caller's own.</summary>
    public required string? Id { get; init; }

    /// <summary>What it is called in a sentence.</summary>
    public required string Name { get; init; }

    /// <summary>The name at the beginning of a sentence.</summary>
    public string NameFirst => char.ToUpperInvariant(Name[0]) + Name[1..];

    /// <summary>Ids of the sources; none for a caller's own.</summary>
    public required IReadOnlyList<string> Sources { get; init; }

    /// <summary>How far its cones can be trusted; null for a caller's own.</summary>
    public required Confidence? Confidence { get; init; }

    /// <summary>Ids of the cautions that belong to it.</summary>
    public required IReadOnlyList<string> Cautions { get; init; }
}
