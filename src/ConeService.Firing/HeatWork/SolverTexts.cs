using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>What the answer to an inverse question says in sentences.</summary>
internal static class SolverTexts
{
    private const double Zero = Temperature.KelvinAtZero;

    /// <summary>Why no value puts the cone just down.</summary>
    /// <param name="find">What was asked for: peak, hold or rate.</param>
    /// <param name="solution">What was found.</param>
    /// <param name="celsius">Peak of the programme asked about, °C.</param>
    /// <param name="cone">The cone.</param>
    public static Message Why(string find, ProgrammeSolution solution, double celsius, Cone cone)
    {
        var (name, progress) = (("cone", (object?)cone.ToString()), ("progress", (object?)ConeWork.Told(solution.OtherProgress)));
        return (find, solution) switch
        {
            ("hold", { Why: Unsolvable.TooMuchWork }) => Message.Of("heat-work.hold-past-it", progress, name),
            ("hold", { Value: { } hours }) => Message.Of("heat-work.hold-too-long", ("celsius", celsius), name, ("hours", hours)),
            ("hold", _) => Message.Of("heat-work.hold-too-cold", ("celsius", celsius), name),
            ("rate", { Why: Unsolvable.TooMuchWork }) => Message.Of("heat-work.rate-past-it", progress, name),
            ("rate", { Value: { } rate }) => Message.Of("heat-work.rate-unusable", ("rate", rate)),
            ("rate", _) => Message.Of("heat-work.rate-changes-nothing"),
            ("peak", { Why: Unsolvable.TooMuchWork }) => Message.Of("heat-work.peak-past-it", progress, name),
            _ => Message.Of("heat-work.peak-too-hot", name),
        };
    }

    /// <summary>What would be feasible: the changed segment.</summary>
    public static SolveInstead Instead(HeatSegment segment, Cone cone)
    {
        var (celsius, minutes) = (segment.TargetKelvin - Zero, segment.HoldHours * 60);
        var fahrenheit = (celsius * 1.8) + 32;
        var message = segment.RateKelvinPerHour is { } rate
            ? Message.Of(
                "heat-work.peak-and-rate-instead",
                ("celsius", celsius), ("fahrenheit", fahrenheit), ("rate", rate), ("minutes", minutes), ("cone", cone.ToString()))
            : Message.Of(
                "heat-work.peak-instead", ("celsius", celsius), ("fahrenheit", fahrenheit),
                ("minutes", minutes), ("cone", cone.ToString()));
        return new(
            message, Math.Round(celsius, 4), Math.Round(fahrenheit, 4),
            segment.RateKelvinPerHour is { } r ? Math.Round(r, 4) : null, Math.Round(minutes, 4));
    }

    /// <summary>What a user of the value must know.</summary>
    public static IReadOnlyList<Message> Notes(string find, BendingCurve curve, Cone cone)
    {
        var justDown = Message.Of("heat-work.note-just-down");
        if (find != "hold") return [justDown];
        var kelvin = curve.EndPoint(HeatMargin.Rate);
        return
        [
            justDown,
            Message.Of(
                "heat-work.note-soak",
                ("celsius", kelvin - Zero), ("cone", cone.ToString()), ("minutes", 60 / curve.BendRate(kelvin))),
        ];
    }
}
