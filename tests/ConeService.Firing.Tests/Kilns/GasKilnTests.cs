using ConeService.Data;
using ConeService.Firing.Kilns;

namespace ConeService.Firing.Tests.Kilns;

public class GasKilnTests
{
    // Source: by hand, 1 − (4.3e-4 + 3.2e-8·1000)·(1000 − 20) = 0.54724.
    [Fact]
    public void Half_the_gas_stays_at_a_thousand_degrees() => Assert.Equal(0.54724, new FlueLoss(4.3e-4, 3.2e-8).Available(1000, 20), 9);

    // Source: heat contents of CO2, H2O(g) and N2 between 298 and 1273 K, 49.0, 38.0 and 30.8 kJ/mol (JANAF, from memory): methane
    // leaves 1 − (49.0 + 2·38.0 + 7.52·30.8)/802.3 = 0.555 of its net heating value.
    [Fact]
    public void The_flue_takes_what_the_products_of_methane_hold() =>
        Assert.Equal(
            0.555, new FlueLoss(KilnCases.Model.Defaults["flue-loss"], KilnCases.Model.Defaults["flue-loss-slope"]).Available(1000, 25),
            0.01);

    [Fact]
    public void Fuel_is_a_lower_bound_and_a_claim_only_with_the_keeper_s_factor()
    {
        var plan = KilnCases.Plan("100:1000:0;60:1285:0.3");
        var bound = KilnCases.Model.Predict(KilnCases.Model.Resolve(new(KilnHeat.Gas, 600)), plan);
        Assert.True(bound.Fuel!.LowerBoundKilowattHours > 1.5 * bound.Energy.TotalKilowattHours);
        Assert.Null(bound.Fuel.KilowattHours);
        var known = KilnCases.Model.Predict(KilnCases.Model.Resolve(new(KilnHeat.Gas, 600, FuelFactor: 2)), plan);
        Assert.Equal(2 * bound.Fuel.LowerBoundKilowattHours, known.Fuel!.KilowattHours!.Value, 9);
        Assert.Equal(
            (1.5, 2.5),
            (bound.Fuel.UsualLowKilowattHours / bound.Fuel.LowerBoundKilowattHours,
                bound.Fuel.UsualHighKilowattHours / bound.Fuel.LowerBoundKilowattHours));
    }

    [Fact]
    public void An_electric_kiln_burns_nothing() =>
        Assert.Null(KilnCases.Model.Predict(KilnCases.Glazed(11), KilnCases.Plan("150:600:0")).Fuel);
}
