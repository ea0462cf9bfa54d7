namespace ConeService.Firing.Kilns;

/// <summary>What heats a kiln, as far as the model tells kinds apart. Raku and vapour kilns are gas kilns here; a wood kiln has no programme to follow and is not modelled.</summary>
public enum KilnHeat
{
    /// <summary>Wire elements on a mains supply: no flue.</summary>
    Electric,

    /// <summary>Gas burners with a flue: only part of the fuel's heat stays in the chamber.</summary>
    Gas,
}
