namespace ConeService.Api.OpenApi;

/// <summary>The groups of addresses in the document.</summary>
internal static class Tags
{
    public const string Cones = "Cones";
    public const string HeatWork = "Heat work";
    public const string Schedules = "Schedules";
    public const string Loads = "Loads";
    public const string Plans = "Plans";
    public const string Colour = "Colour";
    public const string Practice = "Practice";
    public const string Study = "Study";
    public const string Data = "Data";
    public const string Cards = "Cards";
    public const string Operation = "Operation";

    /// <summary>Each group with its description.</summary>
    public static IReadOnlyList<(string Name, string Description)> All { get; } =
    [
        (Cones, "Cones, charts, end points at any heating rate, and conversions."),
        (HeatWork, "What a programme or a log does to the cones, what would put one down, and how far the meter is off."),
        (Schedules, "Firing schedules, and programmes made of them for a cone, a kiln and a load."),
        (Loads, "The load check, with the materials and rules it rests on."),
        (Plans, "Firing plans of a studio: which firings run when, with which pieces."),
        (Colour, "What colour a glaze will be, by colorant, base, atmosphere and heat."),
        (Practice, "Firing processes, cautions, and limits of exposure and food contact."),
        (Study, "Everyday words, questions to ask a class, faults of ware, landmarks of a firing, and terms of the trade."),
        (Data, "The data package and its bibliography."),
        (Cards, "Pages to embed."),
        (Operation, "Probes for whoever runs the service."),
    ];
}
