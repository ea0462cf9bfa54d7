using System.Globalization;
using ConeService.Data;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Practice;

/// <summary>
/// Limits and processes, held against the data files as another parser reads them and against values copied from the cited rows.
/// </summary>
public class ReferenceLimitTests
{
    private static readonly Dataset Data = Reference.Dataset;

    // Copied by hand from the reference table of the trade (exposure-limits), row by row.
    private const string Exposure = """
        antimony-osha-pel 0.5 mg/m3 OSHA|barium-niosh-rel 0.5 mg/m3 NIOSH|barium-osha-pel 0.5 mg/m3 OSHA
        cadmium-osha-action-level 2.5 ug/m3 OSHA|cadmium-osha-pel 5 ug/m3 OSHA|carbon-monoxide-niosh-ceiling 200 ppm NIOSH
        carbon-monoxide-niosh-rel 35 ppm NIOSH|carbon-monoxide-osha-pel 50 ppm OSHA|chlorine-osha-pel 1 ppm OSHA
        chromium-iii-osha-pel 0.5 mg/m3 OSHA|chromium-vi-niosh-rel 0.2 ug/m3 NIOSH|chromium-vi-osha-action-level 2.5 ug/m3 OSHA
        chromium-vi-osha-pel 5 ug/m3 OSHA|cobalt-niosh-rel 0.05 mg/m3 NIOSH|cobalt-osha-pel 0.1 mg/m3 OSHA
        copper-dust-osha-pel 1 mg/m3 OSHA|copper-fume-osha-pel 0.1 mg/m3 OSHA|hydrogen-chloride-niosh-idlh 45 ppm NIOSH
        hydrogen-chloride-niosh-rel 5 ppm NIOSH|hydrogen-chloride-osha-pel 5 ppm OSHA|hydrogen-fluoride-osha-pel 3 ppm OSHA
        insoluble-uranium-osha-pel 0.25 mg/m3 OSHA|lead-niosh-rel 50 ug/m3 NIOSH|lead-osha-action-level 30 ug/m3 OSHA
        lead-osha-pel 50 ug/m3 OSHA|manganese-niosh-rel 1 mg/m3 NIOSH|manganese-osha-pel 5 mg/m3 OSHA
        nickel-niosh-rel 0.015 mg/m3 NIOSH|nickel-osha-pel 1 mg/m3 OSHA|nitrogen-dioxide-osha-pel 5 ppm OSHA
        selenium-osha-pel 0.2 mg/m3 OSHA|silica-acgih-tlv 25 ug/m3 ACGIH|silica-hse-wel 100 ug/m3 HSE|silica-niosh-rel 50 ug/m3 NIOSH
        silica-osha-action-level 25 ug/m3 OSHA|silica-osha-pel 50 ug/m3 OSHA|silver-osha-pel 0.01 mg/m3 OSHA
        sulphur-dioxide-niosh-rel 2 ppm NIOSH|sulphur-dioxide-osha-pel 5 ppm OSHA|vanadium-dust-osha-pel 0.5 mg/m3 OSHA
        vanadium-fume-osha-pel 0.1 mg/m3 OSHA|vanadium-niosh-rel 0.05 mg/m3 NIOSH|zinc-oxide-fume-osha-pel 5 mg/m3 OSHA
        """;

    // Copied by hand from the reference table of the trade (food-contact-limits).
    private const string Food = """
        cadmium-cooking-and-storage-eu 0.1 mg/L|cadmium-fillable-ware-eu 0.3 mg/L|cadmium-flatware-fda 0.5 ug/mL
        cadmium-food-ware-essex-county 0.5 ppm|cadmium-large-hollowware-fda 0.25 ug/mL|cadmium-shallow-ware-eu 0.07 mg/dm2
        cadmium-small-hollowware-fda 0.5 ug/mL|decorative-ware-label-fda|exceedance-rule-eu 50 percent
        lead-cooking-and-storage-eu 1.5 mg/L|lead-cups-and-mugs-fda 0.5 ug/mL|lead-fillable-ware-eu 4.0 mg/L
        lead-flatware-fda 3.0 ug/mL|lead-food-ware-essex-county 7 ppm|lead-large-hollowware-fda 1.0 ug/mL|lead-pitchers-fda 0.5 ug/mL
        lead-shallow-ware-eu 0.8 mg/dm2|lead-small-hollowware-fda 2.0 ug/mL
        """;

    private static IEnumerable<string> Rows(string text) => text.Split(['|', '\n']).Select(l => l.Trim());

    [Fact]
    public void Every_exposure_limit_is_its_cited_row() =>
        Assert.Equal(
            Rows(Exposure),
            Data.ExposureLimits.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Id} {l.Value} {l.Unit} {l.Body}")));

    [Fact]
    public void Every_food_contact_limit_is_its_cited_row() =>
        Assert.Equal(
            Rows(Food),
            Data.FoodContactLimits.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Id} {l.Value} {l.Unit}").Trim()));

    [Fact]
    public void The_limits_served_are_those_of_the_files_as_another_parser_reads_them()
    {
        var root = AppContext.BaseDirectory;
        while (!File.Exists(Path.Combine(root, "ConeService.sln"))) root = Path.GetDirectoryName(root)!;
        var exposure = CsvFile.Read(Path.Combine(root, "data/exposure-limits.csv"));
        Assert.Equal(
            exposure.Select(r => (r["id"], r["value"], r["source"], r["confidence"])),
            Data.ExposureLimits.Select(l => (
                l.Id, l.Value.ToString(CultureInfo.InvariantCulture), string.Join(";", l.Sources), EnumWords.Word(l.Confidence))));
        var food = CsvFile.Read(Path.Combine(root, "data/food-contact-limits.csv"));
        Assert.Equal(
            food.Select(r => (r["id"], r["value"], r["source"])),
            Data.FoodContactLimits.Select(l => (l.Id, l.Value?.ToString(CultureInfo.InvariantCulture) ?? "", string.Join(";", l.Sources))));
    }

    [Fact]
    public void Every_process_names_a_caution_that_has_a_source()
    {
        var practice = new PracticeReference(Data);
        Assert.Equal(25, Data.Processes.Count);
        Assert.All(Data.Processes, p => Assert.Contains(practice.Process(p.Id).Cautions, c => c.Sources.Count > 0));
    }

    [Fact]
    public void Salt_goes_in_near_2200_fahrenheit()
    {
        // The issue: salt near 2200 °F; cox-1914: it vaporises at about 1200 °C, which is 2192 °F.
        var salt = new PracticeReference(Data).Process("salt").AddedMaterials
            .Single(m => m.Material.StartsWith("salt", StringComparison.Ordinal));
        Assert.Equal((1200m, "8"), (salt.CelsiusMin, salt.ConeMin));
    }

    [Fact]
    public void Nothing_calls_ware_or_work_safe()
    {
        var texts = Data.Processes.SelectMany(p => new[] { p.Effect, p.Use, p.PeopleNearby, p.FoodContactNote, p.CareNote, p.Note })
            .Concat(Data.Cautions.SelectMany(c => new[] { c.When, c.Control, c.Figures, c.Note }))
            .Concat(Data.ColourNotes.SelectMany(n => new[] { n.Colour, n.Condition, n.Note }))
            .Concat(Data.ColourRules.SelectMany(r => new[] { r.Outcome, r.Reason, r.Figures, r.Note }))
            .Concat(Data.Landmarks.SelectMany(l => new[] { l.Landmark, l.Advice, l.Effect }))
            .Concat(Data.Messages.Select(m => m.Text));
        Assert.All(texts.OfType<string>(), t => Assert.DoesNotMatch(@"(?i)\bsafe(ly|r)?\b", t));
    }
}
