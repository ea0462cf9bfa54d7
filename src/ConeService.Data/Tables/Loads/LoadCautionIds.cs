namespace ConeService.Data;

/// <summary>The cautions that the load check raises by itself, beside those that kilns, firings and materials name.</summary>
public static class LoadCautionIds
{
    /// <summary>Carbon monoxide: any reduction.</summary>
    public const string CarbonMonoxide = "caut02";

    /// <summary>Manganese fume.</summary>
    public const string Manganese = "caut07";

    /// <summary>Copper fume.</summary>
    public const string Copper = "caut08";

    /// <summary>Chromium.</summary>
    public const string Chrome = "caut13";

    /// <summary>Lead and cadmium.</summary>
    public const string Lead = "caut15";

    /// <summary>Explosive reduction in a gas kiln.</summary>
    public const string ExplosiveReduction = "caut33";

    /// <summary>All of them.</summary>
    public static IReadOnlyList<string> All { get; } = [CarbonMonoxide, Manganese, Copper, Chrome, Lead, ExplosiveReduction];
}
