using ConeService.Contract.Kilns;
using ConeService.Data;
using ConeService.Firing.Kilns;
using CsCheck;
using MathNet.Numerics.RootFinding;

namespace ConeService.Firing.Tests.Kilns;

public class EnergyBalanceTests
{
    [Theory]
    [InlineData(5)]
    [InlineData(15)]
    [InlineData(30)]
    [InlineData(60)]
    public void Energy_is_conserved_to_a_tenth_of_a_percent_at_every_step(double step)
    {
        foreach (var id in new[] { "brick-74-cone-06", "brick-74-cone-9", "litres-198-1285-holds" })
        {
            Balanced(KilnCases.Fire(id, step).Energy);
            Assert.Equal(1, KilnCases.Fire(id, step).Energy.TotalKilowattHours / KilnCases.Fire(id, 5).Energy.TotalKilowattHours, 0.001);
        }
    }

    // Wet ware, weak elements, fast ramps and coasting are where a balance breaks.
    [Fact]
    public void Energy_is_conserved_whatever_is_fired() => Gen.Select(
        Gen.Double[20, 900], Gen.Double[0.8, 12], Gen.Double[0, 0.5], Gen.Int[0, 2], Gen.Double[20, 900], Gen.Double[5, 60])
        .Sample((litres, perArea, ware, dryness, rate, step) =>
    {
        var kilowatts = perArea * 5.7 * Math.Pow(litres / 1000, 2.0 / 3);
        var load = new KilnLoad(ware * litres, 0.1 * litres, Dryness: (Dryness)dryness);
        var setup = KilnCases.Model.Resolve(new(KilnHeat.Electric, litres, Kilowatts: Math.Max(0.3, kilowatts)), load);
        var programme = new KilnProgramme([new(rate, 650, 0.2), new(null, 1050, 0.5), new(100, 900), new(null, 600, 0.1)]);
        Balanced(KilnCases.Model.Predict(setup, programme, step).Energy);
    }, iter: 60);

    // Source: Kirchhoff's integral of k(t) = 0.09 + 1e-4·t through the wall of a 400 mm cube, area (1 + 1.08·x/0.4)²,
    // with the surface balance 0.8·σ(T⁴ − T₀⁴) + 1.6·ΔT^(4/3) solved by MathNet.Numerics; and 0.0005 kg/s per m² of air
    // at 1100 J/(kg K).
    [Fact]
    public void A_kiln_that_is_held_for_days_needs_what_its_wall_and_leak_let_through()
    {
        var kiln = new StatedKiln(KilnHeat.Electric, Interior: new(400, 400, 400), Wall: new("insulating-firebrick", 76), Kilowatts: 10);
        var setup = KilnCases.Model.Resolve(kiln, new(0, 0, Ware: WareStage.Bisqued));
        var held = KilnCases.Model.Predict(setup, KilnCases.Plan("-:1000:100")).Curve.Last(s => s.SetPointCelsius is not null);

        const double inside = 0.96;
        const double thick = 0.076;
        var grown = 1 + (1.08 * thick / 0.4);
        double Through(double surface) => inside * grown / thick * ((0.09 * (1000 - surface)) + (0.5e-4 * (1e6 - (surface * surface))));
        double Off(double surface) => inside * grown * grown
            * ((0.8 * 5.670374419e-8 * (Math.Pow(surface + 273.15, 4) - Math.Pow(293.15, 4))) + (1.6 * Math.Pow(surface - 20, 4.0 / 3)));
        var surface = Brent.FindRoot(s => Through(s) - Off(s), 21, 900, 1e-9);
        var expected = (Through(surface) + (0.0005 * inside * 1100 * 980)) / 1000;

        Assert.Equal(1, held.Kilowatts / expected, 0.005);
    }

    [Fact]
    public void A_load_of_nothing_stores_nothing()
    {
        var setup = KilnCases.Model.Resolve(new(KilnHeat.Electric, 100), new(0, 0));
        var energy = KilnCases.Model.Predict(setup, KilnCases.Plan("100:1000:0")).Energy;
        Assert.Equal((0, 0, 0), (energy.WareKilowattHours, energy.FurnitureKilowattHours, energy.WaterKilowattHours));
        Assert.Null(energy.KilowattHoursPerKilogram);
        Balanced(energy);
    }

    // Source: by hand: 10 kg of ware with 3 % water, 0.3·2600 kJ, and 9.7 kg·400 kJ of bound water: 4660 kJ = 1.2944 kWh.
    [Fact]
    public void Water_takes_what_the_table_says()
    {
        var setup = KilnCases.Model.Resolve(new(KilnHeat.Electric, 100), new(10, 5, Ware: WareStage.Green, Dryness: Dryness.BoneDry));
        Assert.Equal(1.2944, KilnCases.Model.Predict(setup, KilnCases.Plan("100:1000:0")).Energy.WaterKilowattHours, 4);
    }

    private static void Balanced(KilnEnergy e)
    {
        var parts = e.WareKilowattHours + e.FurnitureKilowattHours + e.WaterKilowattHours + e.WallsKilowattHours
            + e.ChamberKilowattHours + e.SurfaceKilowattHours + e.LeakKilowattHours;
        Assert.Equal(1, parts / e.ToPeakKilowattHours, 0.001);
        Assert.Equal(e.TotalKilowattHours, e.ToPeakKilowattHours + e.AfterPeakKilowattHours, 9);
        Assert.InRange(e.UnaccountedKilowattHours / e.TotalKilowattHours, -0.001, 0.001);
    }
}
