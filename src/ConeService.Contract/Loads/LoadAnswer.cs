using ConeService.Contract.Answers;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Loads;

/// <summary>What is to be done with a piece or a load.</summary>
public enum Verdict
{
    /// <summary>It may be fired.</summary>
    Accept,

    /// <summary>Whoever fires must look at it first.</summary>
    Review,

    /// <summary>It must not be fired so.</summary>
    Refuse,
}

/// <summary>The check of a load.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Verdict">The worst of all pieces and of the load.</param>
/// <param name="Pieces">A verdict per piece, in the order sent.</param>
/// <param name="Load">What holds for the load as a whole.</param>
/// <param name="SuggestedFirings">The fewest firings that accept what was not accepted.</param>
/// <param name="Unplaced">Pieces that no firing accepts as they are, with the reason.</param>
/// <param name="SuggestionBasis">Whether fewer firings are impossible, or were merely not found.</param>
/// <param name="Cautions">What the load raises, each once.</param>
/// <param name="Basis">
/// Always printed: the ranges of the tables as they stand, nothing interpolated. How far each can be trusted stands in the reasons.
/// </param>
/// <param name="Sources">Ids of the sources of all reasons.</param>
/// <param name="Assumed">What was left out, and what was taken instead.</param>
/// <param name="Confidence">The weakest of all reasons and of the materials of all pieces; common practice at best, as the rules are. What
/// callers state of materials of their own is taken as it stands.</param>
/// <param name="Ref">The caller's own name for the load, as sent; null when none was sent.</param>
/// <param name="ReasonTable">With detail=verdicts the different reasons of pieces, by number; else empty.</param>
/// <param name="KeepsBooked">
/// True when the firing booked is to be fired for what it accepts, and the suggestions take the rest; false when it accepts nothing, or
/// when the suggestions take the whole load in fewer firings.
/// </param>
/// <param name="TotalFirings">How many firings the whole load takes, the one booked included where it is kept; what does not go in at once
/// counts for each load.</param>
public sealed record LoadAnswer(
    string DatasetVersion,
    Verdict Verdict,
    IReadOnlyList<PieceAnswer> Pieces,
    LoadReasons Load,
    IReadOnlyList<SuggestedFiring> SuggestedFirings,
    IReadOnlyList<UnplacedPieces> Unplaced,
    SuggestionBasis SuggestionBasis,
    IReadOnlyList<LoadCaution> Cautions,
    Basis Basis,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed,
    Confidence Confidence,
    string? Ref,
    IReadOnlyList<NumberedReason> ReasonTable,
    bool KeepsBooked,
    int TotalFirings) : IComputed
{
    Address IComputed.Explain => new("/v1/load-rules");
}

/// <summary>How much a load check answers.</summary>
public enum LoadDetail
{
    /// <summary>Every piece with its reasons.</summary>
    Full,

    /// <summary>Reasons once in a table, to which the pieces refer by number.</summary>
    Verdicts,
}

/// <summary>The verdict on one piece.</summary>
/// <param name="Id">The caller's name for it.</param>
/// <param name="Verdict">What is to be done with it.</param>
/// <param name="Reasons">Why, worst first; the zero that got lost before all. Empty with detail=verdicts.</param>
/// <param name="Ref">The caller's own reference, as sent; null when none was sent.</param>
/// <param name="Instead">
/// What to do with it, in a sentence: one thing that suits its body and all its coats together; null where nothing has to be changed,
/// and with detail=verdicts.
/// </param>
/// <param name="SuggestedFiring">Number, from 1, of the suggested firing that takes it; null where none does, or none is needed.</param>
/// <param name="ReasonNumbers">With detail=verdicts the numbers of its reasons in the table; else empty.</param>
public sealed record PieceAnswer(
    string Id, Verdict Verdict, IReadOnlyList<Reason> Reasons, string? Ref, Message? Instead, int? SuggestedFiring,
    IReadOnlyList<int> ReasonNumbers);

/// <summary>What holds for the load as a whole.</summary>
/// <param name="Reasons">Why, worst first.</param>
public sealed record LoadReasons(IReadOnlyList<Reason> Reasons);

/// <summary>A firing that accepts the pieces named.</summary>
/// <param name="FiringKind">Kind of the firing.</param>
/// <param name="Cone">The cone.</param>
/// <param name="Atmosphere">The atmosphere.</param>
/// <param name="PieceIds">The pieces, in the order sent.</param>
/// <param name="InThisKiln">True when the kiln of the request can do it.</param>
/// <param name="KilnHeats">The kilns that such a firing is done in.</param>
/// <param name="KilnId">
/// The id of the kiln to fire it in; null where that kiln has no id, or where no kiln of the request can do it.
/// </param>
/// <param name="IsUsual">
/// True for a firing that studios usually run, or that was offered; false where no such one accepts the pieces.
/// </param>
/// <param name="Why">Why this firing, in a sentence.</param>
/// <param name="Remaining">Notes that remain in it: what whoever fires should still know.</param>
/// <param name="PercentFull">
/// How full the kiln is, % of what it holds in practice; above 100 it takes several loads. Null where the kiln, its interior or the
/// size of a piece is not known. By layers of shelves; in a bisque, of which nobody told how pieces stand in one another, by volume.
/// </param>
/// <param name="LoadsNeeded">How many loads of the kiln it takes at least; 1 where that is not known.</param>
public sealed record SuggestedFiring(
    FiringKind FiringKind,
    string Cone,
    [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere Atmosphere,
    IReadOnlyList<string> PieceIds,
    bool InThisKiln,
    IReadOnlyList<KilnHeat> KilnHeats,
    string? KilnId,
    bool IsUsual,
    Message Why,
    IReadOnlyList<RemainingNote> Remaining,
    decimal? PercentFull,
    int LoadsNeeded);

/// <summary>A note that remains in a suggested firing.</summary>
/// <param name="Code">The kind of reason.</param>
/// <param name="Message">What it is about, in a few words.</param>
/// <param name="PieceIds">The pieces, in the order sent.</param>
public sealed record RemainingNote(ReasonCode Code, Message Message, IReadOnlyList<string> PieceIds);

/// <summary>Pieces that no firing accepts as they are.</summary>
/// <param name="PieceIds">The pieces, in the order sent.</param>
/// <param name="Message">Why, in a sentence.</param>
/// <param name="Reasons">What stands against the firing that comes nearest.</param>
public sealed record UnplacedPieces(IReadOnlyList<string> PieceIds, Message Message, IReadOnlyList<Reason> Reasons);

/// <summary>How the suggestion was found.</summary>
public enum SuggestionBasis
{
    /// <summary>Fewer firings are impossible.</summary>
    Exact,

    /// <summary>Too many different pieces to try everything: fewer firings may be possible.</summary>
    Heuristic,
}

/// <summary>A caution, as the data package has it.</summary>
/// <param name="Id">Number of the caution.</param>
/// <param name="Hazard">The hazard.</param>
/// <param name="Severity">How bad it can get without control.</param>
/// <param name="When">When and where it arises.</param>
/// <param name="Control">What controls it; local codes and licensed practice decide.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record LoadCaution(string Id, string Hazard, Severity Severity, string When, string Control, IReadOnlyList<string> Sources);

/// <summary>The check of one body, its coats and one firing.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Verdict">What is to be done.</param>
/// <param name="Reasons">Why, worst first.</param>
/// <param name="SuggestedFirings">A firing that would accept it; empty when it is accepted, or when there is none.</param>
/// <param name="Unplaced">Why no firing accepts it; empty when one does.</param>
/// <param name="Cautions">What it raises.</param>
/// <param name="Basis">Always printed: the ranges of the tables as they stand.</param>
/// <param name="Sources">Ids of the sources of all reasons.</param>
/// <param name="Assumed">What was left out, and what was taken instead.</param>
/// <param name="Confidence">The weakest of the reasons and of the materials; common practice at best, as the rules are. What callers state
/// of materials of their own is taken as it stands.</param>
/// <param name="Ref">The caller's own reference, as sent; null when none was sent.</param>
/// <param name="Instead">
/// What to do, in a sentence: one thing that suits body and all coats together; null where nothing has to be changed.
/// </param>
public sealed record PairingAnswer(
    string DatasetVersion,
    Verdict Verdict,
    IReadOnlyList<Reason> Reasons,
    IReadOnlyList<PairingFiring> SuggestedFirings,
    IReadOnlyList<PairingUnplaced> Unplaced,
    IReadOnlyList<LoadCaution> Cautions,
    Basis Basis,
    IReadOnlyList<string> Sources,
    IReadOnlyList<Assumption> Assumed,
    Confidence Confidence,
    string? Ref,
    Message? Instead) : IComputed
{
    Address IComputed.Explain => new("/v1/load-rules");
}

/// <summary>A firing that accepts the pairing.</summary>
/// <param name="FiringKind">Kind of the firing.</param>
/// <param name="Cone">The cone.</param>
/// <param name="Atmosphere">The atmosphere.</param>
/// <param name="KilnHeats">The kilns that such a firing is done in.</param>
public sealed record PairingFiring(
    FiringKind FiringKind, string Cone, [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere Atmosphere,
    IReadOnlyList<KilnHeat> KilnHeats);

/// <summary>Why no firing accepts the pairing.</summary>
/// <param name="Message">Why, in a sentence.</param>
/// <param name="Reasons">What stands against the firing that comes nearest.</param>
public sealed record PairingUnplaced(Message Message, IReadOnlyList<Reason> Reasons);
