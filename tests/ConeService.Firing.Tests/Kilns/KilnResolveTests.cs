using ConeService.Contract.Answers;
using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Tests.Kilns;

public class KilnResolveTests
{
    // By hand: 9 kW · (208/240)² / (1 + 0.10·1) = 6.1455 kW.
    [Fact]
    public void Low_voltage_and_old_elements_take_power() =>
        Assert.Equal(
            6.1455,
            KilnCases.Model.Resolve(new(KilnHeat.Electric, 198, Kilowatts: 9, VoltsInstalled: 240, VoltsAsWired: 208, ElementAge: 1))
                .AvailableKilowatts,
            4);

    // By hand: 75 firings of 150 are half the life: 9/1.05 = 8.5714 kW.
    [Fact]
    public void Age_may_be_counted_in_firings() =>
        Assert.Equal(8.5714, KilnCases.Model.Resolve(new(KilnHeat.Electric, 198, Kilowatts: 9, ElementFirings: 75)).AvailableKilowatts, 4);

    [Fact]
    public void Everything_left_out_is_named()
    {
        var setup = KilnCases.Model.Resolve(new(KilnHeat.Electric, 198));
        Assert.Equal(
            [
                "kiln.interior", "kiln.wall.material", "kiln.kilowatts", "kiln.elementAge", "load.kilogramsWare", "load.kilogramsFurniture",
                "load.ware", "kiln.wall.thicknessMillimetres", "kiln.leakFactor", "load.dryness",
            ],
            setup.Assumed.Select(a => a.Parameter));
        Assert.Contains("common-practice", setup.Sources);
    }

    [Fact]
    public void Nothing_is_assumed_where_everything_is_stated() => Assert.Empty(KilnCases.Model.Resolve(
        new(
            KilnHeat.Electric,
            Interior: new(600, DiameterMillimetres: 600),
            Wall: new("insulating-firebrick", 76),
            Kilowatts: 9,
            VoltsInstalled: 240,
            VoltsAsWired: 230,
            ElementFirings: 20,
            LeakFactor: 1),
        new(30, 20, 8, WareStage.Green, Dryness.BoneDry)).Assumed);

    // By hand: π/4·0.6²·0.6 m³ = 169.646 L and 1.5·π·0.6² = 1.69646 m²; a box 0.5·0.4·0.6 = 120 L and 1.48 m².
    [Fact]
    public void Dimensions_make_volume_and_area()
    {
        var round = KilnCases.Model.Resolve(new(KilnHeat.Electric, Interior: new(600, DiameterMillimetres: 600)));
        Assert.Equal((169.646, 1.69646), (Math.Round(round.VolumeLitres, 3), Math.Round(round.InsideSquareMetres, 5)));
        var box = KilnCases.Model.Resolve(new(KilnHeat.Electric, Interior: new(600, 500, 400)));
        Assert.Equal((120, 1.48), (Math.Round(box.VolumeLitres, 9), Math.Round(box.InsideSquareMetres, 9)));
    }

    [Theory]
    [InlineData("member-missing", "/kiln/volumeLitres", null, null, null)]
    [InlineData("kiln-number-out-of-range", "/kiln/volumeLitres", 0.2, null, null)]
    [InlineData("kiln-number-out-of-range", "/kiln/volumeLitres", double.NaN, null, null)]
    [InlineData("kiln-number-out-of-range", "/kiln/kilowatts", 198.0, 0.0, null)]
    [InlineData("kiln-power-absurd", "/kiln/kilowatts", 198.0, 1000.0, null)]
    [InlineData("kiln-power-absurd", "/kiln/kilowatts", 1000.0, 0.5, null)]
    [InlineData("kiln-wall-unknown", "/kiln/wall/material", 198.0, 9.0, "insulating-brick")]
    public void What_no_kiln_is_is_refused(string code, string field, double? litres, double? kilowatts, string? wall)
    {
        var finding = Refusal(new(KilnHeat.Electric, litres, Kilowatts: kilowatts, Wall: new(wall)));
        Assert.Equal((code, field), (finding.Code, finding.Field));
    }

    [Fact]
    public void Contradictions_are_refused()
    {
        Assert.Equal("kiln-size-conflict", Refusal(new(KilnHeat.Electric, 300, new(600, DiameterMillimetres: 600))).Code);
        Assert.Equal("kiln-size-conflict", Refusal(new(KilnHeat.Electric, Interior: new(600, 500))).Code);
        Assert.Equal("/kiln/voltsAsWired", Refusal(new(KilnHeat.Gas, 300, VoltsAsWired: 230)).Field);
        Assert.Equal("/kiln/fuelFactor", Refusal(new(KilnHeat.Electric, 300, FuelFactor: 2)).Field);
        Assert.Equal("/kiln/elementFirings", Refusal(new(KilnHeat.Electric, 300, ElementAge: 0.5, ElementFirings: 20)).Field);
        Assert.Equal("/load/dryness", Refusal(new(KilnHeat.Electric, 300), new(Ware: WareStage.Bisqued, Dryness: Dryness.Wet)).Field);
        Assert.Equal("/load/thickestMillimetres", Refusal(new(KilnHeat.Electric, 300), new(ThickestMillimetres: 401)).Field);
        Assert.Equal("/load/kilogramsWare", Refusal(new(KilnHeat.Electric, 100), new(KilogramsWare: 300)).Field);
    }

    [Fact]
    public void A_near_wall_is_offered() =>
        Assert.Equal(
            "insulating-firebrick?", Refusal(new(KilnHeat.Electric, 198, Wall: new("insulating-firebrik"))).LikelyMistake?.ToString());

    private static Finding Refusal(StatedKiln kiln, KilnLoad? load = null) =>
        Assert.Single(Assert.Throws<RefusedException>(() => KilnCases.Model.Resolve(kiln, load)).Findings);
}
