namespace ConeService.Data;

/// <summary>
/// Holds what is built from the package that <see cref="DatasetOptions"/> names, and swaps in a newer one when the package changes:
/// the newer package is loaded and built beside the old one, and used only if it is valid, can be built and differs. Loading,
/// building and publishing happen under one lock, so what is published last was read last.
/// Replace the files inside a directory, not the directory itself: a removed directory is no longer watched.
/// </summary>
/// <typeparam name="T">What is made of the package; immutable, or safe to read from many threads.</typeparam>
public sealed class ReloadingHolder<T> : IDisposable
    where T : class
{
    private readonly Lock _reloading = new();
    private readonly List<Action<T>> _subscribers = [];
    private readonly DatasetOptions _options;
    private readonly Func<Dataset, T> _build;
    private readonly IReadOnlyList<PackageRequirement> _requirements;
    private readonly Action<Exception>? _failed;
    private readonly DirectoryWatch? _watch;
    private string _checksum;
    private volatile T _current;

    /// <summary>Loads the package, builds from it, and starts to watch the package's paths, if it has any.</summary>
    /// <param name="options">Which package to use.</param>
    /// <param name="build">Makes the finished object; where it throws, the package is refused.</param>
    /// <param name="requirements">What the caller needs of the package beyond its own rules.</param>
    /// <param name="time">Times the wait for a directory to become quiet; the system's when null.</param>
    /// <param name="failed">Told why a changed package was not taken, or what a subscriber threw.</param>
    /// <exception cref="InvalidPackageException">The package breaks rules or cannot be read.</exception>
    public ReloadingHolder(
        DatasetOptions options,
        Func<Dataset, T> build,
        IReadOnlyList<PackageRequirement>? requirements = null,
        TimeProvider? time = null,
        Action<Exception>? failed = null)
    {
        (_options, _build, _requirements, _failed) = (options, build, requirements ?? [], failed);
        var dataset = DatasetLoader.Load(options, _requirements);
        (_checksum, _current) = (dataset.Checksum, build(dataset));
        string[] paths = string.IsNullOrWhiteSpace(options.Path) ? [.. options.Overlays] : [options.Path, .. options.Overlays];
        if (paths.Length > 0)
            _watch = new DirectoryWatch(paths, time ?? TimeProvider.System, () => TryReload());
    }

    /// <summary>What is in use now.</summary>
    public T Current => _current;

    /// <summary>
    /// Hands over what is in use now and then everything that replaces it, in that order and without a gap. Subscribers are called
    /// one after the other while reloads wait: they must be quick and must not reload.
    /// </summary>
    /// <param name="next">Takes the object.</param>
    public void Subscribe(Action<T> next)
    {
        lock (_reloading)
        {
            next(_current);
            _subscribers.Add(next);
        }
    }

    /// <summary>Loads the package again now, without waiting for its files to change.</summary>
    /// <returns>True when a different, valid package came into use; false when it is the same or was refused.</returns>
    public bool TryReload()
    {
        lock (_reloading)
        {
            // Called from a timer: whatever goes wrong must reach the host and not end the process.
            try
            {
                var dataset = DatasetLoader.Load(_options, _requirements);
                if (dataset.Checksum == _checksum)
                    return false;
                (_current, _checksum) = (_build(dataset), dataset.Checksum);
            }
            catch (Exception e)
            {
                _failed?.Invoke(e);
                return false;
            }

            _subscribers.ForEach(Publish);
            return true;
        }
    }

    /// <summary>Stops watching; <see cref="Current"/> stays as it is.</summary>
    public void Dispose() => _watch?.Dispose();

    // One that fails must not keep the others from hearing.
    private void Publish(Action<T> subscriber)
    {
        try
        {
            subscriber(_current);
        }
        catch (Exception e)
        {
            _failed?.Invoke(e);
        }
    }
}
