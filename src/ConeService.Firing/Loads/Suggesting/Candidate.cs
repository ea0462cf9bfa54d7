namespace ConeService.Firing.Loads.Suggesting;

/// <summary>A firing that could be booked, with everything that may go into it together.</summary>
/// <param name="Firing">The firing.</param>
/// <param name="InKiln">True when the kiln of the request is made for it.</param>
/// <param name="Members">The placements it accepts together.</param>
internal sealed record Candidate(PlannedFiring Firing, bool InKiln, PlacementSet Members);
