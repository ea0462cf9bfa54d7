namespace ConeService.Api.Http;

/// <summary>Where the data package comes from: section <c>ConeService:Data</c> of the configuration.</summary>
internal sealed class DatasetSettings
{
    /// <summary>Directory or ZIP archive of a package that replaces the embedded one; null for the embedded one.</summary>
    public string? Path { get; set; }

    /// <summary>Directories or ZIP archives of studio overlays.</summary>
    public IList<string> Overlays { get; } = [];
}
