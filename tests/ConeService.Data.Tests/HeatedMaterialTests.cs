using System.Text.RegularExpressions;

namespace ConeService.Data.Tests;

/// <summary>
/// What gases, expansion, altitude and thermocouples are told of, against what the trade and its books say: nothing here is read from
/// the package.
/// </summary>
public sealed partial class HeatedMaterialTests
{
    private static readonly Dataset Embedded = DatasetLoader.LoadEmbedded();

    // The steps as books of constants and of thermal analysis tell them; 1390 °C is iron(III) oxide alone in air.
    [Theory]
    [InlineData("manganese-dioxide", 535, 535, "")]
    [InlineData("manganese-sesquioxide", 1080, 1080, "blisters bloating")]
    [InlineData("copper-oxide", 1026, 1026, "blisters")]
    [InlineData("cobalt-oxide", 900, 950, "blisters pinholes")]
    [InlineData("iron-oxide-pure", 1390, null, "")]
    [InlineData("calcite", 750, 900, "blisters lime-pops pinholes")]
    [InlineData("carbon-of-clay", 700, 950, "black-core blisters bloating pinholes")]
    [InlineData("kaolinite-water", 350, 650, "bursting")]
    [InlineData("free-water", 100, 120, "bursting")]
    [InlineData("talc-water", 850, 1000, "blisters pinholes")]
    [InlineData("colemanite-water", 350, 420, "crawling")]
    public void A_material_gives_off_its_gas_at_its_heat_and_feeds_its_faults(string id, int low, int? high, string faults)
    {
        var row = Embedded.GasReleases.Single(g => g.Id == id);

        Assert.Equal((low, (decimal?)high), (row.CelsiusLow, row.CelsiusHigh));
        Assert.Equal(faults, string.Join(' ', row.Faults));
    }

    // As many atoms of each element on both sides: a formula that was recalled wrongly does not balance.
    [Fact]
    public void Every_reaction_that_is_written_in_formulas_balances()
    {
        var written = Embedded.GasReleases.Where(g => Reaction().IsMatch(g.Reaction)).ToList();

        Assert.True(written.Count >= 13, $"{written.Count} reactions are written in formulas.");
        Assert.All(written, g =>
        {
            var sides = g.Reaction.Split(" → ");
            Assert.Equal(Atoms(sides[0]), Atoms(sides[1]));
        });
    }

    // Bloating, blisters, pinholes and black core are made by gas, and nothing else of the list of faults is but bursting and lime pops.
    [Theory]
    [InlineData("black-core")]
    [InlineData("blisters")]
    [InlineData("bloating")]
    [InlineData("bursting")]
    [InlineData("pinholes")]
    public void What_gas_makes_has_a_gas(string fault) => Assert.Contains(Embedded.GasReleases, g => g.Faults.Contains(fault));

    [Theory]
    [InlineData("dunting")]
    [InlineData("warping")]
    [InlineData("running")]
    [InlineData("crazing")]
    public void What_gas_does_not_make_has_none(string fault) => Assert.DoesNotContain(Embedded.GasReleases, g => g.Faults.Contains(fault));

    // Seger's rules: against crazing more silica or boric oxide, against shivering more soda or potash.
    [Fact]
    public void Alkalis_craze_and_silica_and_boric_oxide_shiver()
    {
        var oxides = Embedded.OxideExpansions.ToLookup(o => o.FaultOfMore, o => (o.Oxide, o.Effect));

        Assert.Equal([("K2O", "raises"), ("Na2O", "raises")], oxides["crazing"]);
        Assert.Equal([("B2O3", "lowers"), ("SiO2", "lowers")], oxides["shivering"]);
    }

    // The order of the factors of 1927, from the least a percent by mass adds.
    [Fact]
    public void The_oxides_stand_from_the_least_expansion_to_the_most() => Assert.Equal(
        ["B2O3", "SiO2", "Al2O3", "MgO", "ZnO", "PbO", "BaO", "CaO", "K2O", "Na2O"], Embedded.OxideExpansions.Select(o => o.Oxide));

    // The table of pilots: pressure of the standard atmosphere in inches of mercury, by thousands of feet.
    [Fact]
    public void Pressure_falls_as_pilots_reckon_it()
    {
        decimal[] inches = [29.92m, 28.86m, 27.82m, 26.82m, 25.84m, 24.90m, 23.98m, 23.09m, 22.22m, 21.39m, 20.58m, 19.79m, 19.03m];

        Assert.Equal(inches.Length, Embedded.Altitudes.Count);
        Assert.All(Embedded.Altitudes.Zip(inches), a =>
        {
            Near(a.Second * 33.8639m, a.First.PressureHectopascals, 0.7m);
            // 21 % of air is oxygen, nearly.
            Near(0.21m, a.First.OxygenHectopascals / a.First.PressureHectopascals, 0.002m);
            Near(a.First.ElevationFeet * 0.3048m, a.First.ElevationMetres, 0.5m);
        });
    }

    // Cooks: 212 °F at the sea, 203 °F in Denver (5,280 ft), 194 °F at 10,000 ft; the gas code: 4 % for each 1,000 ft, above 2,000 ft.
    [Theory]
    [InlineData(0, 212, 0)]
    [InlineData(2000, 208, 0)]
    [InlineData(3000, 206.5, 12)]
    [InlineData(5000, 203, 20)]
    [InlineData(10000, 194, 40)]
    public void Water_boils_sooner_and_a_burner_takes_less(int feet, double fahrenheit, int lessPercent)
    {
        var row = Embedded.Altitudes.Single(a => a.ElevationFeet == feet);

        Assert.Equal(fahrenheit, (double)((row.BoilingCelsius * 1.8m) + 32m), 0.6);
        Assert.Equal(lessPercent, row.GasInputLessPercent);
    }

    // The table of the standard: °F as printed beside whole tens of °C; types K and N stand the same.
    [Theory]
    [InlineData(8, 2300)]
    [InlineData(14, 2000)]
    [InlineData(20, 1800)]
    [InlineData(24, 1600)]
    [InlineData(28, 1600)]
    [InlineData(30, 1400)]
    public void A_thinner_wire_of_base_metal_stands_less(int gauge, int fahrenheit)
    {
        foreach (var row in Embedded.ThermocoupleLimits.Where(l => l.Type is "K" or "N" && l.WireGauge == gauge))
        {
            Assert.Equal(fahrenheit, row.Fahrenheit);
            Near((fahrenheit - 32) / 1.8m, row.Celsius, 6m);
            // The American wire gauge: 0.127 mm times 92 to the power of (36 - n)/39.
            Assert.Equal(0.127 * Math.Pow(92, (36 - gauge) / 39.0), (double)row.WireMillimetres, 0.02);
        }

        Assert.Equal(2, Embedded.ThermocoupleLimits.Count(l => l.Type is "K" or "N" && l.WireGauge == gauge));
    }

    // The thickest wire goes as far as the tolerances of the same standard: K to 1260 °C, R and S to 1480 °C. B goes to 1700 °C.
    [Fact]
    public void The_thickest_wire_ends_where_the_tolerances_end()
    {
        var ends = Embedded.ThermocoupleLimits.GroupBy(l => l.Type).ToDictionary(g => g.Key, g => g.Max(l => l.Celsius));

        Assert.Equal(new() { ["B"] = 1700, ["K"] = 1260, ["N"] = 1260, ["R"] = 1480, ["S"] = 1480 }, ends);
        var tolerances = Embedded.ThermocoupleTolerances.Where(t => t.Standard == "astm-e230");
        Assert.All(tolerances, t => Assert.Equal(ends[t.Type], t.HighestCelsius));
    }

    // Green rot: 1500 to 1900 °F with little oxygen, and the meter reads low. Ordering: 250 to 550 °C.
    [Fact]
    public void Each_type_of_thermocouple_ages_in_its_own_way()
    {
        var rows = Embedded.ThermocoupleAgeing.ToDictionary(a => a.Id);

        Assert.Equal((815m, 1040m, "low", Atmosphere.Reduction),
            (rows["k-green-rot"].CelsiusLow, rows["k-green-rot"].CelsiusHigh, rows["k-green-rot"].Reads, rows["k-green-rot"].Atmosphere));
        Assert.Equal((250m, 550m, "high"),
            (rows["k-short-range-order"].CelsiusLow, rows["k-short-range-order"].CelsiusHigh, rows["k-short-range-order"].Reads));
        Assert.Equal(["B", "K", "N", "R", "S"], rows.Values.SelectMany(r => r.Types).Distinct().Order());
    }

    [Fact]
    public void None_of_it_was_seen() => Assert.All(
        [
            .. Embedded.GasReleases.Select(r => r.Confidence), .. Embedded.OxideExpansions.Select(r => r.Confidence),
            .. Embedded.Altitudes.Select(r => r.Confidence), .. Embedded.ThermocoupleLimits.Select(r => r.Confidence),
            .. Embedded.ThermocoupleAgeing.Select(r => r.Confidence),
        ],
        c => Assert.True(c is Confidence.FromMemory or Confidence.CommonPractice, $"{c}"));

    private static void Near(decimal expected, decimal actual, decimal most) => Assert.InRange(actual, expected - most, expected + most);

    private static SortedDictionary<string, int> Atoms(string side)
    {
        var atoms = new SortedDictionary<string, int>(StringComparer.Ordinal);
        foreach (var term in side.Split(" + "))
        {
            var times = Leading().Match(term);
            var outer = times.Length > 0 ? int.Parse(times.Groups[1].Value) : 1;
            // A dot joins oxides of one mineral, each with a number of its own before it.
            foreach (var part in term[times.Length..].Split('·'))
            {
                var before = Digits().Match(part);
                var count = outer * (before.Length > 0 ? int.Parse(before.Value) : 1);
                var bare = Group().Replace(part[before.Length..], m => string.Concat(
                    Enumerable.Repeat(m.Groups[1].Value, m.Groups[2].Length > 0 ? int.Parse(m.Groups[2].Value) : 1)));
                foreach (Match m in Element().Matches(bare))
                {
                    var number = m.Groups[2].Length > 0 ? int.Parse(m.Groups[2].Value) : 1;
                    atoms[m.Groups[1].Value] = atoms.GetValueOrDefault(m.Groups[1].Value) + (count * number);
                }
            }
        }

        return atoms;
    }

    private const string Term = @"(\d+ )?[A-Z0-9][A-Za-z0-9()·]*";

    [GeneratedRegex($@"^{Term}( \+ {Term})* → {Term}( \+ {Term})*$")]
    private static partial Regex Reaction();

    [GeneratedRegex(@"^(\d+) ")]
    private static partial Regex Leading();

    [GeneratedRegex(@"^\d+")]
    private static partial Regex Digits();

    [GeneratedRegex(@"\(([A-Za-z0-9]+)\)(\d*)")]
    private static partial Regex Group();

    [GeneratedRegex(@"([A-Z][a-z]?)(\d*)")]
    private static partial Regex Element();
}
