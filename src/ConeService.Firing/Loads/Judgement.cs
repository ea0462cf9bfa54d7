using ConeService.Contract.Loads;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Materials;

namespace ConeService.Firing.Loads;

/// <summary>
/// The judgement on one piece: its reasons, and the worst of them. A quiet one only remembers how bad it is: suggestions ask
/// the same rules thousands of times and need no sentences, which are then not even put together.
/// </summary>
internal sealed class Judgement
{
    private readonly LoadTables tables;
    private readonly bool quiet;
    private readonly PlannedFiring? firing;
    private readonly Piece? piece;
    private readonly List<Reason> reasons = [];

    /// <summary>A judgement that only remembers how bad it is.</summary>
    public Judgement(LoadTables tables) => (this.tables, quiet) = (tables, true);

    /// <summary>A judgement with its sentences.</summary>
    /// <param name="tables">The tables.</param>
    /// <param name="firing">The firing judged.</param>
    /// <param name="piece">The piece; null for the load as a whole.</param>
    public Judgement(LoadTables tables, PlannedFiring firing, Piece? piece) =>
        (this.tables, this.firing, this.piece) = (tables, firing, piece);

    /// <summary>The kinds of reason found.</summary>
    public EnumSet<ReasonCode> Codes { get; private set; }

    /// <summary>The worst of all; note when there is none.</summary>
    public ReasonSeverity Worst { get; private set; }

    /// <summary>The worst of the reasons for a cone outside a range, which another cone would mend.</summary>
    public ReasonSeverity WorstOfCone { get; private set; }

    /// <summary>The reasons, worst first; of equals the first found.</summary>
    public IReadOnlyList<Reason> Reasons => InOrder(reasons);

    /// <summary>The reasons as they are told: the zero that got lost before all, then the worst first.</summary>
    public static IReadOnlyList<Reason> InOrder(IEnumerable<Reason> reasons) =>
        [.. reasons.OrderByDescending(r => r.Code == ReasonCode.ConeZeroMixUp).ThenByDescending(r => r.Severity)];

    /// <summary>Reasons for a cone below or above what a body or a coat wants.</summary>
    public static bool IsOfCone(ReasonCode code) => code is
        ReasonCode.BodyOverfired or ReasonCode.BodyUnderfired or ReasonCode.GlazeOverfired or ReasonCode.GlazeUnderfired;

    /// <summary>Forgets everything.</summary>
    public void Clear()
    {
        reasons.Clear();
        (Worst, WorstOfCone, Codes) = (ReasonSeverity.Note, ReasonSeverity.Note, default);
    }

    /// <summary>
    /// Counts what was found. To be followed by <c>?.Because(…)</c>, whose sentences are made only where somebody will read them.
    /// </summary>
    /// <param name="code">What sort of reason.</param>
    /// <param name="severity">How much it weighs.</param>
    /// <param name="withinRange">True when the cone is within the range all the same.</param>
    /// <returns>What takes the sentences; null in a quiet judgement.</returns>
    public Found? Find(ReasonCode code, ReasonSeverity severity, bool withinRange = false)
    {
        if (severity > Worst) Worst = severity;
        Codes = Codes.With(code);
        if (!withinRange && severity > WorstOfCone && IsOfCone(code)) WorstOfCone = severity;
        return quiet ? null : new(this, code, severity);
    }

    /// <summary>A reason that still lacks its sentences.</summary>
    internal readonly struct Found(Judgement judgement, ReasonCode code, ReasonSeverity severity)
    {
        /// <summary>Says why.</summary>
        /// <param name="rule">Id of the load rule.</param>
        /// <param name="cited">The material whose figures were used; null for none.</param>
        /// <param name="message">What is wrong.</param>
        /// <param name="instead">What would work; null for nothing.</param>
        /// <param name="within">Where in the piece it lies, as a pointer; null: where the material is.</param>
        public void Because(string rule, Material? cited, Message message, Message? instead = null, string? within = null) =>
            judgement.reasons.Add(ReasonMaker.Make(
                judgement.tables, judgement.firing!, judgement.piece, code, severity, rule, cited, message, instead, within));
    }
}
