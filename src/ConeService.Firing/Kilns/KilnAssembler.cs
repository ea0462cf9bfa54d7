using ConeService.Contract.Quantities;
using ConeService.Data;
using ConeService.Firing.Kilns.Thermal;

namespace ConeService.Firing.Kilns;

/// <summary>Turns a setup into the numbers of the heat balance.</summary>
internal static class KilnAssembler
{
    public static KilnPhysics Assemble(Dataset dataset, KilnDefaults defaults, KilnSetup setup)
    {
        var inside = setup.InsideSquareMetres;
        var geometry = new KilnGeometry(setup.VolumeLitres / 1000, inside);
        var wall = dataset.KilnMaterials.Single(m => m.Id == setup.WallMaterial);
        return new()
        {
            Load = Load(dataset, defaults, setup),
            Wall = new(wall, setup.WallMillimetres / 1000, inside, geometry.SideMetres, defaults["wall-edge"]),
            ChamberCapacity = defaults["chamber-capacity"] * inside,
            ExchangeSquareMetres = defaults["exchange-area"] * inside,
            ExchangeEmissivity = defaults["exchange-emissivity"],
            ExchangeConvection = defaults["exchange-convection"],
            LeakConductance = defaults["leak"] * inside * defaults["air-heat"] * setup.LeakFactor,
            SurfaceEmissivity = defaults["surface-emissivity"],
            SurfaceConvection = defaults["surface-convection"],
        };
    }

    private static LoadHeat Load(Dataset dataset, KilnDefaults defaults, KilnSetup setup)
    {
        var clay = SpecificHeat.Of(dataset.KilnMaterials.Single(m => m.Id == KilnModel.ClayMaterial));
        var dry = setup.KilogramsWare - setup.KilogramsWater;
        var bound = setup.Ware == WareStage.Green ? dry * defaults["dehydroxylation-heat"] * 1000 : 0;
        // Warming the water is part of its heat, so only the dry mass has a specific heat.
        return new(
            clay,
            dry,
            setup.KilogramsFurniture,
            Given(defaults, setup.KilogramsWater * defaults["water-heat"] * 1000, "water"),
            Given(defaults, bound, "dehydroxylation"));
    }

    private static GivenOff Given(KilnDefaults defaults, double joules, string what) =>
        new(joules, defaults[what + "-from"] + Temperature.KelvinAtZero, defaults[what + "-to"] + Temperature.KelvinAtZero);
}
