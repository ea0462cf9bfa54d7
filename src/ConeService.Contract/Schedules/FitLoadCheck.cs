using ConeService.Contract.Loads;

namespace ConeService.Contract.Schedules;

/// <summary>What the load check says of the pieces at the cone that the firing reaches. POST /v1/loads/check says more: other firings for
/// what this one does not suit.</summary>
/// <param name="Cone">The cone it was judged at: the target, or a hotter one where the firing reaches that.</param>
/// <param name="Verdict">The worst of all pieces and of the load.</param>
/// <param name="Pieces">A verdict per piece, in the order sent.</param>
/// <param name="Reasons">What holds for the load as a whole, worst first.</param>
public sealed record FitLoadCheck(string Cone, Verdict Verdict, IReadOnlyList<PieceAnswer> Pieces, IReadOnlyList<Reason> Reasons);
