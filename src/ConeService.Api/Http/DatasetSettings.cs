using ConeService.Data;
using Microsoft.Extensions.Options;

namespace ConeService.Api.Http;

/// <summary>Where the data package comes from: section <c>ConeService:Data</c> of the configuration.</summary>
internal sealed class DatasetSettings
{
    /// <summary>Directory of a package that replaces the embedded one; null for the embedded one.</summary>
    public string? Path { get; set; }

    /// <summary>Directories of studio overlays.</summary>
    public IList<string> Overlays { get; } = [];

    /// <summary>Opens the package; a later change that is invalid is logged and not used.</summary>
    public static IDatasetHolder OpenHolder(IServiceProvider services)
    {
        var settings = services.GetRequiredService<IOptions<DatasetSettings>>().Value;
        var log = services.GetRequiredService<ILoggerFactory>().CreateLogger("ConeService.Data");
        var holder = new ReloadingDatasetHolder(
            new DatasetOptions { Path = settings.Path, Overlays = [.. settings.Overlays] },
            failed: failure => log.LogError("The changed data package was refused; the one before stays in use. {Reason}", failure.Message));
        log.LogInformation("Data package {Version}, checksum {Checksum}", holder.Current.VersionId, holder.Current.Checksum);
        holder.Swapped += (_, e) => log.LogInformation("Data package swapped: {Version}, checksum {Checksum}", e.Dataset.VersionId, e.Dataset.Checksum);
        return holder;
    }
}
