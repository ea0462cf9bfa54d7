namespace ConeService.Data;

/// <summary>Who is exposed to a hazard.</summary>
public enum Exposed
{
    /// <summary>Whoever loads, fires and opens the kiln.</summary>
    KilnOperator,

    /// <summary>Everyone else in the room or downwind.</summary>
    PeopleNearby,

    /// <summary>Whoever weighs and mixes materials.</summary>
    GlazeMixer,

    /// <summary>Whoever makes and glazes the ware.</summary>
    Maker,

    /// <summary>Whoever repairs kilns and cleans shelves.</summary>
    Maintainer,

    /// <summary>Whoever eats, drinks or cooks from the ware.</summary>
    UserOfTheWare,

    /// <summary>Children and pregnant people.</summary>
    ChildrenAndPregnant,
}
