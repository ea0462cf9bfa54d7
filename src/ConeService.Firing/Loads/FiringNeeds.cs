using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>What a kind of firing needs, ready to be asked.</summary>
internal sealed class FiringNeeds
{
    internal FiringNeeds(FiringKindRow row, PotterScale scale)
    {
        Row = row;
        Heats = new(row.KilnHeats);
        Atmospheres = new(row.Atmospheres);
        Takes = new(row.Takes);
        Min = scale.Of(row.ConeMin);
        Max = scale.Of(row.ConeMax);
    }

    /// <summary>The row of the data package.</summary>
    public FiringKindRow Row { get; }

    /// <summary>The kind as a word of the contract, by which sentences choose their article.</summary>
    public string Kind => EnumWords.Word(Row.Id);

    /// <summary>What such a firing is called in a sentence.</summary>
    public string Name => Row.Name;

    /// <summary>Kilns it is fired in.</summary>
    public EnumSet<KilnHeat> Heats { get; }

    /// <summary>Atmospheres it is fired in.</summary>
    public EnumSet<Atmosphere> Atmospheres { get; }

    /// <summary>States of the ware it takes.</summary>
    public EnumSet<PieceState> Takes { get; }

    /// <summary>Lowest cone.</summary>
    public PotterCone Min { get; }

    /// <summary>Highest cone.</summary>
    public PotterCone Max { get; }

    /// <summary>True where such firings usually go to a cone.</summary>
    public bool Holds(PotterCone cone) => !cone.IsBelow(Min) && !Max.IsBelow(cone);
}
