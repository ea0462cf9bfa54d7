namespace ConeService.Data;

/// <summary>A firing process: what it does to a pot, its use, and who is near.</summary>
/// <param name="Id">Name of the process, kept from the reference tables.</param>
/// <param name="Process">The process in a few words.</param>
/// <param name="Kilns">Kilns it is fired in.</param>
/// <param name="KilnNote">What the kiln must be like.</param>
/// <param name="Atmospheres">Atmospheres that it passes through or may be fired in; blank where there is none to speak of.</param>
/// <param name="AtmosphereNote">The atmosphere in words.</param>
/// <param name="ConeMin">Lowest usual cone; blank where no cone is used.</param>
/// <param name="ConeMax">Highest usual cone; blank where no cone is used.</param>
/// <param name="Porosity">How the fired body is: porous, semi-porous, low, semi-vitreous, vitreous, as-body, as-host (as the ware
/// that was glazed before), not-applicable.</param>
/// <param name="Watertight">Whether the ware holds water.</param>
/// <param name="WatertightNote">On what that depends.</param>
/// <param name="FoodContact">not-for-food; leach-test-decides (only a leach test tells); traditional-use (in use by custom, no
/// test known); as-glaze; not-applicable.</param>
/// <param name="FoodContactNote">On what that depends.</param>
/// <param name="Microwave">Whether it goes into a microwave oven.</param>
/// <param name="Dishwasher">Whether it goes into a dishwasher.</param>
/// <param name="CareNote">Microwave and dishwasher in words.</param>
/// <param name="FiringsMin">Fewest firings a pot has had when this one is done.</param>
/// <param name="FiringsMax">Most firings a pot has usually had when this one is done; blank where any number.</param>
/// <param name="DurationHoursMin">Shortest usual duration of the heating.</param>
/// <param name="DurationHoursMax">Longest usual duration, h.</param>
/// <param name="DurationNote">Duration in words.</param>
/// <param name="Effect">What it does to a pot.</param>
/// <param name="Use">What the ware is good for.</param>
/// <param name="PeopleNearby">What the people near it meet.</param>
/// <param name="Cautions">Cautions to heed, the gravest first.</param>
/// <param name="SourcedFields">Fields that the sources name; the others are common practice.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ProcessRow(
    string Id,
    string Process,
    IReadOnlyList<ProcessKiln> Kilns,
    string? KilnNote,
    IReadOnlyList<Atmosphere> Atmospheres,
    string AtmosphereNote,
    string? ConeMin,
    string? ConeMax,
    Porosity Porosity,
    WareAnswer Watertight,
    string? WatertightNote,
    ProcessFoodContact FoodContact,
    string? FoodContactNote,
    WareAnswer Microwave,
    WareAnswer Dishwasher,
    string? CareNote,
    int? FiringsMin,
    int? FiringsMax,
    decimal? DurationHoursMin,
    decimal? DurationHoursMax,
    string? DurationNote,
    string Effect,
    string Use,
    string PeopleNearby,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> SourcedFields,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
