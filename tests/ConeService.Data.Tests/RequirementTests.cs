namespace ConeService.Data.Tests;

/// <summary>What a caller needs of a package beyond the package's own rules.</summary>
public sealed class RequirementTests
{
    private readonly Scenario _scenario = new();

    [Fact]
    public void What_a_caller_misses_is_reported_like_any_other_fault()
    {
        PackageRequirement heat = d => d.KilnHeats.Count > 9 ? [] : [d.Fault("kiln-heats", "id", "needs-heats", "has too few rows")];
        PackageRequirement chart = d => [d.Fault("charts", null, "needs-chart", "lacks the chart asked for")];

        var invalid = Assert.Throws<InvalidPackageException>(() => DatasetLoader.Load(_scenario.Base, requirements: [heat, chart]));

        Assert.Equal(
            [
                new("minimal", "charts.csv", null, null, "needs-chart", "lacks the chart asked for"),
                new("minimal", "kiln-heats.csv", null, "id", "needs-heats", "has too few rows"),
            ],
            invalid.Faults);
        Assert.Contains("minimal: kiln-heats.csv, field id: has too few rows (rule needs-heats)", invalid.Message,
            StringComparison.Ordinal);
    }

    [Fact]
    public void A_package_that_meets_them_is_used()
    {
        PackageRequirement cones = d => d.Cones.Count > 0 ? [] : [d.Fault("cones", null, "needs-cones", "is empty")];

        Assert.NotEmpty(DatasetLoader.Load(_scenario.Base, requirements: [cones]).Cones);
    }

    [Fact]
    public void They_are_asked_only_of_a_package_that_is_otherwise_valid()
    {
        _scenario.Base.Replace("charts.csv", "large", "huge");
        PackageRequirement never = _ => throw new InvalidOperationException("asked");

        Assert.Equal(
            FaultRules.Enum,
            Assert.Single(Assert.Throws<InvalidPackageException>(() => DatasetLoader.Load(_scenario.Base, requirements: [never])).Faults)
            .Rule);
    }
}
