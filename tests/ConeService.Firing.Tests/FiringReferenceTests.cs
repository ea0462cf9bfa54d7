using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests;

/// <summary>The one door: building it is the check that a package holds what the computations look up.</summary>
public sealed class FiringReferenceTests
{
    public static TheoryData<string> ScheduleDefaults => [.. Reference.Dataset.ScheduleDefaults.Select(d => d.Id)];

    [Theory]
    [MemberData(nameof(ScheduleDefaults))]
    public void A_schedule_default_that_is_missing_is_a_fault(string id)
    {
        var fault = Assert.Single(Faults(
            new EditedPackage().Without("schedule-defaults", row => row.StartsWith(id + ",", StringComparison.Ordinal))));

        Assert.Equal(("schedule-defaults.csv", "id", FaultRules.NeededByComputation), (fault.File, fault.Field, fault.Rule));
        Assert.Contains(id, fault.Reason, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_built_when_first_asked_for_answers_the_same()
    {
        var later = FiringReference.OpenWithoutStudy(DatasetLoader.LoadSealed());

        Assert.Equal(
            FiringReference.Open(Reference.Dataset).Study.Search("crazing").Items.Select(h => h.Id),
            later.Study.Search("crazing").Items.Select(h => h.Id));
        Assert.NotEmpty(later.Study.Search("crazing").Items);
    }

    [Fact]
    public void A_default_chart_under_another_name_is_a_fault()
    {
        // A name that sorts where the old one did, so that nothing but the code misses it.
        var package = new EditedPackage().Rename("witness-self-supporting,", "witness-self-supported,");

        Assert.Contains(Faults(package), f => f.Rule == FaultRules.NeededByComputation && f.File == "charts.csv");
    }

    [Theory]
    [InlineData("1.3.0")]
    [InlineData("1.4.0")]
    [InlineData("1.5.0")]
    [InlineData("1.6.0")]
    public void A_package_of_an_earlier_minor_version_loads_and_answers(string version)
    {
        var dataset = DatasetLoader.LoadPath(Archive(version));
        var reference = FiringReference.Open(dataset);

        Assert.Equal(version, dataset.VersionId);
        // Cone 6 at 60 °C/h on the self-supporting chart: the printed 1222 °C (chart of 2016, as in the package of any version).
        Assert.Equal(1222, reference.Cones.EndPoint("6", "60C/h").Celsius);
        var firing = new HeatWorkRequest { Units = "C", Segments = [new(60, 1222, 10)] };
        Assert.Equal("6", reference.HeatWork.Follow(firing).Answer.Reached);
        // A refusal is put into words although the package has no sentences of its own.
        Assert.NotEmpty(Assert.Throws<RefusedException>(() => reference.Cones.EndPoint("0")).Findings[0].Message.ToString());
        Assert.NotEmpty(reference.Practice.Cautions().Items);
        Assert.NotEmpty(reference.Colours.Colorants().Items);
    }

    [Fact]
    public void Version_1_4_judges_a_load_and_fits_a_schedule()
    {
        var reference = FiringReference.Open(DatasetLoader.LoadPath(Archive("1.4.0")));

        var load = new LoadRequest(
            new(Heat: "electric", MaxCone: "10", Atmospheres: ["oxidation"]),
            new("bisque", "06", "oxidation"),
            [new("bowl", Body: "red-earthenware", State: "bone-dry")]);
        Assert.Equal(Verdict.Accept, reference.Loads.Check(load).Verdict);
        Assert.Equal("06", reference.Schedules.Fit("bisque-careful", new(SentText.Of("06"), Units: "C")).Answer.Cone);
    }

    private static IReadOnlyList<PackageFault> Faults(EditedPackage package) =>
        Assert.Throws<InvalidPackageException>(() => DatasetLoader.Load(package, requirements: [FiringReference.Faults])).Faults;

    private static string Archive(string version) => Path.Combine(Repository.Root, "releases", $"cone-service-data-{version}.zip");
}
