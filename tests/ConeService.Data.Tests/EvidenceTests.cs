using System.Text.RegularExpressions;
using CsvHelper;

namespace ConeService.Data.Tests;

/// <summary>What the shipped package says of its evidence, read from its files without the code that judges them.</summary>
public sealed partial class EvidenceTests
{
    private static readonly Dataset Embedded = DatasetLoader.LoadEmbedded();

    // The numbers that a published reference was asked to reach.
    [Fact]
    public void Nine_of_ten_sources_have_an_address_or_a_number_and_all_that_were_seen_a_day()
    {
        var works = Embedded.Sources.Where(s => s.Seen != "not-applicable").ToList();
        var found = works.Count(s => (s.Address ?? s.Standard ?? s.Doi ?? s.Isbn) is not null);
        var seen = works.Where(s => s.Seen != "no").ToList();

        Assert.True(found >= 0.9 * works.Count, $"{found} of {works.Count}");
        Assert.NotEmpty(seen);
        Assert.All(seen, s => Assert.NotNull(s.Accessed));
        Assert.All(works.Except(seen), s => Assert.Null(s.Accessed));
    }

    [Fact]
    public void No_label_is_better_than_its_note()
    {
        var claiming = Rows().Where(r => r.GetValueOrDefault("confidence") is "published" or "corroborated").ToList();

        Assert.True(claiming.Count > 400, $"{claiming.Count}");
        Assert.DoesNotContain(claiming, r => Weaker().IsMatch(r.GetValueOrDefault("note", "")));
    }

    // Arithmetic is no source: the row names what was reckoned with, or the equations that it rests on.
    [Fact]
    public void Derived_never_stands_alone()
    {
        var rows = Rows().Where(r => r.GetValueOrDefault("source") is "derived").ToList();

        Assert.All(rows, r => Assert.NotEmpty(r.GetValueOrDefault("rests_on", "")));
        Assert.NotEmpty(rows);
    }

    [Fact]
    public void A_work_seen_through_another_was_not_seen_whole() => Assert.DoesNotContain(
        Embedded.Sources, s => s.Seen == "whole" && s.Via is SourceVia.Reproduction or SourceVia.Report);

    // The reproductions of each of these charts were copies of one print; a second book prints the calibration of the first.
    [Theory]
    [InlineData("orton-2016")]
    [InlineData("orton-older")]
    [InlineData("meade-gasworks")]
    public void Two_copies_of_one_print_corroborate_no_cell(string source) => Assert.All(
        Embedded.EndPoints.Where(e => e.Source == source), e => Assert.NotEqual(Confidence.Corroborated, e.Confidence));

    // wikipedia-colorants prints the pink; the amounts of that note are practice.
    [Fact]
    public void A_value_that_was_printed_is_told_beside_a_weaker_row()
    {
        var pink = Embedded.ColourNotes.Single(n => n.Id == "chromium-tin-oxidation-pink");

        Assert.Equal((Confidence.CommonPractice, Confidence.Published), (pink.Confidence, pink.ColourConfidence));
    }

    [Fact]
    public void A_chart_names_the_page_that_prints_it() =>
        Assert.Equal("p. 204", Embedded.Charts.Single(c => c.Id == "seger-1918").Evidence?.Locator);

    // IEC 60584-1, class 2, recalled: B to 1700 °C, R and S to 1600 °C.
    [Theory]
    [InlineData("b-iec-60584-class-2", 1700)]
    [InlineData("r-iec-60584-class-2", 1600)]
    [InlineData("s-iec-60584-class-2", 1600)]
    public void The_recalled_end_of_a_tolerance_is_told_as_recalled(string id, int celsius)
    {
        var row = Embedded.ThermocoupleTolerances.Single(t => t.Id == id);

        Assert.Equal((celsius, Confidence.FromMemory), (row.HighestCelsius, row.Confidence));
        Assert.Equal(Confidence.Published, row.Evidence!.Of("share_of_celsius", row.Confidence));
    }

    // Directive (EU) 2024/869 applies from 9 April 2026; 98/24/EC had 0.15 mg/m3. 29 CFR and ACGIH on manganese: 5 and 0.02 mg/m3.
    [Fact]
    public void A_limit_names_what_took_its_place_and_a_recalled_one_was_checked_on_no_day()
    {
        var limits = Embedded.ExposureLimits.ToDictionary(l => l.Id);

        Assert.Equal((0.15m, "lead-eu-oel"), (limits["lead-eu-oel-1998"].Value, limits["lead-eu-oel-1998"].SupersededBy));
        Assert.Equal((0.03m, "2026-04-09"), (limits["lead-eu-oel"].Value, limits["lead-eu-oel"].EffectiveFrom));
        Assert.Equal(250m, limits["manganese-osha-pel"].Value / limits["manganese-acgih-tlv-respirable"].Value);
        Assert.All(limits.Values, l => Assert.Equal(l.SeenVia == SourceVia.Memory, l.CheckedOn is null));
        Assert.All(limits.Values, l => Assert.NotNull(l.Instrument));
    }

    // 21 CFR 109.16 is about lead in decorative ware.
    [Fact]
    public void The_rule_on_decorative_ware_concerns_lead() =>
        Assert.Equal(["lead"], Embedded.FoodContactLimits.Single(l => l.Id == "decorative-ware-label-fda").Metals);

    // The table of the PCE method as it is recalled: cone 38 at 1835 °C, 3335 °F.
    [Fact]
    public void The_refractories_chart_has_cone_38_from_memory()
    {
        var cell = Embedded.EndPoints.Single(e => e.Chart == "pce" && e.Cone == "38");

        Assert.Equal(
            (1835m, 3335m, null, Confidence.FromMemory), (cell.Celsius, cell.Fahrenheit, cell.RateCelsiusPerHour, cell.Confidence));
    }

    // Constants, recalled: MnO2 to Mn2O3 535 °C, Mn2O3 1080 °C, CuO to Cu2O in air 1026 °C, Co3O4 to CoO from 900 °C, iron in a melt 1230
    // °C.
    [Theory]
    [InlineData("manganese-dioxide-oxygen", 535)]
    [InlineData("manganese-oxygen", 1080)]
    [InlineData("copper-oxygen", 1026)]
    [InlineData("cobalt-oxygen", 900)]
    [InlineData("iron-self-reduction", 1230)]
    public void A_colorant_gives_off_oxygen_at_its_own_step(string id, int celsius)
    {
        var limit = Embedded.TemperatureLimits.Single(l => l.Id == id);

        Assert.Equal((TemperatureLimitKind.GivesOffOxygenAbove, (decimal?)celsius, Confidence.FromMemory),
            (limit.Kind, limit.CelsiusLow, limit.Confidence));
    }

    // ISO 13006, recalled: group I to 3 %, IIa to 6 %, IIb to 10 %, III above; Ia to 0.5 %. ASTM C242: impervious, vitreous, … 0.5, 3, 7 %.
    [Theory]
    [InlineData("ISO 13006", "BIa", null, 0.5)]
    [InlineData("ISO 13006", "BIb", 0.5, 3.0)]
    [InlineData("ISO 13006", "AIIa", 3.0, 6.0)]
    [InlineData("ISO 13006", "BIII", 10.0, null)]
    [InlineData("ASTM C242", "semi-vitreous", 3.0, 7.0)]
    public void An_absorption_class_has_the_bounds_of_its_standard(string standard, string name, double? above, double? to)
    {
        var row = Embedded.AbsorptionClasses.Single(c => c.Standard == standard && c.Class == name);

        Assert.Equal((above, to, Confidence.FromMemory), ((double?)row.PercentAbove, (double?)row.PercentTo, row.Confidence));
    }

    private static IEnumerable<Dictionary<string, string>> Rows()
    {
        foreach (var file in Directory.EnumerateFiles(Repository.DataDirectory, "*.csv"))
        {
            using var csv = CsvReader.FromText(File.ReadAllText(file), new CsvReaderOptions { Separator = ',', HasHeader = false });
            Assert.True(csv.Read());
            var header = Enumerable.Range(0, csv.FieldCount).Select(csv.GetString).ToList();
            while (csv.Read())
                yield return header.Select((name, i) => (name, Cell: csv.GetString(i))).ToDictionary(c => c.name, c => c.Cell);
        }
    }

    [GeneratedRegex("practice|recall|recollect|memory", RegexOptions.IgnoreCase)]
    private static partial Regex Weaker();
}
