namespace ConeService.Data;

/// <summary>Whether a food-contact limit binds.</summary>
public enum FoodLimitStanding
{
    /// <summary>Law.</summary>
    Law,

    /// <summary>An action level, a model code or a standard: guidance, not a limit in law.</summary>
    Guidance,

    /// <summary>No longer in use.</summary>
    Historic,
}
