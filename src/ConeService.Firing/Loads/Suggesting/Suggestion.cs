using ConeService.Contract.Loads;

namespace ConeService.Firing.Loads.Suggesting;

/// <summary>What to fire in place of, or beside, what was booked.</summary>
/// <param name="Firings">The firings suggested.</param>
/// <param name="Unplaced">What no firing accepts.</param>
/// <param name="Basis">Whether fewer are impossible.</param>
/// <param name="KeepsBooked">True when the firing booked is still to be fired, for what it accepts.</param>
/// <param name="BookedLoads">How many loads of it that takes; 0 where it is not kept.</param>
internal sealed record Suggestion(
    IReadOnlyList<SuggestedFiring> Firings, IReadOnlyList<UnplacedPieces> Unplaced, SuggestionBasis Basis, bool KeepsBooked,
    int BookedLoads);
