using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>
/// Takes the reasons of one piece. A quiet sink only remembers how bad it is: suggestions ask the same rules thousands of
/// times and need no sentences, which are then not even put together.
/// </summary>
internal sealed class ReasonSink(LoadBook book, bool quiet)
{
    private readonly List<Reason> reasons = [];

    public bool Quiet => quiet;

    /// <summary>The worst of all; note when there is none.</summary>
    public ReasonSeverity Worst { get; private set; }

    /// <summary>The worst of the reasons for a cone outside a range, which another cone would mend.</summary>
    public ReasonSeverity WorstOfCone { get; private set; }

    /// <summary>The reasons, worst first; of equals the first found.</summary>
    public IReadOnlyList<Reason> Reasons => [.. reasons.OrderByDescending(r => r.Code == ReasonCode.ConeZeroMixUp).ThenByDescending(r => r.Severity)];

    public void Clear() => (Worst, WorstOfCone) = (ReasonSeverity.Note, ReasonSeverity.Note);

    /// <summary>Adds a reason.</summary>
    /// <param name="code">What sort of reason.</param>
    /// <param name="severity">How much it weighs.</param>
    /// <param name="rule">Id of the load rule.</param>
    /// <param name="cited">The material whose figures were used; null for none.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="instead">What would work; empty for nothing.</param>
    /// <param name="withinRange">True when the cone is within the range all the same.</param>
    public void Add(
        ReasonCode code,
        ReasonSeverity severity,
        string rule,
        Material? cited,
        [System.Runtime.CompilerServices.InterpolatedStringHandlerArgument("")] ref ReasonText message,
        [System.Runtime.CompilerServices.InterpolatedStringHandlerArgument("")] ref ReasonText instead,
        bool withinRange = false)
    {
        if (severity > Worst) Worst = severity;
        if (!withinRange && code is ReasonCode.BodyOverfired or ReasonCode.BodyUnderfired or ReasonCode.GlazeOverfired or ReasonCode.GlazeUnderfired && severity > WorstOfCone) WorstOfCone = severity;
        if (quiet) return;
        var row = book.Rule(rule);
        var help = instead.ToStringAndClear();
        reasons.Add(new(
            code, severity, message.ToStringAndClear(), help.Length == 0 ? null : help, rule,
            cited is null or { Sources.Count: 0 } ? row.Sources : [.. row.Sources.Union(cited.Sources)],
            cited?.Confidence is { } confidence && confidence > row.Confidence ? confidence : row.Confidence));
    }
}
