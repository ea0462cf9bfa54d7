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

    // As the instruments are recalled: (EU) 2017/164; 2004/37/EC Annex III; (EU) 2024/869 and 98/24/EC on lead; EH40/2005 and CLAW;
    // 8 CCR 5198; NIOSH (pocket guide, 2006-123); ACGIH 2013.
    private const string RecalledExposure = """
        carbon-monoxide-eu-oel 20 ppm European Union|sulphur-dioxide-eu-oel 0.5 ppm European Union
        manganese-eu-oel-inhalable 0.2 mg/m3 European Union|manganese-eu-oel-respirable 0.05 mg/m3 European Union
        nitrogen-dioxide-eu-oel 0.5 ppm European Union|silica-eu-oel 0.1 mg/m3 European Union
        chromium-vi-eu-oel 0.005 mg/m3 European Union|refractory-ceramic-fibres-eu-oel 0.3 f/cm3 European Union
        lead-eu-oel 0.03 mg/m3 European Union|lead-eu-oel-1998 0.15 mg/m3 European Union
        carbon-monoxide-hse-wel 20 ppm HSE|sulphur-dioxide-hse-wel 0.5 ppm HSE|manganese-hse-wel-inhalable 0.2 mg/m3 HSE
        manganese-hse-wel-respirable 0.05 mg/m3 HSE|chromium-vi-hse-wel 0.01 mg/m3 HSE|cobalt-hse-wel 0.1 mg/m3 HSE
        hydrogen-chloride-hse-wel 1 ppm HSE|hydrogen-fluoride-hse-wel 1.8 ppm HSE|refractory-ceramic-fibres-hse-wel 0.3 f/cm3 HSE
        lead-hse-claw 0.15 mg/m3 HSE|lead-california-pel 10 ug/m3 Cal/OSHA|lead-california-action-level 2 ug/m3 Cal/OSHA
        carbon-monoxide-niosh-idlh 1200 ppm NIOSH|hydrogen-fluoride-niosh-rel 3 ppm NIOSH|hydrogen-fluoride-niosh-ceiling 6 ppm NIOSH
        hydrogen-fluoride-niosh-idlh 30 ppm NIOSH|sulphur-dioxide-niosh-idlh 100 ppm NIOSH|manganese-niosh-idlh 500 mg/m3 NIOSH
        refractory-ceramic-fibres-niosh-rel 0.5 f/cm3 NIOSH|hydrogen-chloride-niosh-idlh-1994 50 ppm NIOSH
        manganese-acgih-tlv-respirable 0.02 mg/m3 ACGIH|manganese-acgih-tlv-inhalable 0.1 mg/m3 ACGIH
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

    // As the instruments are recalled: ISO 6486-2; FDA Food Code 4-101.13; Canada SOR/2016-175; Proposition 65, 27 CCR 25805.
    private const string RecalledFood = """
        lead-flatware-iso 0.8 mg/dm2|cadmium-flatware-iso 0.07 mg/dm2|lead-small-hollowware-iso 2.0 mg/L
        cadmium-small-hollowware-iso 0.5 mg/L|lead-large-hollowware-iso 1.0 mg/L|cadmium-large-hollowware-iso 0.25 mg/L
        lead-storage-iso 0.5 mg/L|cadmium-storage-iso 0.25 mg/L|lead-cups-and-mugs-iso 0.5 mg/L|cadmium-cups-and-mugs-iso 0.25 mg/L
        lead-cooking-iso 0.5 mg/L|cadmium-cooking-iso 0.05 mg/L|leach-test-astm-c738|leach-test-iso-6486
        lead-cups-and-mugs-food-code 0.5 mg/L|lead-large-hollowware-food-code 1.0 mg/L|lead-small-hollowware-food-code 2.0 mg/L
        lead-flatware-food-code 3.0 mg/L|lead-flatware-canada 3.0 mg/L|cadmium-flatware-canada 0.5 mg/L
        lead-small-hollowware-canada 2.0 mg/L|cadmium-small-hollowware-canada 0.5 mg/L|lead-large-hollowware-canada 1.0 mg/L
        cadmium-large-hollowware-canada 0.25 mg/L|lead-cups-and-mugs-canada 0.5 mg/L|cadmium-cups-and-mugs-canada 0.5 mg/L
        lead-pitchers-canada 0.5 mg/L|cadmium-pitchers-canada 0.25 mg/L|lead-daily-dose-california 0.5 ug/day
        cadmium-daily-dose-california 4.1 ug/day
        """;

    private static IEnumerable<string> Rows(string text) => text.Split(['|', '\n']).Select(l => l.Trim());

    private static IEnumerable<string> ById(string seen, string recalled) =>
        Rows(seen).Concat(Rows(recalled)).OrderBy(l => l.Split(' ')[0], StringComparer.Ordinal);

    [Fact]
    public void Every_exposure_limit_is_its_cited_row() =>
        Assert.Equal(
            ById(Exposure, RecalledExposure),
            Data.ExposureLimits.Select(l => string.Create(CultureInfo.InvariantCulture, $"{l.Id} {l.Value} {l.Unit} {l.Body}")));

    [Fact]
    public void Every_food_contact_limit_is_its_cited_row() =>
        Assert.Equal(
            ById(Food, RecalledFood),
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
    public void Salt_goes_in_when_cone_8_falls_and_vaporises_from_2200_fahrenheit_on()
    {
        // Practice: from cone 8 on, 1247 °C on the self-supporting chart at 60 °C/h; cox-1914: it vaporises at about 1200 °C (2192 °F).
        var salt = new PracticeReference(Data).Process("salt").AddedMaterials
            .Single(m => m.Material.StartsWith("salt", StringComparison.Ordinal));
        Assert.Equal((1250m, "8"), (salt.CelsiusMin, salt.ConeMin));
        Assert.Contains("near 2200 °F", salt.Note!, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_calls_ware_or_work_safe()
    {
        var texts = Data.Processes.SelectMany(p => new[] { p.Effect, p.Use, p.PeopleNearby, p.FoodContactNote, p.CareNote, p.Note })
            .Concat(Data.Cautions.SelectMany(c => new[] { c.When, c.Control, c.Figures, c.Note }))
            .Concat(Data.ColourNotes.SelectMany(n => new[] { n.Colour, n.Condition, n.Note }))
            .Concat(Data.ColourRules.SelectMany(r => new[] { r.Outcome, r.Reason, r.Figures, r.Note }))
            .Concat(Data.Landmarks.SelectMany(l => new[] { l.Landmark, l.Advice, l.Effect }))
            .Concat(Data.Messages.Select(m => m.Text)).Concat(Data.Texts.Select(t => t.Text));
        Assert.All(texts.OfType<string>(), t => Assert.DoesNotMatch(@"(?i)\bsafe(ly|r)?\b", t));
    }
}
