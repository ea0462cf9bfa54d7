namespace ConeService.Data;

/// <summary>
/// Holds the package named by <see cref="DatasetOptions"/> and swaps in a newer one when its directories change:
/// the newer package is loaded beside the old one and used only if it is valid and differs.
/// Replace the files inside a directory, not the directory itself: a removed directory is no longer watched.
/// </summary>
public sealed class ReloadingDatasetHolder : IDatasetHolder, IDisposable
{
    private readonly Lock _reloading = new();
    private readonly DatasetOptions _options;
    private readonly Action<Exception>? _failed;
    private readonly DirectoryWatch? _watch;
    private volatile Dataset _current;

    /// <summary>Loads the package and starts to watch its directories, if it has any.</summary>
    /// <param name="options">Which package to use.</param>
    /// <param name="time">Times the wait for a directory to become quiet; the system's when null.</param>
    /// <param name="failed">Told why a changed package was not taken; the old one stays in use.</param>
    /// <exception cref="InvalidPackageException">The package breaks rules or cannot be read.</exception>
    public ReloadingDatasetHolder(DatasetOptions options, TimeProvider? time = null, Action<Exception>? failed = null)
    {
        _options = options;
        _failed = failed;
        _current = Load();
        string[] directories = string.IsNullOrWhiteSpace(options.Path) ? [.. options.Overlays] : [options.Path, .. options.Overlays];
        if (directories.Length > 0)
            _watch = new DirectoryWatch(directories, time ?? TimeProvider.System, () => TryReload());
    }

    /// <inheritdoc />
    public event EventHandler<DatasetSwappedEventArgs>? Swapped;

    /// <inheritdoc />
    public Dataset Current => _current;

    /// <summary>Loads the package again now, without waiting for its directories to change.</summary>
    /// <returns>True when a different, valid package came into use; false when it is the same or not valid.</returns>
    public bool TryReload()
    {
        // Called from a timer: whatever goes wrong, in a listener too, must reach the host and not end the process.
        try
        {
            Dataset loaded;
            lock (_reloading)
            {
                loaded = Load();
                if (loaded.Checksum == _current.Checksum)
                    return false;
                _current = loaded;
            }

            Swapped?.Invoke(this, new DatasetSwappedEventArgs(loaded));
            return true;
        }
        catch (Exception e)
        {
            _failed?.Invoke(e);
            return false;
        }
    }

    /// <summary>Stops watching; <see cref="Current"/> stays as it is.</summary>
    public void Dispose() => _watch?.Dispose();

    private Dataset Load() => string.IsNullOrWhiteSpace(_options.Path)
        ? DatasetLoader.LoadEmbedded(_options.Overlays)
        : DatasetLoader.LoadDirectory(_options.Path, _options.Overlays);
}
