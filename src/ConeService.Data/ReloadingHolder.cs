namespace ConeService.Data;

/// <summary>
/// Holds what is built from the package that <see cref="DatasetOptions"/> names, and swaps in a newer one when its datapackage.json
/// changes: the newer package is loaded and built beside the old one, and used only if it is valid, can be built and differs. Loading,
/// building and publishing happen under one lock, so what is published last was read last.
/// </summary>
/// <typeparam name="T">What is made of the package; immutable, or safe to read from many threads.</typeparam>
public sealed class ReloadingHolder<T> : IDisposable
    where T : class
{
    /// <summary>How often packages on disk are looked at.</summary>
    public static readonly TimeSpan Interval = TimeSpan.FromSeconds(2);

    private readonly Lock _reloading = new();
    private readonly List<Action<T>> _subscribers = [];
    private readonly DatasetOptions _options;
    private readonly Func<Dataset, T> _build;
    private readonly IReadOnlyList<PackageRequirement> _requirements;
    private readonly TimeProvider _time;
    private readonly Action<Exception>? _failed;
    private readonly IReadOnlyList<string> _paths;
    private readonly PackagePoll _poll;
    private readonly ITimer? _timer;
    private string _checksum;
    private string? _told;
    private volatile WaitingPackage? _waiting;
    private volatile T _current;

    /// <summary>Loads the package, builds from it, and starts to look at the package's paths, if it has any.</summary>
    /// <param name="options">Which package to use.</param>
    /// <param name="build">Makes the finished object; where it throws, the package is refused.</param>
    /// <param name="requirements">What the caller needs of the package beyond its own rules.</param>
    /// <param name="time">Times the looks and tells since when a package waits; the system's when null.</param>
    /// <param name="failed">Told why a changed package was not taken, once for each reason, or what a subscriber threw.</param>
    /// <exception cref="InvalidPackageException">The package breaks rules or cannot be read.</exception>
    public ReloadingHolder(
        DatasetOptions options,
        Func<Dataset, T> build,
        IReadOnlyList<PackageRequirement>? requirements = null,
        TimeProvider? time = null,
        Action<Exception>? failed = null)
    {
        (_options, _build, _requirements, _failed) = (options, build, requirements ?? [], failed);
        _time = time ?? TimeProvider.System;
        _paths = string.IsNullOrWhiteSpace(options.Path) ? [.. options.Overlays] : [options.Path, .. options.Overlays];
        // Before the package is read: what is written meanwhile is another package at the first look.
        _poll = new(_paths, PackageStamp.Of(_paths));
        var dataset = DatasetLoader.Load(options, _requirements);
        (_checksum, _current) = (dataset.Checksum, build(dataset));
        if (_paths.Count == 0)
            return;
        _timer = _time.CreateTimer(_ => Look(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        _timer.Change(Interval, Timeout.InfiniteTimeSpan);
    }

    /// <summary>The package that lies where the one in use came from and is not used; null when there is none.</summary>
    public WaitingPackage? Waiting => _waiting;

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

    /// <summary>Loads the package again now, without waiting for its datapackage.json to change.</summary>
    /// <returns>True when a different, valid package came into use; false when it is the same or was refused.</returns>
    public bool TryReload()
    {
        lock (_reloading)
        {
            _told = null;
            return TryReload(PackageStamp.Of(_paths));
        }
    }

    /// <summary>Stops looking; <see cref="Current"/> stays as it is.</summary>
    public void Dispose() => _timer?.Dispose();

    private void Look()
    {
        lock (_reloading)
        {
            var (result, stamp) = _poll.Look(_time.GetUtcNow());
            switch (result)
            {
                case PollResult.InUse:
                    (_waiting, _told) = (null, null);
                    break;
                case PollResult.BeingWritten:
                    Wait(PackageStanding.Pending, "it is still being written");
                    break;
                case PollResult.FilesChanged when IsInUse():
                    _poll.Use(stamp);
                    _waiting = null;
                    break;
                case PollResult.FilesChanged:
                    Wait(PackageStanding.Pending,
                        "files are others and datapackage.json is not; where they are meant, seal them: check-data DIRECTORY --seal");
                    break;
                case PollResult.Read:
                    TryReload(stamp);
                    break;
            }
        }

        _timer!.Change(Interval, Timeout.InfiniteTimeSpan);
    }

    private bool TryReload(PackageStamp stamp)
    {
        // Called from a timer: whatever goes wrong must reach the host and not end the process.
        try
        {
            var dataset = DatasetLoader.Load(_options, _requirements);
            var differs = dataset.Checksum != _checksum;
            if (differs)
                (_current, _checksum) = (_build(dataset), dataset.Checksum);
            _poll.Use(stamp);
            (_waiting, _told) = (null, null);
            if (differs)
                _subscribers.ForEach(Publish);
            return differs;
        }
        catch (Exception e)
        {
            Wait(PackageStanding.Refused, WaitingPackage.Why(e));
            if (_told != e.Message)
                _failed?.Invoke(e);
            _told = e.Message;
            return false;
        }
    }

    private void Wait(PackageStanding standing, string reason) =>
        _waiting = new(standing, _poll.Since ?? _waiting?.Since ?? _time.GetUtcNow(), reason);

    // Only looked at from outside until now: times change where contents don't.
    private bool IsInUse()
    {
        var faults = new List<PackageFault>();
        IEnumerable<IPackageFiles> packages = _paths.Select(PackageFiles.At);
        if (string.IsNullOrWhiteSpace(_options.Path))
            packages = packages.Prepend(new EmbeddedPackageFiles());
        var taken = packages.Select(p => PackageSnapshot.Take(p, faults)).OfType<PackageSnapshot>().ToList();
        return faults.Count == 0 && PackageChecksum.OfPackages(taken) == _checksum;
    }

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
