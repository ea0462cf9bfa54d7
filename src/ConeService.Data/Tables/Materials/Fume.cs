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

    /// <summary>Barium: not given off, it comes out of matt glazes.</summary>
    Barium,

    /// <summary>Cadmium.</summary>
    Cadmium,

    /// <summary>Lithium: not given off.</summary>
    Lithium,

    /// <summary>Nickel: not given off.</summary>
    Nickel,

    /// <summary>Selenium, mostly with cadmium.</summary>
    Selenium,

    /// <summary>Vanadium.</summary>
    Vanadium,
}
