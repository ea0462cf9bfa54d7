namespace ConeService.Data;

/// <summary>A firing schedule as it is handed on, before it is fitted to a kiln and a load.</summary>
/// <param name="Id">Name of the template in this package.</param>
/// <param name="Title">What the template is.</param>
/// <param name="Kind">The kind of firing; drying on its own counts as bisque.</param>
/// <param name="EndCone">The hottest cone that it is written for; null when it ends by temperature or by eye.</param>
/// <param name="ConeMin">Coolest cone that it can be fitted to; null without an end cone.</param>
/// <param name="ConeMax">Hottest cone that it can be fitted to; null without an end cone.</param>
/// <param name="RangeConfidence">How far the range of cones can be trusted.</param>
/// <param name="Atmosphere">The atmosphere in which the ware matures.</param>
/// <param name="KilnHeats">Kilns that it is for, the most usual first.</param>
/// <param name="Takes">States of the ware that it is made for.</param>
/// <param name="ThicknessMaxMillimetres">Thickest wall that it was made for, mm; null where the template does not say.</param>
/// <param name="HoursMin">Quoted hours to the end of the programme, the least.</param>
/// <param name="HoursMax">The most.</param>
/// <param name="HoursNote">What the hours leave out or include.</param>
/// <param name="Sources">Ids of the sources, most important first.</param>
/// <param name="Confidence">How far the template as a whole can be trusted; each segment has its own.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ScheduleTemplateRow(
    string Id, string Title, FiringKind Kind, string? EndCone, string? ConeMin, string? ConeMax, Confidence? RangeConfidence,
    Atmosphere Atmosphere,
    IReadOnlyList<KilnHeat> KilnHeats, IReadOnlyList<PieceState> Takes, decimal? ThicknessMaxMillimetres, decimal? HoursMin,
    decimal? HoursMax, string? HoursNote,
    IReadOnlyList<string> Sources, Confidence Confidence, string? Note,
    RowEvidence? Evidence = null)
{
    /// <summary>True for what a studio takes where nobody names a schedule.</summary>
    public bool IsUsual { get; init; }
}
