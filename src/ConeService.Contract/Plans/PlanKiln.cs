using System.ComponentModel.DataAnnotations;
using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.Kilns;
using ConeService.Contract.Requests;

namespace ConeService.Contract.Plans;

/// <summary>A kiln with what it can be planned for.</summary>
/// <param name="Kiln">The kiln. Without shelves those of its floor are assumed.</param>
/// <param name="Firings">The firings it runs, 1 to 20.</param>
/// <param name="Starts">The moments a firing can be started; left out: begin (after loading) of each time with somebody there and, of an
/// electric kiln, so long before its end as a start is looked after; without such times 08:00 and 20:00.</param>
/// <param name="Closed">When it can't be used.</param>
/// <param name="LoadingMinutes">Loading, before the start, min; left out: 60.</param>
/// <param name="UnloadingMinutes">Unloading, after it was opened, min; left out: 30.</param>
/// <param name="FillingFactor">How much of a shelf ware covers in practice; left out: 0.70 on round shelves, else 0.72.</param>
[Needs(nameof(Kiln), nameof(Firings))]
public sealed record PlanKiln(
    [property: Needs(nameof(Contract.Kilns.Kiln.Id), nameof(Contract.Kilns.Kiln.MaxCone), nameof(Contract.Kilns.Kiln.Interior))]
    Kiln? Kiln = null,
    [property: Items(1, PlanLimits.MostMenu)] IReadOnlyList<MenuFiring?>? Firings = null,
    [property: Items(0, PlanLimits.MostMoments)] IReadOnlyList<string?>? Starts = null,
    [property: Items(0, PlanLimits.MostMoments)] IReadOnlyList<PlanSpan?>? Closed = null,
    [property: Range(0.0, 1440.0)] double? LoadingMinutes = null,
    [property: Range(0.0, 1440.0)] double? UnloadingMinutes = null,
    [property: Range(0.3, 0.9)] double? FillingFactor = null);

/// <summary>A firing that a kiln runs.</summary>
/// <param name="FiringKind">bisque, glaze, single, overglaze, raku, salt, soda, wood, pit or saggar.</param>
/// <param name="Cone">The cone, as text.</param>
/// <param name="Atmosphere">oxidation, neutral or reduction.</param>
/// <param name="Schedule">Id of the schedule, from /v1/schedules; left out: a usual one of that kind and cone.</param>
/// <param name="Minutes">From start until the kiln can be opened, min; left out: as the fit of the schedule says.</param>
/// <param name="KilowattHours">Energy, kWh; left out: as the fit of the schedule says.</param>
[Needs(nameof(FiringKind), nameof(Cone), nameof(Atmosphere))]
public sealed record MenuFiring(
    SentText FiringKind = default,
    [property: RegularExpression(ConeSpelling.Pattern)] SentText Cone = default,
    SentText Atmosphere = default,
    string? Schedule = null,
    [property: Range(6.0, 60_000.0)] double? Minutes = null,
    [property: Range(0.0, 1_000_000.0)] double? KilowattHours = null);

/// <summary>A firing that stands, or that was announced: a firing of a former plan with these members.</summary>
/// <param name="KilnId">Id of the kiln.</param>
/// <param name="Start">When it starts; where it is pinned this need not be one of the starts of the kiln.</param>
/// <param name="FiringKind">Its kind, as in the menu of the kiln.</param>
/// <param name="Cone">Its cone, as in the menu of the kiln.</param>
/// <param name="Atmosphere">Its atmosphere, as in the menu of the kiln.</param>
/// <param name="FillUp">True: more may go in; left out: nothing more does. Not read of an announced firing.</param>
/// <param name="Pieces">What is in it.</param>
[Needs(nameof(KilnId), nameof(Start), nameof(FiringKind), nameof(Cone), nameof(Atmosphere))]
public sealed record GivenFiring(
    string? KilnId = null,
    string? Start = null,
    SentText FiringKind = default,
    SentText Cone = default,
    SentText Atmosphere = default,
    bool? FillUp = null,
    [property: Items(0, PlanLimits.MostPieces)] IReadOnlyList<GivenPieces?>? Pieces = null);

/// <summary>Pieces of a firing that stands.</summary>
/// <param name="Id">Id of the piece.</param>
/// <param name="Count">How many; left out: all that are alike.</param>
[Needs(nameof(Id))]
public sealed record GivenPieces(
    string? Id = null,
    [property: SentAs(SentForm.Number)] SentText Count = default);
