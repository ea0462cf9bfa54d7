namespace ConeService.Data;

/// <summary>Which data package to use.</summary>
public sealed record DatasetOptions
{
    /// <summary>Directory or ZIP archive of a package that replaces the embedded one; null or blank keeps the embedded one.</summary>
    public string? Path { get; init; }

    /// <summary>Directories or ZIP archives of a studio's own packages, in the order in which they are added.</summary>
    public IReadOnlyList<string> Overlays { get; init; } = [];
}
