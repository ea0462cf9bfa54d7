namespace ConeService.Data;

/// <summary>What can be said of food in ware of a process.</summary>
public enum ProcessFoodContact
{
    /// <summary>Not for food.</summary>
    NotForFood,

    /// <summary>Only a leach test tells.</summary>
    LeachTestDecides,

    /// <summary>In use by custom; no test is known.</summary>
    TraditionalUse,

    /// <summary>As the glaze; only a leach test tells.</summary>
    AsGlaze,

    /// <summary>Not a question.</summary>
    NotApplicable,
}
