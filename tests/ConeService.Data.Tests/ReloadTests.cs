namespace ConeService.Data.Tests;

public sealed class ReloadTests : IDisposable
{
    private readonly InMemoryPackage _package = MinimalPackage.Create();
    private readonly TemporaryDirectory _directory;
    private readonly List<Exception> _failures = [];
    private readonly List<string> _swaps = [];
    private readonly string _first;

    public ReloadTests()
    {
        _directory = TemporaryDirectory.With(_package);
        _first = DatasetLoader.LoadPath(_directory.Path).Checksum;
    }

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
        using var holder = new ReloadingHolder<Dataset>(new DatasetOptions(), d => d);

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
        Assert.Equal([_first, holder.Current.Checksum], _swaps);
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
        Assert.Equal([_first], _swaps);
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
        using var holder = new ReloadingHolder<Dataset>(
            new DatasetOptions { Path = _directory.Path, Overlays = [directory.Path] }, d => d, time: new SilentTimeProvider());
        overlay.Replace("charts.csv", "Own chart", "Our chart");
        directory.Put(overlay, "charts.csv");

        Assert.True(holder.TryReload());
        Assert.Equal("Our chart", holder.Current.Charts[1].Title);
    }

    [Fact]
    public void A_subscriber_that_fails_does_not_end_the_process_nor_keep_the_others_from_hearing()
    {
        using var holder = Open();
        holder.Subscribe(d =>
        {
            if (d.Checksum != _first)
                throw new InvalidOperationException("subscriber");
        });
        var heard = new List<string>();
        holder.Subscribe(d => heard.Add(d.Charts[0].Title));
        Change("Test chart", "New chart");

        Assert.True(holder.TryReload());
        Assert.Equal("New chart", holder.Current.Charts[0].Title);
        Assert.Equal(["Test chart", "New chart"], heard);
        Assert.IsType<InvalidOperationException>(Assert.Single(_failures));
    }

    [Fact]
    public void What_is_built_is_what_is_held()
    {
        using var holder = Building(d => new Built(d.Charts[0].Title));
        Change("Test chart", "New chart");

        Assert.True(holder.TryReload());
        Assert.Equal("New chart", holder.Current.Title);
    }

    [Fact]
    public void A_package_from_which_nothing_can_be_built_is_refused()
    {
        using var holder = Building(d => d.Charts[0].Title == "Test chart"
            ? new Built("first")
            : throw new InvalidOperationException("build"));
        var before = holder.Current;
        Change("Test chart", "New chart");

        Assert.False(holder.TryReload());
        Assert.Same(before, holder.Current);
        Assert.Equal("build", Assert.Single(_failures).Message);
        // It was not taken, so it is tried again.
        Assert.False(holder.TryReload());
        Assert.Equal(2, _failures.Count);
    }

    [Fact]
    public void A_package_that_the_caller_cannot_use_is_refused_with_the_caller_s_faults()
    {
        PackageRequirement requirement = d => d.Charts[0].Title == "Test chart" ? [] : [d.Fault("charts", "title", "own-rule", "is new")];
        using var holder = new ReloadingHolder<Dataset>(
            new DatasetOptions { Path = _directory.Path }, d => d, [requirement], new SilentTimeProvider(), _failures.Add);
        Change("Test chart", "New chart");

        Assert.False(holder.TryReload());
        Assert.Equal("own-rule", Assert.IsType<InvalidPackageException>(Assert.Single(_failures)).Faults.Single().Rule);
    }

    [Fact]
    public async Task Of_two_overlapping_reloads_the_newest_package_stays_though_the_first_is_slow_to_build()
    {
        using var building = new ManualResetEventSlim();
        using var finish = new ManualResetEventSlim();
        var stop = TestContext.Current.CancellationToken;
        using var holder = Building(d =>
        {
            if (d.Charts[0].Title == "Slow chart")
            {
                building.Set();
                finish.Wait(stop);
            }

            return new Built(d.Charts[0].Title);
        });
        var heard = new List<string>();
        holder.Subscribe(b => heard.Add(b.Title));

        Change("Test chart", "Slow chart");
        var slow = Task.Run(holder.TryReload, stop);
        building.Wait(stop);
        Change("Slow chart", "Newest chart");
        var newest = Task.Run(holder.TryReload, stop);
        // Given the time to overtake: without the lock it would be published first and then replaced by the slow one.
        await Task.WhenAny(newest, Task.Delay(200, stop));
        Assert.False(newest.IsCompleted);
        finish.Set();

        Assert.True(await slow);
        Assert.True(await newest);
        Assert.Equal("Newest chart", holder.Current.Title);
        Assert.Equal(["Test chart", "Slow chart", "Newest chart"], heard);
    }

    [Fact]
    public async Task A_subscriber_who_comes_while_a_reload_runs_hears_its_end()
    {
        using var building = new ManualResetEventSlim();
        var stop = TestContext.Current.CancellationToken;
        using var holder = Building(d =>
        {
            if (d.Charts[0].Title == "New chart")
                building.Set();
            return new Built(d.Charts[0].Title);
        });
        Change("Test chart", "New chart");
        var reload = Task.Run(holder.TryReload, stop);
        building.Wait(stop);
        var heard = new List<string>();

        holder.Subscribe(b => heard.Add(b.Title));

        Assert.True(await reload);
        Assert.Equal("New chart", heard[^1]);
    }

    // The clock that never rings keeps the watch out of tests that reload by hand.
    private ReloadingHolder<Dataset> Open()
    {
        var holder = new ReloadingHolder<Dataset>(
            new DatasetOptions { Path = _directory.Path }, d => d, time: new SilentTimeProvider(), failed: _failures.Add);
        holder.Subscribe(d => _swaps.Add(d.Checksum));
        return holder;
    }

    private ReloadingHolder<Built> Building(Func<Dataset, Built> build) =>
        new(new DatasetOptions { Path = _directory.Path }, build, time: new SilentTimeProvider(), failed: _failures.Add);

    private void Change(string old, string replacement)
    {
        _package.Replace("charts.csv", old, replacement);
        _directory.Put(_package, "charts.csv");
    }

    private sealed record Built(string Title);

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
