using ConeService.Api.Operation.Signals;
using ConeService.Contract.Datasets;
using ConeService.Data;
using Microsoft.Extensions.Options;

namespace ConeService.Api.Http;

/// <summary>Holds the snapshot in use; it changes when the data package does. A change that is invalid is logged and not used.</summary>
internal sealed class SnapshotHolder : IDisposable
{
    private readonly ReloadingHolder<Snapshot> holder;

    public SnapshotHolder(IOptions<DatasetSettings> settings, ILoggerFactory loggers, ServiceMetrics metrics, TimeProvider time)
    {
        var log = loggers.CreateLogger("ConeService.Data");
        holder = new(
            new() { Path = settings.Value.Path, Overlays = [.. settings.Value.Overlays] },
            dataset => new Snapshot(dataset),
            time: time,
            failed: failure =>
            {
                metrics.PackageRefused();
                log.LogError("The changed data package was refused; the one before stays in use. {Reason}", failure.Message);
            });
        holder.Subscribe(s =>
        {
            metrics.Uses(s.Dataset.VersionId, s.Dataset.Checksum);
            log.LogInformation("Data package {Version}, checksum {Checksum}", s.Dataset.VersionId, s.Dataset.Checksum);
            foreach (var warning in s.Dataset.Warnings) log.LogWarning("{Package}: {Warning}", warning.Package, warning.ToString());
        });
    }

    public Snapshot Current => holder.Current;

    /// <summary>A package that lies in the place of the one in use and is not used; null when there is none.</summary>
    public PackageNotUsed? NotUsed => holder.Waiting is { } waiting ? new(waiting.Standing, waiting.Since, waiting.Reason) : null;

    public void Dispose() => holder.Dispose();
}
