using ConeService.Data;
using ConeService.Firing.Colours;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Colours;

/// <summary>What the answers on colour look up by name is a need of the package, told when it is opened and not met by a request.</summary>
public class ColourRequirementTests
{
    [Fact]
    public void The_reference_package_has_all_of_it() => Assert.Empty(ColourCatalogue.Requires(Reference.Dataset));

    // Cautions of vapour kilns are chosen by the word salt; a package that calls them all soda would raise none for salt.
    [Fact]
    public void A_package_without_a_caution_for_salt_is_refused()
    {
        var data = DatasetLoader.Load(new EditedPackage("cautions.csv", "critical,salt,", "critical,soda,"));
        var fault = Assert.Single(FiringReference.Faults(data));
        Assert.Equal(
            ("cautions.csv", "applies_to", FaultRules.NeededByComputation, "has no 'salt'; the warnings on colours need one"),
            (fault.File, fault.Field, fault.Rule, fault.Reason));
    }
}
