using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Requests;

namespace ConeService.Contract.Plans;

/// <summary>A piece of the backlog, or several alike.</summary>
/// <param name="Piece">The piece as the load check takes it. Its coats are those of its next firing.</param>
/// <param name="Then">Coats put on before each later firing, in order; none: the next firing is its last.</param>
/// <param name="BisqueStack">How it may be stacked in a bisque; left out: it stands alone.</param>
/// <param name="Ready">When it can be loaded; left out: from the start of the horizon.</param>
/// <param name="Due">When it shall be unloaded from its last firing; left out: no date.</param>
/// <param name="Priority">How much its date counts, 1 to 9; left out: 1.</param>
/// <param name="HandlingMinutes">From unloading until it can be loaded again (glazing, drying), min; left out: 2,880, two days.</param>
[Needs(nameof(Piece))]
public sealed record PlanPiece(
    [property: Needs(nameof(PieceRequest.Id), nameof(PieceRequest.Size))] PieceRequest? Piece = null,
    [property: Items(0, PlanLimits.MostThen)] IReadOnlyList<LaterCoats?>? Then = null,
    BisqueStack? BisqueStack = null,
    string? Ready = null,
    string? Due = null,
    [property: Range(1, 9)] SentText Priority = default,
    [property: Range(0.0, 60_000.0)] double? HandlingMinutes = null);

/// <summary>What is put on before a later firing.</summary>
/// <param name="Coats">The coats, innermost first; none: it is fired again as it is.</param>
public sealed record LaterCoats(
    [property: Items(0, LoadLimits.MostCoats)] IReadOnlyList<CoatRequest?>? Coats = null);

/// <summary>Pieces stacked in or on each other in a bisque.</summary>
/// <param name="Count">How many at most.</param>
/// <param name="StepMillimetres">How much each one more adds to the height, mm.</param>
[Needs(nameof(Count), nameof(StepMillimetres))]
public sealed record BisqueStack(
    [property: Range(1, 50)] SentText Count = default,
    [property: Range(0.0, 5000.0)] double? StepMillimetres = null);
