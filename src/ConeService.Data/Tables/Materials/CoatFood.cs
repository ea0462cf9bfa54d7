namespace ConeService.Data;

/// <summary>How a coat stands with food.</summary>
public enum CoatFood
{
    /// <summary>Only a leach test tells.</summary>
    LeachTest,

    /// <summary>Not where food touches, unless certified.</summary>
    NotOnFoodSurface,

    /// <summary>Not for food or drink.</summary>
    NotForFood,
}
