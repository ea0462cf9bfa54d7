namespace ConeService.Data.Tests;

public sealed class ReloadTests : IDisposable
{
    private readonly InMemoryPackage _package = MinimalPackage.Create();
    private readonly TemporaryDirectory _directory;
    private readonly List<Exception> _failures = [];
    private readonly List<string> _swaps = [];

    public ReloadTests() => _directory = TemporaryDirectory.With(_package);

    public void Dispose() => _directory.Dispose();

    [Fact]
    public void An_invalid_package_stops_the_start()
    {
        Change("large", "huge");

        Assert.Throws<InvalidPackageException>(Open);
    }

    [Fact]
    public void Without_directories_the_embedded_package_is_held()
    {
        using var holder = new ReloadingDatasetHolder(new DatasetOptions());

        Assert.Equal(Repository.Version, holder.Current.VersionId);
        Assert.False(holder.TryReload());
    }

    [Fact]
    public void A_changed_valid_package_is_swapped_in_and_announced()
    {
        using var holder = Open();
        Change("Test chart", "New chart");

        Assert.True(holder.TryReload());
        Assert.Equal("New chart", holder.Current.Charts[0].Title);
        Assert.Equal([holder.Current.Checksum], _swaps);
    }

    [Fact]
    public void An_unchanged_package_is_not_swapped()
    {
        using var holder = Open();
        var before = holder.Current;

        Assert.False(holder.TryReload());
        Assert.Same(before, holder.Current);
        Assert.Empty(_failures);
    }

    [Fact]
    public void A_changed_package_that_breaks_a_rule_leaves_the_old_one_in_use_and_says_why()
    {
        using var holder = Open();
        var before = holder.Current;
        Change("large", "huge");

        Assert.False(holder.TryReload());
        Assert.Same(before, holder.Current);
        Assert.Empty(_swaps);
        Assert.Equal(FaultRules.Enum, Assert.IsType<InvalidPackageException>(Assert.Single(_failures)).Faults[0].Rule);
    }

    [Fact]
    public void A_mended_package_is_taken_after_a_broken_one()
    {
        using var holder = Open();
        Change("large", "huge");
        holder.TryReload();
        Change("huge", "small");

        Assert.True(holder.TryReload());
        Assert.Equal("small", holder.Current.Charts[0].ConeForm);
    }

    [Fact]
    public void A_changed_overlay_is_swapped_in()
    {
        var overlay = MinimalOverlay.Create();
        using var directory = TemporaryDirectory.With(overlay);
        using var holder = new ReloadingDatasetHolder(new DatasetOptions { Path = _directory.Path, Overlays = [directory.Path] }, new SilentTimeProvider());
        overlay.Replace("charts.csv", "Own chart", "Our chart");
        directory.Put(overlay, "charts.csv");

        Assert.True(holder.TryReload());
        Assert.Equal("Our chart", holder.Current.Charts[1].Title);
    }

    [Fact]
    public async Task A_file_event_swaps_the_package_in_by_itself()
    {
        using var holder = Open(TimeProvider.System);
        var swapped = new TaskCompletionSource<Dataset>(TaskCreationOptions.RunContinuationsAsynchronously);
        holder.Swapped += (_, e) => swapped.TrySetResult(e.Dataset);

        Change("Test chart", "Watched chart");

        var dataset = await swapped.Task.WaitAsync(TimeSpan.FromSeconds(30), TestContext.Current.CancellationToken);
        Assert.Equal("Watched chart", dataset.Charts[0].Title);
    }

    [Fact]
    public void A_listener_that_fails_does_not_end_the_process()
    {
        using var holder = Open();
        holder.Swapped += (_, _) => throw new InvalidOperationException("listener");
        Change("Test chart", "New chart");

        holder.TryReload();

        Assert.Equal("New chart", holder.Current.Charts[0].Title);
        Assert.IsType<InvalidOperationException>(Assert.Single(_failures));
    }

    // The clock that never rings keeps the watch out of tests that reload by hand.
    private ReloadingDatasetHolder Open() => Open(new SilentTimeProvider());

    private ReloadingDatasetHolder Open(TimeProvider time)
    {
        var holder = new ReloadingDatasetHolder(new DatasetOptions { Path = _directory.Path }, time, _failures.Add);
        holder.Swapped += (_, e) => _swaps.Add(e.Dataset.Checksum);
        return holder;
    }

    private void Change(string old, string replacement)
    {
        _package.Replace("charts.csv", old, replacement);
        _directory.Put(_package, "charts.csv");
    }

    private sealed class SilentTimeProvider : TimeProvider
    {
        public override ITimer CreateTimer(TimerCallback callback, object? state, TimeSpan dueTime, TimeSpan period) => new SilentTimer();
    }

    private sealed class SilentTimer : ITimer
    {
        public bool Change(TimeSpan dueTime, TimeSpan period) => true;

        public void Dispose()
        {
        }

        public ValueTask DisposeAsync() => ValueTask.CompletedTask;
    }
}
