namespace ConeService.Data.Tests;

public sealed class OverlayTests
{
    private readonly Scenario _scenario = new();

    [Fact]
    public void An_overlay_adds_its_rows_after_those_of_the_base()
    {
        _scenario.AddOverlay();

        var dataset = _scenario.Load();

        Assert.Equal(["test-chart", "north-shed-chart"], dataset.Charts.Select(c => c.Id));
        Assert.Equal(6, dataset.EndPoints.Count);
        Assert.Equal(1030m, dataset.EndPoints[4].Celsius);
    }

    [Fact]
    public void The_version_names_the_overlays_in_the_order_given()
    {
        _scenario.AddOverlay();
        _scenario.AddOverlay("attic", "0.3.0-rc.1");

        Assert.Equal("1.0.0+north-shed.2.1.0.attic.0.3.0-rc.1", _scenario.Load().VersionId);
    }

    [Fact]
    public void The_resources_name_their_packages_base_first()
    {
        _scenario.AddOverlay();

        var resources = _scenario.Load().Resources.Select(r => (r.Package, r.Name, r.Rows)).ToList();

        Assert.Equal(("minimal", "sources", 4), resources[0]);
        Assert.Equal([("north-shed", "sources", 1), ("north-shed", "charts", 1), ("north-shed", "end-points", 2)], resources[^3..]);
    }

    [Fact]
    public void An_overlay_may_cite_a_source_of_the_base()
    {
        _scenario.AddOverlay().Replace("charts.csv", "north-shed-tests", "seen-chart");

        Assert.Equal("seen-chart", _scenario.Load().Charts[1].Source);
    }

    [Fact]
    public void An_overlay_loads_over_the_embedded_package_from_a_directory()
    {
        using var directory = TemporaryDirectory.With(MinimalOverlay.Create());

        var dataset = DatasetLoader.LoadEmbedded([directory.Path]);

        Assert.Equal(Repository.Version + "+north-shed.2.1.0", dataset.VersionId);
        Assert.Equal("north-shed-chart", dataset.Charts[^1].Id);
    }

    [Fact]
    public void Faults_of_base_and_overlay_are_told_together()
    {
        _scenario.Base.Replace("charts.csv", "large", "huge");
        _scenario.AddOverlay().Replace("charts.csv", "large", "tiny");

        var faults = Assert.Throws<InvalidPackageException>(_scenario.Load).Faults;

        Assert.Equal(["minimal", "north-shed"], faults.Select(f => f.Package));
    }
}
