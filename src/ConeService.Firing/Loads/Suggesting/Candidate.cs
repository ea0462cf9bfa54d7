namespace ConeService.Firing.Loads.Suggesting;

/// <summary>A firing that could be booked, with everything that may go into it together.</summary>
/// <param name="Item">The firing, as it stands on the menu.</param>
/// <param name="InKiln">True when the kiln of the request is made for it.</param>
/// <param name="Members">The placements it accepts together.</param>
internal sealed record Candidate(MenuItem Item, bool InKiln, PlacementSet Members)
{
    /// <summary>The firing.</summary>
    public PlannedFiring Firing => Item.Firing;
}
