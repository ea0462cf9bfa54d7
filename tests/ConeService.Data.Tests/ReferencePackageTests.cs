using System.Globalization;
using CsvHelper;

namespace ConeService.Data.Tests;

/// <summary>The reference package as it is shipped.</summary>
public sealed class ReferencePackageTests
{
    private static readonly Dataset Embedded = DatasetLoader.LoadEmbedded();

    // °C x 1.8 + 32 of the row, rounded: 717 is 1322.6, 747 is 1376.6, 792 is 1457.6, 852 is 1565.6, 1046 is 1914.8.
    private static readonly Dictionary<string, string> Adopted = new()
    {
        ["older-150,018,150,717,1322"] = "older-150,018,150,717,1323",
        ["older-150,017,150,747,1376"] = "older-150,017,150,747,1377",
        ["older-150,016,150,792,1457"] = "older-150,016,150,792,1458",
        ["older-150,013,150,852,1565"] = "older-150,013,150,852,1566",
        ["older-150,05,150,1046,1914"] = "older-150,05,150,1046,1915",
    };

    public static TheoryData<string> Tables =>
    [
        "sources",
        "cones",
        "charts",
        "end-points",
        "cone-facts",
        "equations",
        "bending-energies",
        "corrections",
        "renamed-ids",
        "thermocouple-tolerances",
        "heat-work-defaults",
        "cautions",
        "kiln-heats",
        "firing-kinds",
        "clay-bodies",
        "glazes",
        "load-rules",
        "usual-firings",
        "trade-words",
        "disagreements",
        "absorption-classes",
        "exposure-limits",
        "food-contact-limits",
        "landmarks",
        "processes",
        "process-additions",
        "faults",
        "fault-causes",
        "terms",
        "additives",
        "base-glazes",
        "colorants",
        "colorant-forms",
        "temperature-limits",
        "colour-notes",
        "colour-words",
        "colour-rules",
        "colour-rule-ingredients",
        "kiln-defaults",
        "kiln-materials",
        "kiln-sizes",
        "loading-defaults",
        "schedule-templates",
        "schedule-segments",
        "thickness-limits",
        "schedule-defaults",
        "procedures",
        "attendances",
        "gas-releases",
        "oxide-expansions",
        "altitudes",
        "thermocouple-limits",
        "thermocouple-ageing",
    ];

    [Fact]
    public void The_embedded_package_is_valid_and_says_what_it_is()
    {
        Assert.Equal(Repository.Version, Embedded.VersionId);
        Assert.Equal("Firing reference for a shared pottery studio", Embedded.Title);
        Assert.Equal("CC-BY-4.0", Embedded.License);
        Assert.StartsWith("# Change log of the data package", Embedded.ChangeLog, StringComparison.Ordinal);
    }

    [Theory]
    [MemberData(nameof(Tables))]
    public void Every_line_of_a_table_is_a_row(string table)
    {
        // No cell holds a line break, so lines can be counted without reading CSV.
        var lines = Lines(table).Length;

        Assert.Equal(lines, Embedded.Resources.Single(r => r.Name == table).Rows);
        Assert.Equal(lines, Count(table));
    }

    [Fact]
    public void The_resources_are_the_files_of_the_repository() => Assert.All(Embedded.Resources, r =>
    {
        Assert.Equal("cone-service-data", r.Package);
        Assert.Equal(new FileInfo(Path.Combine(Repository.DataDirectory, r.Path)).Length, r.Bytes);
    });

    [Fact]
    public void Every_end_point_keeps_the_digits_that_were_printed()
    {
        // The six leading cells are never quoted; the third is the rank of the second. Five were corrected against the print.
        var printed = Lines("end-points").Select(l => l.Split(',')).Select(c => string.Join(',', [.. c[..2], .. c[3..6]]))
            .Select(l => Adopted.GetValueOrDefault(l, l));

        Assert.Equal(printed, Embedded.EndPoints.Select(e => string.Create(
            CultureInfo.InvariantCulture, $"{e.Chart},{e.Cone},{e.RateCelsiusPerHour},{e.Celsius},{e.Fahrenheit}")));
    }

    [Fact]
    public void Every_bending_energy_keeps_its_digits()
    {
        var printed = Lines("bending-energies").Select(l => l.Split(',')).Select(c => string.Join(',', [.. c[..2], c[3]]));

        Assert.Equal(printed, Embedded.BendingEnergies.Select(e => string.Create(
            CultureInfo.InvariantCulture, $"{e.Chart},{e.Cone},{e.ActivationEnergyKilojoulesPerMole}")));
    }

    [Fact]
    public void Cone_06_and_cone_6_are_two_rows()
    {
        Assert.Equal((-6m, 16), Embedded.Cones.Where(c => c.Id == "06").Select(c => (c.Position, c.WholeStep!.Value)).Single());
        Assert.Equal((6m, 27), Embedded.Cones.Where(c => c.Id == "6").Select(c => (c.Position, c.WholeStep!.Value)).Single());
    }

    // Every file of the package as it stands, read without the code that is tried: 06 ranks -6, 05.5 ranks -5.5, 6 ranks 6.
    [Fact]
    public void Every_cone_of_every_table_has_its_signed_rank_beside_it()
    {
        var compared = 0;
        foreach (var file in Directory.EnumerateFiles(Repository.DataDirectory, "*.csv"))
        {
            using var csv = CsvReader.FromText(File.ReadAllText(file), new CsvReaderOptions { Separator = ',', HasHeader = false });
            Assert.True(csv.Read());
            var header = Enumerable.Range(0, csv.FieldCount).Select(csv.GetString).ToList();
            var ranks = header.Index().Where(h => h.Item.EndsWith("_rank", StringComparison.Ordinal)).ToList();
            Assert.All(ranks, r => Assert.Equal(header[r.Index - 1] + "_rank", r.Item));
            while (csv.Read())
            {
                foreach (var (place, _) in ranks)
                {
                    var cone = csv.GetString(place - 1).TrimEnd('a');
                    Assert.Equal(cone.StartsWith('0') ? "-" + cone[1..] : cone, csv.GetString(place));
                    compared++;
                }
            }
        }

        // 603 end points alone.
        Assert.True(compared > 603);
    }

    [Fact]
    public void A_list_of_sources_keeps_its_order() =>
        Assert.Equal(["mailing-list-2003", "orton-older"], Embedded.ConeFacts.Single(f => f.Id == "end-point-right-angle-bend").Sources);

    [Fact]
    public void The_directory_of_the_repository_gives_the_embedded_package() =>
        Assert.Equal(Embedded.Checksum, DatasetLoader.LoadPath(Repository.DataDirectory).Checksum);

    private static string[] Lines(string table) => File.ReadAllLines(Path.Combine(Repository.DataDirectory, table + ".csv"))[1..];

    private static int Count(string table) => table switch
    {
        "sources" => Embedded.Sources.Count,
        "cones" => Embedded.Cones.Count,
        "charts" => Embedded.Charts.Count,
        "end-points" => Embedded.EndPoints.Count,
        "cone-facts" => Embedded.ConeFacts.Count,
        "equations" => Embedded.Equations.Count,
        "bending-energies" => Embedded.BendingEnergies.Count,
        "corrections" => Embedded.Corrections.Count,
        "renamed-ids" => Embedded.RenamedIds.Count,
        "schedule-templates" => Embedded.ScheduleTemplates.Count,
        "schedule-segments" => Embedded.ScheduleSegments.Count,
        "thickness-limits" => Embedded.ThicknessLimits.Count,
        "schedule-defaults" => Embedded.ScheduleDefaults.Count,
        "procedures" => Embedded.Procedures.Count,
        "attendances" => Embedded.Attendances.Count,
        "thermocouple-tolerances" => Embedded.ThermocoupleTolerances.Count,
        "heat-work-defaults" => Embedded.HeatWorkDefaults.Count,
        "cautions" => Embedded.Cautions.Count,
        "kiln-heats" => Embedded.KilnHeats.Count,
        "firing-kinds" => Embedded.FiringKinds.Count,
        "usual-firings" => Embedded.UsualFirings.Count,
        "trade-words" => Embedded.TradeWords.Count,
        "clay-bodies" => Embedded.ClayBodies.Count,
        "glazes" => Embedded.Glazes.Count,
        "load-rules" => Embedded.LoadRules.Count,
        "disagreements" => Embedded.Disagreements.Count,
        "absorption-classes" => Embedded.AbsorptionClasses.Count,
        "exposure-limits" => Embedded.ExposureLimits.Count,
        "food-contact-limits" => Embedded.FoodContactLimits.Count,
        "landmarks" => Embedded.Landmarks.Count,
        "processes" => Embedded.Processes.Count,
        "process-additions" => Embedded.ProcessAdditions.Count,
        "faults" => Embedded.Faults.Count,
        "fault-causes" => Embedded.FaultCauses.Count,
        "terms" => Embedded.Terms.Count,
        "additives" => Embedded.Additives.Count,
        "base-glazes" => Embedded.BaseGlazes.Count,
        "colorants" => Embedded.Colorants.Count,
        "colorant-forms" => Embedded.ColorantForms.Count,
        "temperature-limits" => Embedded.TemperatureLimits.Count,
        "colour-notes" => Embedded.ColourNotes.Count,
        "colour-words" => Embedded.ColourWords.Count,
        "colour-rules" => Embedded.ColourRules.Count,
        "colour-rule-ingredients" => Embedded.ColourRuleIngredients.Count,
        "kiln-defaults" => Embedded.KilnDefaults.Count,
        "kiln-materials" => Embedded.KilnMaterials.Count,
        "kiln-sizes" => Embedded.KilnSizes.Count,
        "loading-defaults" => Embedded.LoadingDefaults.Count,
        "gas-releases" => Embedded.GasReleases.Count,
        "oxide-expansions" => Embedded.OxideExpansions.Count,
        "altitudes" => Embedded.Altitudes.Count,
        "thermocouple-limits" => Embedded.ThermocoupleLimits.Count,
        "thermocouple-ageing" => Embedded.ThermocoupleAgeing.Count,
        _ => throw new ArgumentOutOfRangeException(nameof(table)),
    };
}
