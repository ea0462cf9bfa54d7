using ConeService.Contract.Loads;

namespace ConeService.Planning.Requests;

/// <summary>A piece of the backlog, or several alike.</summary>
/// <param name="Piece">The piece as the load check takes it; its id and size are needed. Its coats are those of the next firing.</param>
/// <param name="Then">Coats put on before each later firing, in order; none: the next firing is its last.</param>
/// <param name="BisqueStack">How it may be stacked in a bisque; left out: it stands alone.</param>
/// <param name="Ready">When it can be loaded; left out: from the start of the horizon.</param>
/// <param name="Due">When it shall be unloaded from its last firing; left out: no date.</param>
/// <param name="Priority">How much its date counts, 1 to 9; left out: 1.</param>
/// <param name="HandlingHours">From unloading until it can be loaded again (glazing, drying), h, 0 to 1,000; left out: 48.</param>
public sealed record PlanPiece(
    PieceRequest? Piece = null,
    IReadOnlyList<IReadOnlyList<CoatRequest?>?>? Then = null,
    BisqueStack? BisqueStack = null,
    string? Ready = null,
    string? Due = null,
    int? Priority = null,
    double? HandlingHours = null);

/// <summary>Pieces stacked in or on each other in a bisque.</summary>
/// <param name="Count">How many at most, 1 to 50.</param>
/// <param name="StepMillimetres">How much each one more adds to the height, mm.</param>
public sealed record BisqueStack(int Count = 1, double StepMillimetres = 0);
