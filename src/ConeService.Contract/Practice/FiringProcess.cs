using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Contract.Texts;
using ConeService.Data;

namespace ConeService.Contract.Practice;

/// <summary>A firing process: what it does to a pot, its use, and who is near.</summary>
/// <param name="Id">Id of the process.</param>
/// <param name="Name">The process in a few words.</param>
/// <param name="Kilns">Kilns it is fired in.</param>
/// <param name="KilnNote">What the kiln must be like.</param>
/// <param name="Atmospheres">Atmospheres that it passes through or may be fired in; empty where there is none to speak of.</param>
/// <param name="AtmosphereNote">The atmosphere in words.</param>
/// <param name="ConeMin">Lowest usual cone; null where no cone is used.</param>
/// <param name="ConeMax">Highest usual cone; null where no cone is used.</param>
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
/// <param name="FiringsMax">Most firings a pot has usually had when this one is done; null where any number.</param>
/// <param name="DurationMinutesMin">Usual duration of the heating, minutes.</param>
/// <param name="DurationMinutesMax">Longest usual duration.</param>
/// <param name="DurationNote">Duration in words.</param>
/// <param name="Effect">What it does to a pot.</param>
/// <param name="Use">What the ware is good for.</param>
/// <param name="PeopleNearby">What the people near it meet.</param>
/// <param name="Cautions">Cautions to heed, the gravest first.</param>
/// <param name="SourcedFields">Fields that the sources name; the others are common practice.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far this can be trusted.</param>
/// <param name="Note">What a reader must know.</param>
/// <param name="Student">The row in plain sentences for a student, without ids; null where the data package has none.</param>
public sealed record FiringProcess(
    string Id,
    string Name,
    IReadOnlyList<ProcessKiln> Kilns,
    string? KilnNote,
    [property: AtmosphereWords(AtmosphereUse.Firing)] IReadOnlyList<Atmosphere> Atmospheres,
    string AtmosphereNote,
    [property: RangeOf("cones")] string? ConeMin,
    string? ConeMax,
    Porosity Porosity,
    WareAnswer Watertight,
    string? WatertightNote,
    ProcessFoodContact FoodContact,
    string? FoodContactNote,
    WareAnswer Microwave,
    WareAnswer Dishwasher,
    string? CareNote,
    [property: RangeOf("firings")] int? FiringsMin,
    int? FiringsMax,
    decimal? DurationMinutesMin,
    decimal? DurationMinutesMax,
    string? DurationNote,
    string Effect,
    string Use,
    string PeopleNearby,
    IReadOnlyList<string> Cautions,
    IReadOnlyList<string> SourcedFields,
    IReadOnlyList<string> Sources,
    Confidence Confidence,
    string? Note,
    Message? Student = null)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("processes", Id);
}
