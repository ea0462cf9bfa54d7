namespace ConeService.Data.Tests;

/// <summary>What looks like a break and is none.</summary>
public sealed class ToleratedTests
{
    private readonly Scenario _scenario = new();

    [Theory]
    [InlineData("1031,1888,seen-chart,published,", "1031,1888,seen-chart,published,As printed.", "1046,1915", "1031,1888")]
    [InlineData("1046,1915,seen-chart,published,", "1031,1888,seen-chart,published,As printed.", "1063,1945", "1063,1945")]
    public void A_note_on_either_row_explains_an_end_point_that_does_not_rise(string old, string noted, string other, string replacement)
    {
        _scenario.Base.Replace("end-points.csv", old, noted);
        _scenario.Base.Replace("end-points.csv", other, replacement);
        // No slope can be fitted to points that do not rise.
        _scenario.Base.Replace("bending-energies.csv", "test-chart,05,600.5,,derived,derived,\n", "");

        Assert.Equal(4, _scenario.Load().EndPoints.Count);
    }

    [Fact]
    public void Fahrenheit_may_be_one_degree_off()
    {
        // 1031 °C is 1887.8 °F.
        _scenario.Base.Replace("end-points.csv", "1888", "1888.8");

        Assert.Equal(1888.8m, _scenario.Load().EndPoints[0].Fahrenheit);
    }

    [Fact]
    public void Rows_without_rate_stand_before_those_with_one()
    {
        _scenario.Base.Replace("end-points.csv", "test-chart,04,60", "test-chart,04,,1050,,seen-chart,published,\ntest-chart,04,60");

        Assert.Null(_scenario.Load().EndPoints[2].RateCelsiusPerHour);
    }

    [Fact]
    public void A_descriptor_may_hold_properties_of_its_own()
    {
        _scenario.Base.EditDescriptor(j => j["keeper"] = "the kiln room");
        _scenario.Base.EditField("charts", "title", f => f["example"] = "Cones of the north shed");

        Assert.Single(_scenario.Load().Charts);
    }

    [Fact]
    public void An_unfinished_change_may_head_the_change_log()
    {
        _scenario.Base.Replace("CHANGELOG.md", "# Changes\n", "# Changes\n\n## Unreleased\n");

        Assert.Equal("1.0.0", _scenario.Load().VersionId);
    }

    [Fact]
    public void Trailing_zeros_are_kept()
    {
        _scenario.Base.Replace("bending-energies.csv", "600.5", "600.50");

        Assert.Equal("600.50", _scenario.Load()
            .BendingEnergies[0].ActivationEnergyKilojoulesPerMole.ToString(System.Globalization.CultureInfo.InvariantCulture));
    }
}
