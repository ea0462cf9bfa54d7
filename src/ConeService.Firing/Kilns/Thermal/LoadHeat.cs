namespace ConeService.Firing.Kilns.Thermal;

/// <summary>Heat content of ware and furniture, which share one temperature.</summary>
/// <param name="clay">Specific heat of fired clay.</param>
/// <param name="wareKilograms">Dry ware, kg.</param>
/// <param name="furnitureKilograms">Furniture, kg.</param>
/// <param name="free">Free water.</param>
/// <param name="bound">Water bound in the clay.</param>
internal sealed class LoadHeat(SpecificHeat clay, double wareKilograms, double furnitureKilograms, GivenOff free, GivenOff bound)
{
    private readonly double kilograms = wareKilograms + furnitureKilograms;

    /// <summary>Where the last free water is gone, K; 0 when there is none.</summary>
    public double DryKelvin => free.Joules > 0 ? free.ToKelvin : 0;

    /// <summary>Heat needed to go from one temperature to another, J.</summary>
    /// <param name="from">From, K.</param>
    /// <param name="to">To, K.</param>
    /// <param name="hottest">Highest temperature before, K.</param>
    public double Between(double from, double to, double hottest)
    {
        var heat = kilograms * clay.Between(from, to);
        return to > hottest ? heat + Water(to) - Water(hottest) : heat;
    }

    /// <summary>Capacity at a temperature, J/K.</summary>
    public double Capacity(double kelvin, double hottest)
    {
        var capacity = kilograms * clay.At(kelvin);
        return kelvin > hottest ? capacity + free.Capacity(kelvin) + bound.Capacity(kelvin) : capacity;
    }

    /// <summary>Sensible heat of the ware alone, J.</summary>
    public double Ware(double from, double to) => wareKilograms * clay.Between(from, to);

    /// <summary>Sensible heat of the furniture alone, J.</summary>
    public double Furniture(double from, double to) => furnitureKilograms * clay.Between(from, to);

    /// <summary>Heat that water took when the highest temperature so far is <paramref name="hottest"/>, J.</summary>
    public double Water(double hottest) => free.Taken(hottest) + bound.Taken(hottest);
}
