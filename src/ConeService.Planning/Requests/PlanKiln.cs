using ConeService.Contract.Answers;
using ConeService.Contract.Kilns;

namespace ConeService.Planning.Requests;

/// <summary>A kiln with what it can be planned for.</summary>
/// <param name="Kiln">The kiln; its id, heat, highest cone and interior are needed. Without shelves those of its floor are assumed.</param>
/// <param name="Firings">The firings it runs, 1 to 20.</param>
/// <param name="Starts">The moments a firing can be started; left out: begin (after loading) and end of each time with somebody there.</param>
/// <param name="Closed">When it can't be used.</param>
/// <param name="LoadingMinutes">Loading, before the start, 0 to 1440 min; left out: 60.</param>
/// <param name="UnloadingMinutes">Unloading, after it was opened, 0 to 1440 min; left out: 30.</param>
/// <param name="FillingFactor">How much of a shelf ware covers in practice, 0.3 to 0.9; left out: 0.70 on round shelves, else 0.72.</param>
public sealed record PlanKiln(
    Kiln? Kiln = null,
    IReadOnlyList<MenuFiring?>? Firings = null,
    IReadOnlyList<string?>? Starts = null,
    IReadOnlyList<PlanSpan?>? Closed = null,
    double? LoadingMinutes = null,
    double? UnloadingMinutes = null,
    double? FillingFactor = null);

/// <summary>A firing that a kiln runs.</summary>
/// <param name="FiringKind">bisque, glaze, single, overglaze, raku, salt, soda, wood, pit or saggar.</param>
/// <param name="Cone">The cone, as text.</param>
/// <param name="Atmosphere">oxidation, neutral or reduction.</param>
/// <param name="Schedule">Id of the schedule; left out: a usual one of that kind and cone.</param>
/// <param name="Hours">From start until the kiln can be opened, h, up to 1,000; left out: as the fit of the schedule says.</param>
/// <param name="KilowattHours">Energy, kWh, up to 1,000,000; left out: as the fit of the schedule says.</param>
public sealed record MenuFiring(
    SentText FiringKind = default,
    SentText Cone = default,
    SentText Atmosphere = default,
    string? Schedule = null,
    double? Hours = null,
    double? KilowattHours = null);

/// <summary>A firing that stands, or that was announced.</summary>
/// <param name="Kiln">Id of the kiln.</param>
/// <param name="Start">When it starts; where it is pinned this need not be one of the starts of the kiln.</param>
/// <param name="FiringKind">Its kind, as in the menu of the kiln.</param>
/// <param name="Cone">Its cone.</param>
/// <param name="Atmosphere">Its atmosphere.</param>
/// <param name="Closed">True: nothing more goes in. Not read of an announced firing.</param>
/// <param name="Pieces">What is in it.</param>
public sealed record GivenFiring(
    string? Kiln = null,
    string? Start = null,
    SentText FiringKind = default,
    SentText Cone = default,
    SentText Atmosphere = default,
    bool Closed = true,
    IReadOnlyList<GivenPieces?>? Pieces = null);

/// <summary>Pieces of a firing that stands.</summary>
/// <param name="Id">Id of the piece.</param>
/// <param name="Count">How many; left out: all that are alike.</param>
public sealed record GivenPieces(string? Id = null, int? Count = null);
