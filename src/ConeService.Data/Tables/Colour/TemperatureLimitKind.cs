namespace ConeService.Data;

/// <summary>What a temperature limit of a colour says.</summary>
public enum TemperatureLimitKind
{
    /// <summary>Outside it the colour is not to be had.</summary>
    UsableRange,

    /// <summary>Above it the colorant leaves as fume.</summary>
    FumesAbove,

    /// <summary>Above it the colorant gives off oxygen.</summary>
    GivesOffOxygenAbove,
}
