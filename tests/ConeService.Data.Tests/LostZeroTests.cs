namespace ConeService.Data.Tests;

/// <summary>An overlay from whose cones a spreadsheet took the zeros is valid, and told.</summary>
public sealed class LostZeroTests
{
    private readonly Scenario _scenario = new();

    [Fact]
    public void Cones_without_any_zero_are_warned_of_with_their_lines()
    {
        var overlay = _scenario.AddOverlay();
        overlay.Replace("end-points.csv", "05,60,1030", "4,60,1030");
        overlay.Replace("end-points.csv", "04,60,1060", "5,60,1060");

        var warning = Assert.Single(_scenario.Load().Warnings);

        Assert.Equal(
            ("north-shed", "end-points.csv", "cone", PackageWarnings.LostZeros),
            (warning.Package, warning.File, warning.Field, warning.Rule));
        Assert.Contains("lines 2, 3 ", warning.Reason, StringComparison.Ordinal);
        Assert.Contains("04 for 4", warning.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void One_zero_shows_that_none_was_taken()
    {
        _scenario.AddOverlay().Replace("end-points.csv", "04,60,1060,1940", "4,60,1160,");

        Assert.Empty(_scenario.Load().Warnings);
    }

    [Fact]
    public void Ranks_beside_the_cones_say_which_was_meant()
    {
        var overlay = _scenario.AddOverlay();
        overlay.Replace("end-points.csv", "05,60,1030", "4,60,1030");
        overlay.Replace("end-points.csv", "04,60,1060", "5,60,1060");
        overlay.Rank("end-points", "cone", "4", "5");
        _scenario.Base.Rank("end-points", "cone", "-5", "-5", "-4", "-4");

        Assert.Empty(_scenario.Load().Warnings);
    }

    [Fact]
    public void Cones_that_have_no_twin_with_a_zero_are_not_warned_of()
    {
        // The zero cones begin at 022: 26 and 27, for refractories, have no twin.
        var overlay = _scenario.AddOverlay();
        overlay.Replace("end-points.csv", "05,60,1030,1886", "26,60,1620,");
        overlay.Replace("end-points.csv", "04,60,1060,1940", "27,60,1640,");

        Assert.Empty(DatasetLoader.Load(new EmbeddedPackageFiles(), [overlay]).Warnings);
    }

    [Fact]
    public void The_reference_package_warns_of_nothing() => Assert.Empty(DatasetLoader.LoadEmbedded().Warnings);
}
