namespace ConeService.Data;

/// <summary>Hours of a firing that need a person.</summary>
/// <param name="Id">Name of the rule.</param>
/// <param name="Moment">What they are counted from.</param>
/// <param name="Kinds">Kinds of firing that it belongs to; empty: all.</param>
/// <param name="Heats">Kilns that it belongs to; empty: all.</param>
/// <param name="Schedules">Templates that it belongs to; empty: all.</param>
/// <param name="BeforeMinutes">So long before the moment, minutes.</param>
/// <param name="AfterMinutes">So long after it, minutes.</param>
/// <param name="Statement">Why.</param>
/// <param name="Sources">Ids of the sources.</param>
/// <param name="Confidence">How far the row can be trusted.</param>
/// <param name="Note">What a reader must know about the row.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record AttendanceRow(string Id, AttendanceMoment Moment, IReadOnlyList<FiringKind> Kinds, IReadOnlyList<KilnHeat> Heats,
    IReadOnlyList<string> Schedules, decimal BeforeMinutes, decimal AfterMinutes, string Statement, IReadOnlyList<string> Sources,
    Confidence Confidence, string? Note,
    RowEvidence? Evidence = null);
