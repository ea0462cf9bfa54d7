using ConeService.Contract.Texts;

namespace ConeService.Contract.HeatWork;

/// <summary>Something about a firing or its log that a user of the answer must know.</summary>
/// <param name="Code">Stable kebab-case name of the kind of warning.</param>
/// <param name="Message">What was found and what was done about it.</param>
/// <param name="Count">How often; 1 where counting makes no sense.</param>
/// <param name="AtMinutes">When, minutes since the start of the history; the first 20.</param>
public sealed record HeatWarning(string Code, Message Message, int Count, IReadOnlyList<double> AtMinutes)
{
    private const int MostTimes = 20;

    /// <summary>A warning on the firing as a whole.</summary>
    public static HeatWarning Of(string code, Message message) => new(code, message, 1, []);

    /// <summary>A warning on moments.</summary>
    /// <param name="code">Stable name.</param>
    /// <param name="message">What was found and done.</param>
    /// <param name="hours">The moments, h.</param>
    public static HeatWarning At(string code, Message message, IReadOnlyCollection<double> hours) =>
        new(code, message, hours.Count, [.. hours.Take(MostTimes).Select(h => Math.Round(h * 60, 3))]);
}
