namespace ConeService.Data;

/// <summary>What a coat gives off that reaches its neighbours.</summary>
public enum Fume
{
    /// <summary>Chrome: pink on tin-white glazes.</summary>
    Chrome,

    /// <summary>Copper: pink blush in reduction.</summary>
    Copper,

    /// <summary>Lead.</summary>
    Lead,

    /// <summary>Manganese.</summary>
    Manganese,

    /// <summary>Tin: not given off, it catches chrome.</summary>
    Tin,

    /// <summary>Zinc.</summary>
    Zinc,
}
