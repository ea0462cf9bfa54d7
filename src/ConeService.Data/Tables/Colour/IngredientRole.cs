namespace ConeService.Data;

/// <summary>What an ingredient is to a colour rule.</summary>
public enum IngredientRole
{
    /// <summary>Without it the rule does not hold.</summary>
    Needed,

    /// <summary>One of these suffices.</summary>
    OneOf,

    /// <summary>With it the rule does not hold.</summary>
    Prevents,

    /// <summary>Wanted, but not decisive.</summary>
    Favours,
}
