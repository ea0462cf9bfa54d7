using ConeService.Firing.Kilns;
using ConeService.Firing.Kilns.Thermal;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Kilns;

public class PublishedHeatTests
{
    public static TheoryData<Dictionary<string, string>> Rows => [.. CsvFile.Read("Vectors/kiln-heats.csv")];

    // Source: the row's own, tests/Vectors/kiln-heats.csv.
    [Theory]
    [MemberData(nameof(Rows), DisableDiscoveryEnumeration = true)]
    public void A_published_heat_is_found_as_stated(Dictionary<string, string> row)
    {
        var (a, b) = (row["a"] is "" ? 0 : KilnCases.Number(row["a"]), row["b"] is "" ? 0 : KilnCases.Number(row["b"]));
        var water = new ClayWater(KilnCases.Model.Defaults);
        var found = row["what"] switch
        {
            "specific-heat" => OldClay.At(a + 273.15) / 1000,
            "sensible-heat-kcal" => OldClay.Between(a + 273.15, b + 273.15) / 4186.8,
            "sensible-heat-kj" => OldClay.Between(a + 273.15, b + 273.15) / 1000,
            "sensible-heat-kwh" => OldClay.Between(a + 273.15, b + 273.15) / 3.6e6,
            "latent-heat" => water.LatentHeat(a),
            "evaporation" => a * water.LatentHeat(b),
            "kaolinite-water" => 100 * water.KaoliniteShare,
            "specific-firing-energy" => FiringEnergy.Specific(a, b, 500)!.Value,
            _ => throw new InvalidOperationException(row["what"]),
        };
        Assert.Equal(KilnCases.Number(row["expected"]), found, KilnCases.Number(row["tolerance"]));
    }

    // Source: heat-work specification section 6: 1128 + 0.102·T − 3.6e7/T², T in K; at 1000 K 1128 + 102 − 36 = 1194 by hand.
    [Fact]
    public void Fired_clay_has_the_specified_heat() => Assert.Equal(1194, Clay("fired-clay").At(1000), 9);

    // Source: the primitive by hand, 300 to 1000 K: 1128·700 + 0.051·(10⁶ − 9·10⁴) − 3.6e7·(1/300 − 1/1000)
    // = 789600 + 46410 − 84000.
    [Fact]
    public void Heat_between_two_temperatures_is_the_integral() => Assert.Equal(752010, Clay("fired-clay").Between(300, 1000), 6);

    // Source: the same specification: insulating firebrick 850 + 0.25·t, k = 0.09 + 1e-4·t, t in °C.
    [Fact]
    public void Insulating_firebrick_has_the_specified_properties()
    {
        var wall = new WallLayerProbe(Reference.Dataset.KilnMaterials.Single(m => m.Id == "insulating-firebrick"));
        Assert.Equal(560, wall.Density);
        Assert.Equal(0.17, wall.ConductivityAt800, 12);
        Assert.Equal(1050, wall.HeatAt800, 9);
    }

    // Source: 335 kJ/kg to warm water from 20 to 100 °C (4.19·80) and 2500 − 2.41·100: the 2.6 MJ/kg of the specification.
    [Fact]
    public void Driving_off_free_water_takes_warming_and_evaporating_it() =>
        Assert.Equal((4.19 * 80) + new ClayWater(KilnCases.Model.Defaults).LatentHeat(100), KilnCases.Model.Defaults["water-heat"], 10.0);

    private static SpecificHeat OldClay => Clay("bourry-clay");

    private static SpecificHeat Clay(string id) => SpecificHeat.Of(Reference.Dataset.KilnMaterials.Single(m => m.Id == id));

    private sealed record WallLayerProbe(ConeService.Data.KilnMaterialRow Row)
    {
        public decimal Density => Row.DensityKilogramsPerCubicMetre!.Value;

        public double ConductivityAt800 =>
            (double)(Row.ConductivityConstant! + (800 * Row.ConductivitySlope!) + (800 * 800 * Row.ConductivitySquare!))!;

        public double HeatAt800 => SpecificHeat.Of(Row).At(1073.15);
    }
}
