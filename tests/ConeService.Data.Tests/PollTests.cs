using Microsoft.Extensions.Time.Testing;

namespace ConeService.Data.Tests;

/// <summary>When a package on disk is taken by itself, and what is told of one that is not.</summary>
public sealed class PollTests : IDisposable
{
    private const string Descriptor = "datapackage.json";
    private static readonly TimeSpan Interval = ReloadingHolder<Dataset>.Interval;

    private readonly InMemoryPackage _package = MinimalPackage.Create();
    private readonly TemporaryDirectory _home = new();
    private readonly FakeTimeProvider _time = new(new(2026, 2, 3, 4, 5, 6, TimeSpan.Zero));
    private readonly List<Exception> _failures = [];
    private readonly string _path;

    public PollTests()
    {
        _path = Path.Combine(_home.Path, "data");
        _package.Seal();
        Write(_path);
    }

    public void Dispose() => _home.Dispose();

    [Fact]
    public void A_package_is_taken_when_its_descriptor_changes_and_nobody_writes()
    {
        using var holder = Open();
        Edit("Test chart", "New chart");
        Look();
        Assert.Equal("Test chart", holder.Current.Charts[0].Title);
        Assert.Equal((PackageStanding.Pending, _time.GetUtcNow()), (holder.Waiting!.Standing, holder.Waiting.Since));
        Look();

        Assert.Equal("New chart", holder.Current.Charts[0].Title);
        Assert.Null(holder.Waiting);
        Assert.Empty(_failures);
    }

    // As a copy that stands still half way: the seal is still the old one.
    [Fact]
    public void Tables_alone_change_nothing_and_the_package_is_told_to_be_pending()
    {
        using var holder = Open();
        _package.Replace("charts.csv", "Test chart", "New chart");
        Put("charts.csv");
        Look(3);

        Assert.Equal("Test chart", holder.Current.Charts[0].Title);
        Assert.Equal(PackageStanding.Pending, holder.Waiting!.Standing);
        Assert.Contains("--seal", holder.Waiting.Reason, StringComparison.Ordinal);
        _package.Seal();
        Put(Descriptor);
        Look(2);
        Assert.Equal("New chart", holder.Current.Charts[0].Title);
        Assert.Null(holder.Waiting);
    }

    [Fact]
    public void A_descriptor_that_came_before_its_tables_is_refused_until_they_come()
    {
        using var holder = Open();
        _package.Replace("charts.csv", "Test chart", "New chart");
        _package.Seal();
        Put(Descriptor);
        Look();
        var since = _time.GetUtcNow();
        Look();
        Assert.Equal((PackageStanding.Refused, since), (holder.Waiting!.Standing, holder.Waiting.Since));
        Assert.StartsWith("charts.csv: has ", holder.Waiting.Reason, StringComparison.Ordinal);
        Put("charts.csv");
        Look(2);

        Assert.Equal("New chart", holder.Current.Charts[0].Title);
        Assert.Null(holder.Waiting);
    }

    [Fact]
    public void A_refused_package_is_told_once_and_going_back_clears_it()
    {
        using var holder = Open();
        var before = holder.Current;
        Edit("large", "huge");
        Look(40);
        Assert.Same(before, holder.Current);
        Assert.Equal(
            "charts.csv line 2, field cone_form: is 'huge'; it must be one of self-supporting, large, small, pce, seger, not-stated "
            + "(rule enum)", holder.Waiting!.Reason);
        Assert.Single(_failures);
        Edit("huge", "large");
        Look(2);

        Assert.Same(before, holder.Current);
        Assert.Null(holder.Waiting);
        Edit("large", "huge");
        Look(2);
        Assert.Equal(2, _failures.Count);
    }

    [Fact]
    public void A_busy_writer_delays_it_for_a_bounded_time()
    {
        using var holder = Open();
        Edit("Test chart", "New chart");
        var looks = 0;
        for (; looks < 100 && holder.Current.Charts[0].Title == "Test chart"; looks++)
        {
            File.AppendAllText(Path.Combine(_path, "notes.txt"), "busy\n");
            Look();
        }

        Assert.Equal("New chart", holder.Current.Charts[0].Title);
        // 20 s after it was first seen.
        Assert.Equal(11, looks);
    }

    [Fact]
    public void A_directory_in_the_place_of_another_is_seen_though_its_times_are_older()
    {
        using var holder = Open();
        _package.Replace("charts.csv", "Test chart", "New chart");
        _package.Seal();
        var beside = Path.Combine(_home.Path, "next");
        Write(beside);
        foreach (var file in Directory.GetFiles(beside))
            File.SetLastWriteTimeUtc(file, new(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        Directory.Move(_path, _path + "-old");
        Directory.Move(beside, _path);
        Look(2);

        Assert.Equal("New chart", holder.Current.Charts[0].Title);
    }

    [Fact]
    public void A_link_that_is_turned_is_seen_and_turned_back_leaves_the_last_good_one()
    {
        var link = Path.Combine(_home.Path, "current");
        Directory.CreateSymbolicLink(link, _path);
        using var holder = Open(link);
        var before = holder.Current;
        _package.Replace("charts.csv", "large", "huge");
        _package.Seal();
        Write(Path.Combine(_home.Path, "next"));
        Turn("next");
        Look(2);
        Assert.Same(before, holder.Current);
        Assert.Equal(PackageStanding.Refused, holder.Waiting!.Standing);
        Turn("data");
        Look();
        Assert.Null(holder.Waiting);
        _package.Replace("charts.csv", "huge", "small");
        _package.Seal();
        Write(Path.Combine(_home.Path, "third"));
        Turn("third");
        Look(2);

        Assert.Equal("small", holder.Current.Charts[0].ConeForm);

        void Turn(string to)
        {
            Directory.Delete(link);
            Directory.CreateSymbolicLink(link, Path.Combine(_home.Path, to));
        }
    }

    [Fact]
    public void Of_a_directory_that_is_gone_the_last_package_stays_and_no_path_is_told()
    {
        using var holder = Open();
        Directory.Move(_path, _path + "-gone");
        Look(2);

        Assert.Equal("Test chart", holder.Current.Charts[0].Title);
        Assert.Equal("the package cannot be read (rule unreadable-file)", holder.Waiting!.Reason);
        Directory.Move(_path + "-gone", _path);
        Look();
        Assert.Null(holder.Waiting);
    }

    [Fact]
    public void Other_times_of_the_same_files_are_no_change()
    {
        using var holder = Open();
        var before = holder.Current;
        File.SetLastWriteTimeUtc(Path.Combine(_path, "charts.csv"), new(2020, 1, 1, 0, 0, 0, DateTimeKind.Utc));
        Look(3);

        Assert.Same(before, holder.Current);
        Assert.Null(holder.Waiting);
    }

    [Fact]
    public void An_archive_and_an_overlay_are_seen_too()
    {
        var archive = Path.Combine(_home.Path, "package.zip");
        ReleasedPackages.Zip(_package, archive);
        var overlay = MinimalOverlay.Create();
        using var directory = TemporaryDirectory.With(overlay);
        using var holder = new ReloadingHolder<Dataset>(
            new DatasetOptions { Path = archive, Overlays = [directory.Path] }, d => d, time: _time);
        _package.Replace("charts.csv", "Test chart", "Zipped chart");
        _package.Seal();
        ReleasedPackages.Zip(_package, archive);
        Look(2);
        Assert.Equal(["Zipped chart", "Own chart"], holder.Current.Charts.Select(c => c.Title));
        overlay.Replace("charts.csv", "Own chart", "Our chart");
        overlay.EditDescriptor(j => j["version"] = "2.2.0");
        directory.Put(overlay, "charts.csv");
        directory.Put(overlay, Descriptor);
        Look(2);

        Assert.Equal("Our chart", holder.Current.Charts[1].Title);
    }

    [Fact]
    public void What_cannot_be_built_is_refused_without_words_of_the_machine()
    {
        using var holder = new ReloadingHolder<Dataset>(
            new DatasetOptions { Path = _path },
            d => d.Charts[0].Title == "Test chart" ? d : throw new InvalidOperationException("in /a/path"), time: _time);
        Edit("Test chart", "New chart");
        Look(2);

        Assert.Equal("nothing can be built from it; the log says more", holder.Waiting!.Reason);
    }

    [Fact]
    public void Of_many_faults_three_are_told()
    {
        using var holder = Open();
        for (var i = 0; i < 5; i++)
            _package.Append("sources.csv", $"z{i},nonsense,A book,,,n/a,whole");
        _package.Seal();
        Put("sources.csv");
        Put(Descriptor);
        Look(2);

        Assert.EndsWith(" … and 2 more", holder.Waiting!.Reason, StringComparison.Ordinal);
        Assert.Equal(2, holder.Waiting.Reason.Split(" · ").Length - 1);
    }

    private ReloadingHolder<Dataset> Open(string? path = null) =>
        new(new DatasetOptions { Path = path ?? _path }, d => d, time: _time, failed: _failures.Add);

    private void Look(int times = 1)
    {
        for (var i = 0; i < times; i++)
            _time.Advance(Interval);
    }

    private void Edit(string old, string replacement)
    {
        _package.Replace("charts.csv", old, replacement);
        _package.Seal();
        Put("charts.csv");
        Put(Descriptor);
    }

    private void Put(string file) => File.WriteAllBytes(Path.Combine(_path, file), _package.Read(file));

    private void Write(string directory)
    {
        Directory.CreateDirectory(directory);
        foreach (var name in _package.List())
            File.WriteAllBytes(Path.Combine(directory, name), _package.Read(name));
    }
}
