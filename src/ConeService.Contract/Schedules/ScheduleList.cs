using ConeService.Contract.Answers;
using ConeService.Contract.Datasets;
using ConeService.Contract.Json;
using ConeService.Data;

namespace ConeService.Contract.Schedules;

/// <summary>The templates that were asked for.</summary>
/// <param name="DatasetVersion">Version of the data package.</param>
/// <param name="Items">The templates, by id.</param>
public sealed record ScheduleList(string DatasetVersion, IReadOnlyList<ScheduleSummary> Items);

/// <summary>One template in short.</summary>
/// <param name="Id">Its name; POST /v1/schedules/{id}/fit makes a programme of it.</param>
/// <param name="Name">What it is.</param>
/// <param name="FiringKind">The kind of firing; drying on its own counts as bisque.</param>
/// <param name="EndCone">The cone that it is written for; null when it ends by temperature or by eye.</param>
/// <param name="ConeMin">Coolest cone that it can be fitted to; null without an end cone.</param>
/// <param name="ConeMax">Hottest cone that it can be fitted to; null without an end cone.</param>
/// <param name="RangeConfidence">How far the range of cones can be trusted.</param>
/// <param name="Atmosphere">The atmosphere in which the ware matures.</param>
/// <param name="KilnHeats">Kilns that it is for, the most usual first.</param>
/// <param name="Takes">States of the ware that it is made for.</param>
/// <param name="ThickestMillimetres">Thickest wall that it was made for, mm; null where it does not say.</param>
/// <param name="DurationMinutesMin">Quoted time to the end of the programme, minutes.</param>
/// <param name="DurationMinutesMax">The most.</param>
/// <param name="DurationNote">What the time leaves out or include.</param>
/// <param name="SegmentCount">Number of segments.</param>
/// <param name="Confidence">How far the template as a whole can be trusted; each segment has its own.</param>
/// <param name="Note">What a reader must know.</param>
/// <param name="Sources">Ids of the sources.</param>
public sealed record ScheduleSummary(
    string Id,
    string Name,
    FiringKind FiringKind,
    string? EndCone,
    [property: RangeOf("cones")] string? ConeMin,
    string? ConeMax,
    Confidence? RangeConfidence,
    [property: AtmosphereWords(AtmosphereUse.Firing)] Atmosphere Atmosphere,
    IReadOnlyList<KilnHeat> KilnHeats,
    IReadOnlyList<PieceState> Takes,
    decimal? ThickestMillimetres,
    decimal? DurationMinutesMin,
    decimal? DurationMinutesMax,
    string? DurationNote,
    int SegmentCount,
    Confidence Confidence,
    string? Note,
    IReadOnlyList<string> Sources)
{
    /// <summary>Address of its row of the data package, with the places in its sources.</summary>
    public Address Row => TableAddress.Of("schedule-templates", Id);
}
