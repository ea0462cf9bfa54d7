namespace ConeService.Firing.Kilns;

/// <summary>Water in clay: what it takes to evaporate it, and how much the mineral binds.</summary>
/// <param name="defaults">Where the constants come from.</param>
internal sealed class ClayWater(KilnDefaults defaults)
{
    /// <summary>Latent heat of water, kJ/kg: 2500 − 2.41·θ (zi-2012).</summary>
    /// <param name="celsius">θ, °C, 0 to 100.</param>
    public double LatentHeat(double celsius) => defaults["latent-heat"] - (defaults["latent-heat-slope"] * celsius);

    /// <summary>Share of pure kaolinite's mass that is bound water.</summary>
    public double KaoliniteShare => defaults["kaolinite-water"];
}
