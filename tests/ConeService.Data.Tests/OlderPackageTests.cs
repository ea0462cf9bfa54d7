using System.Text.Json.Nodes;

namespace ConeService.Data.Tests;

/// <summary>A minor version adds; what an older package lacks is no fault.</summary>
public sealed class OlderPackageTests
{
    private readonly Scenario _scenario = new();

    // The archives are the reference package as it was shipped; the counts are those of the lines of their files.
    [Theory]
    [InlineData("1.3.0", 602, 0, 0)]
    [InlineData("1.4.0", 602, 30, 32)]
    [InlineData("1.5.0", 602, 30, 32)]
    [InlineData("1.6.0", 602, 30, 32)]
    public void A_package_as_it_was_shipped_still_loads(string version, int endPoints, int templates, int kilnDefaults)
    {
        var dataset = DatasetLoader.Load(new ZipPackageFiles(ReleasedPackages.Path(version)));

        Assert.Equal(version, dataset.VersionId);
        Assert.Equal(
            (endPoints, templates, kilnDefaults),
            (dataset.EndPoints.Count, dataset.ScheduleTemplates.Count, dataset.KilnDefaults.Count));
        // equations came with 1.7; what an answer comes from is told all the same, as this build has it.
        Assert.Contains(dataset.Equations, e => e.Id == "bending-progress");
        // oddity came with 1.5.
        Assert.Equal(version is not ("1.3.0" or "1.4.0"), dataset.BendingEnergies.Any(e => e.Oddity is not null));
    }

    // Before 1.5 the answers asked the composition and the form.
    [Theory]
    [InlineData("witness-self-supporting", YesNo.Yes, YesNo.No)]
    [InlineData("witness-self-supporting-iron-free", YesNo.No, YesNo.No)]
    [InlineData("witness-large-iron-free", YesNo.No, YesNo.No)]
    [InlineData("small", YesNo.Yes, YesNo.Yes)]
    public void A_chart_without_the_later_columns_answers_as_before(string chart, YesNo reductionSensitive, YesNo bendsLater)
    {
        var row = DatasetLoader.Load(new ZipPackageFiles(ReleasedPackages.Path("1.4.0"))).Charts.Single(c => c.Id == chart);

        Assert.Equal((reductionSensitive, bendsLater), (row.ReductionSensitive, row.BendsLater));
    }

    [Theory]
    [InlineData("1.4.0", false)]
    [InlineData("1.4.12", false)]
    [InlineData("1.5.0-rc.1", true)]
    [InlineData("1.5.0", true)]
    [InlineData("1.10.0", true)]
    [InlineData("2.0.0", true)]
    public void A_later_column_may_be_absent_below_its_version_only(string version, bool refused)
    {
        Version(version);
        WithoutLaterColumns(_scenario.Base);

        // The ranks came with 1.6, the rate in the key of end points and the register of limits with 1.7.
        string[] later = version is "1.10.0" or "2.0.0"
            ? ["end-points.primaryKey", .. Ranks()[..1], "end-points.rate", .. Ranks()[1..], .. Register()]
            : [];
        AssertFaults(refused, FaultRules.TableFields, ["charts.reduction_sensitive", "charts.bends_later", .. later]);
    }

    [Theory]
    [InlineData("1.3.9", false)]
    [InlineData("1.4.0", true)]
    public void A_later_table_may_be_absent_below_its_version_only(string version, bool refused)
    {
        Version(version);
        WithoutTable("kiln-defaults");

        AssertFaults(refused, FaultRules.MissingTable, ["kiln-defaults"]);
    }

    [Fact]
    public void A_table_that_is_absent_has_no_rows_and_no_file()
    {
        Version("1.3.0");
        WithoutTable("kiln-defaults");

        var dataset = _scenario.Load();

        Assert.Empty(dataset.KilnDefaults);
        Assert.DoesNotContain(dataset.Resources, r => r.Name == "kiln-defaults");
    }

    [Fact]
    public void An_overlay_cannot_add_to_a_table_that_its_base_package_lacks()
    {
        Version("1.1.0");
        WithoutTable("disagreements");
        WithoutTable("clay-bodies");
        var overlay = _scenario.AddOverlay();
        overlay.EditDescriptor(j => j["resources"]!.AsArray().Add(
            InMemoryPackage.Unsealed(InMemoryPackage.Table(JsonNode.Parse(Repository.Data("datapackage.json"))!, "clay-bodies"))
                .DeepClone()));
        overlay.Put("clay-bodies.csv", "id\n");

        AssertFaults(true, FaultRules.OverlayTable, ["clay-bodies"]);
    }

    [Fact]
    public void An_overlay_that_was_written_before_a_column_still_loads()
    {
        WithoutLaterColumns(_scenario.AddOverlay());

        var own = _scenario.Load().Charts[1];

        Assert.Equal(("north-shed-chart", YesNo.Yes, YesNo.No), (own.Id, own.ReductionSensitive, own.BendsLater));
        Assert.Equal("north-shed-tests", own.Source);
    }

    [Fact]
    public void An_overlay_may_lack_one_later_column_and_fault_lines_stay_those_of_its_file()
    {
        var overlay = _scenario.AddOverlay();
        Without(overlay, "charts", "bends_later");
        overlay.Replace("charts.csv", "yes,north-shed-tests", "perhaps,north-shed-tests");

        var fault = Assert.Single(Assert.Throws<InvalidPackageException>(_scenario.Load).Faults);

        Assert.Equal((FaultRules.Enum, "charts.csv", 2, "reduction_sensitive"), (fault.Rule, fault.File, fault.Line, fault.Field));
    }

    [Theory]
    [InlineData("1.5.0", false)]
    [InlineData("1.6.0", true)]
    public void The_ranks_of_cones_may_be_absent_below_1_6_only(string version, bool refused)
    {
        Version(version);

        AssertFaults(refused, FaultRules.TableFields, refused ? Ranks() : []);
    }

    [Fact]
    public void An_overlay_may_give_ranks_or_leave_them_out()
    {
        _scenario.AddOverlay();
        _scenario.AddOverlay("attic").Rank("end-points", "cone", "-5", "-4");
        _scenario.Base.Rank("end-points", "cone", "-5", "-5", "-4", "-4");

        Assert.Equal(8, _scenario.Load().EndPoints.Count);
    }

    // In the order of the tables of the code, which is that of the faults of one file.
    private static string[] Ranks() =>
    [
        "end-points.cone_rank", "bending-energies.cone_rank", "processes.cone_min_rank", "processes.cone_max_rank",
        "process-additions.cone_low_rank", "process-additions.cone_high_rank", "base-glazes.cone_min_rank", "base-glazes.cone_max_rank",
        "temperature-limits.cone_low_rank", "temperature-limits.cone_high_rank", "firing-kinds.cone_min_rank",
        "firing-kinds.cone_max_rank", "load-rules.cone_min_rank", "load-rules.cone_max_rank", "usual-firings.cone_rank",
        "clay-bodies.bisque_cone_min_rank",
        "clay-bodies.bisque_cone_max_rank", "clay-bodies.mature_cone_min_rank", "clay-bodies.mature_cone_best_rank",
        "clay-bodies.mature_cone_max_rank", "glazes.cone_min_rank", "glazes.cone_best_rank", "glazes.cone_max_rank",
        "schedule-templates.end_cone_rank", "schedule-templates.cone_min_rank", "schedule-templates.cone_max_rank",
        "schedule-segments.target_cone_rank",
    ];

    // What came with 1.7 and is asked of every package since: how sources were seen, and the register of limits.
    private static string[] Register() =>
    [
        "sources.via", "sources.seen_via", "sources.accessed", "sources.address", "sources.doi", "sources.isbn", "sources.standard",
        "sources.witness", "exposure-limits.instrument", "exposure-limits.section", "exposure-limits.effective_from",
        "exposure-limits.superseded_by", "exposure-limits.checked_on", "exposure-limits.seen_via", "food-contact-limits.section",
        "food-contact-limits.effective_from", "food-contact-limits.superseded_by", "food-contact-limits.checked_on",
        "food-contact-limits.seen_via", "schedule-templates.usual",
    ];

    private static void WithoutLaterColumns(InMemoryPackage package)
    {
        Without(package, "charts", "reduction_sensitive");
        Without(package, "charts", "bends_later");
    }

    private static void Without(InMemoryPackage package, string table, string field) => package.EditTable(table, t =>
    {
        var fields = t["schema"]!["fields"]!.AsArray();
        var place = fields.Select(f => (string?)f!["name"]).ToList().IndexOf(field);
        fields.RemoveAt(place);
        var lines = package.Text(table + ".csv").TrimEnd('\n').Split('\n')
            .Select(l => string.Join(',', l.Split(',').Where((_, i) => i != place)));
        package.Put(table + ".csv", string.Join('\n', lines) + "\n");
    });

    private void WithoutTable(string table)
    {
        _scenario.Base.EditDescriptor(j => j["resources"]!.AsArray().Remove(InMemoryPackage.Table(j, table)));
        _scenario.Base.Remove(table + ".csv");
    }

    private void Version(string version)
    {
        _scenario.Base.EditDescriptor(j => j["version"] = version);
        _scenario.Base.Replace("CHANGELOG.md", "1.0.0", version);
    }

    private void AssertFaults(bool refused, string rule, string[] fields)
    {
        // From 1.7 on only a sealed package loads; an older one may be.
        _scenario.Base.Seal();
        if (!refused)
        {
            Assert.NotEmpty(_scenario.Load().Charts);
            return;
        }

        var faults = Assert.Throws<InvalidPackageException>(_scenario.Load).Faults;
        Assert.All(faults, f => Assert.Equal(rule, f.Rule));
        Assert.Equal(fields.Order(StringComparer.Ordinal), faults.Select(f => f.Field).Order(StringComparer.Ordinal));
    }
}
