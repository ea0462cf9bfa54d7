using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Loads;

/// <summary>What the load check looks up by name must be in a package, or the package is refused before anybody asks.</summary>
public sealed class LoadRequirementTests
{
    [Fact]
    public void A_package_without_a_load_rule_is_refused() => AssertRefused(
        new EditedPackage().Rename("suspect-the-zero-first", "suspect-the-zero-last"), "load-rules.csv", "suspect-the-zero-first");

    [Fact]
    public void A_package_without_a_caution_is_refused() => AssertRefused(
        new EditedPackage().Rename("explosive-reduction", "explosive-reductions"), "cautions.csv", "explosive-reduction");

    [Fact]
    public void A_package_without_a_kiln_heat_is_refused() => AssertRefused(
        new EditedPackage().Without("kiln-heats", row => row.StartsWith("raku,", StringComparison.Ordinal)), "kiln-heats.csv", "raku");

    [Fact]
    public void A_package_without_a_kind_of_firing_is_refused() => AssertRefused(
        new EditedPackage().Without("firing-kinds", row => row.StartsWith("saggar,", StringComparison.Ordinal)),
        "firing-kinds.csv", "saggar");

    [Fact]
    public void A_package_without_a_default_of_fitting_is_refused() => AssertRefused(
        new EditedPackage().Without("schedule-defaults", row => row.StartsWith("loading-minutes,", StringComparison.Ordinal)),
        "schedule-defaults.csv", "loading-minutes");

    [Theory]
    [InlineData("1.3.0")]
    [InlineData("1.4.0")]
    [InlineData("1.5.0")]
    [InlineData("1.6.0")]
    public void A_package_as_it_was_shipped_still_judges_loads(string version)
    {
        var archive = Path.Combine(
            Repository.Root, "releases", $"cone-service-data-{version}.zip");
        var door = FiringReference.Open(DatasetLoader.LoadPath(archive));

        // By clay-bodies of those versions red earthenware melts 8 cones over its best, 04: at cone 10.
        var answer = door.Loads.Check(Loads.Load(Loads.Gas, Loads.Firing("glaze", "10", "oxidation"), Loads.Piece("a", "red-earthenware")));

        Assert.Equal(Verdict.Refuse, answer.Verdict);
        Assert.Contains("melts onto the shelf", answer.Pieces[0].Reasons[0].Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_package_of_before_the_loads_is_asked_for_nothing()
    {
        string[] tables = ["kiln-heats", "firing-kinds", "load-rules"];
        var package = new EditedPackage()
            .Without("disagreements", row => tables.Any(t => row.Contains(t + "/", StringComparison.Ordinal)))
            .Without("renamed-ids", row => row.StartsWith("load-rules,", StringComparison.Ordinal)
                || row.StartsWith("disagreements,", StringComparison.Ordinal));
        foreach (var table in tables) package.Without(table, _ => true);

        Assert.Empty(FiringReference.Faults(DatasetLoader.Load(package)));
    }

    // The verb check-data asks by the same requirement.
    private static void AssertRefused(EditedPackage package, string file, string id)
    {
        var opened = Assert.Throws<InvalidPackageException>(() => FiringReference.Open(DatasetLoader.Load(package)));
        var loaded = Assert.Throws<InvalidPackageException>(() => DatasetLoader.Load(package, requirements: [FiringReference.Faults]));

        var fault = Assert.Single(opened.Faults);
        Assert.Equal((file, "id", FaultRules.NeededByComputation), (fault.File, fault.Field, fault.Rule));
        Assert.Contains($"'{id}'", fault.Reason, StringComparison.Ordinal);
        Assert.Equal(opened.Faults, loaded.Faults);
    }
}
