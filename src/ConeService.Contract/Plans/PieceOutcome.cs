namespace ConeService.Contract.Plans;

/// <summary>What becomes of a piece, or of several alike.</summary>
/// <param name="Id">Id of the piece.</param>
/// <param name="Count">How many alike.</param>
/// <param name="Firings">Its firings in order.</param>
/// <param name="DoneAt">When the last of them is unloaded from its last firing; null when some are left undone.</param>
/// <param name="Late">How many are unloaded after their date, or not at all though the date lies within what is planned.</param>
/// <param name="Waits">When it waits though it could be loaded, and why.</param>
public sealed record PieceOutcome(
    string Id, int Count, IReadOnlyList<PieceFiring> Firings, DateTimeOffset? DoneAt, int Late, IReadOnlyList<PieceWait> Waits);

/// <summary>A firing of a piece.</summary>
/// <param name="Firing">Number of the firing in the plan, from 1.</param>
/// <param name="Stage">Which of the piece's firings it is, from 1.</param>
/// <param name="Count">How many of those alike are in it.</param>
public sealed record PieceFiring(int Firing, int Stage, int Count);

/// <summary>A time in which pieces wait though they could be loaded.</summary>
/// <param name="Stage">The firing they wait for, from 1.</param>
/// <param name="Count">How many of those alike.</param>
/// <param name="From">From when they could be loaded.</param>
/// <param name="To">When they are loaded; null when they never are.</param>
/// <param name="Reasons">Why, each once.</param>
public sealed record PieceWait(int Stage, int Count, DateTimeOffset From, DateTimeOffset? To, IReadOnlyList<WaitReason> Reasons);

/// <summary>Why a piece is not in a firing.</summary>
public enum WaitReason
{
    /// <summary>A firing that suits it is loaded before it is ready.</summary>
    NotReadyWhenLoaded,

    /// <summary>A firing that suits it has no room left.</summary>
    NoRoom,

    /// <summary>A firing of that cone holds ware that it must not share with.</summary>
    OtherCompany,

    /// <summary>It does not go into the kiln.</summary>
    TooBigForKiln,

    /// <summary>A pinned firing takes nothing more.</summary>
    AlreadyLoaded,

    /// <summary>Every kiln that could take it is firing something else, or shut.</summary>
    KilnsTakenOrShut,

    /// <summary>A firing more would cost more than its waiting, or be too empty.</summary>
    AFiringMoreWouldCost,

    /// <summary>The load check accepts it in no firing of the menus.</summary>
    NoFiringAccepts,
}
