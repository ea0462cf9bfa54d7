namespace ConeService.Data;

/// <summary>Calls back once a package has been quiet for a while after a change; copying one raises many events.</summary>
internal sealed class DirectoryWatch : IDisposable
{
    private static readonly TimeSpan Quiet = TimeSpan.FromMilliseconds(500);

    private readonly List<FileSystemWatcher> _watchers = [];
    private readonly ITimer _timer;

    public DirectoryWatch(IEnumerable<string> paths, TimeProvider time, Action changed)
    {
        _timer = time.CreateTimer(_ => changed(), null, Timeout.InfiniteTimeSpan, Timeout.InfiniteTimeSpan);
        foreach (var path in paths)
            _watchers.Add(Watch(path));
        // What changed after the first load and before the watch began is caught by one look now.
        Restart();
    }

    public void Dispose()
    {
        _watchers.ForEach(w => w.Dispose());
        _timer.Dispose();
    }

    private FileSystemWatcher Watch(string path)
    {
        // Of an archive the directory is watched: it is replaced by another file of its name.
        var watcher = PackageFiles.IsArchive(path)
            ? new FileSystemWatcher(Path.GetDirectoryName(Path.GetFullPath(path))!, Path.GetFileName(path))
            : new FileSystemWatcher(path) { IncludeSubdirectories = true };
        watcher.Changed += (_, _) => Restart();
        watcher.Created += (_, _) => Restart();
        watcher.Deleted += (_, _) => Restart();
        watcher.Renamed += (_, _) => Restart();
        // Too many events at once: something changed, whatever it was.
        watcher.Error += (_, _) => Restart();
        watcher.EnableRaisingEvents = true;
        return watcher;
    }

    private void Restart() => _timer.Change(Quiet, Timeout.InfiniteTimeSpan);
}
