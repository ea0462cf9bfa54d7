namespace ConeService.Firing.Loads;

/// <summary>The cautions that the load check raises by itself, beside those that kilns, firings and materials name.</summary>
internal static class LoadCautionIds
{
    /// <summary>Carbon monoxide: any reduction.</summary>
    public const string CarbonMonoxide = "carbon-monoxide";

    /// <summary>Manganese fume.</summary>
    public const string Manganese = "manganese-fume";

    /// <summary>Copper fume.</summary>
    public const string Copper = "copper-fume";

    /// <summary>Chromium.</summary>
    public const string Chrome = "chromium-dust-and-fume";

    /// <summary>Lead and cadmium.</summary>
    public const string Lead = "lead-and-cadmium";

    /// <summary>Barium.</summary>
    public const string Barium = "barium-carbonate-toxic";

    /// <summary>Nickel.</summary>
    public const string Nickel = "nickel-dust";

    /// <summary>Vanadium.</summary>
    public const string Vanadium = "vanadium-dust";

    /// <summary>Zinc fume.</summary>
    public const string Zinc = "zinc-fume";

    /// <summary>Explosive reduction in a gas kiln.</summary>
    public const string ExplosiveReduction = "explosive-reduction";

    /// <summary>Smoke or gas in an electric kiln.</summary>
    public const string ReductionInElectric = "reduction-in-electric-kiln";

    /// <summary>A live electric kiln that is opened.</summary>
    public const string ElectricShock = "electric-shock";

    /// <summary>A kiln above what it is made for.</summary>
    public const string OverTemperature = "kiln-over-temperature";

    /// <summary>Crazed glaze under food.</summary>
    public const string Crazed = "crazed-glaze-on-food-ware";

    /// <summary>Ware that bursts.</summary>
    public const string Steam = "steam-explosion-of-ware";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } =
        [CarbonMonoxide, Manganese, Copper, Chrome, Lead, Barium, Nickel, Vanadium, Zinc, ExplosiveReduction];
}
