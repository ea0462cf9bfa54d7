namespace ConeService.Data;

/// <summary>What ware is for when it comes out of a kind of firing.</summary>
public enum WareFood
{
    /// <summary>It needs another firing.</summary>
    Unfinished,

    /// <summary>The glaze decides.</summary>
    AsGlaze,

    /// <summary>Only with a glaze inside.</summary>
    WithLinerGlaze,

    /// <summary>Not where food touches, unless certified.</summary>
    NotOnFoodSurface,

    /// <summary>Not for food or drink.</summary>
    NotForFood,
}
