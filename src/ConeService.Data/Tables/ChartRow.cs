namespace ConeService.Data;

/// <summary>A published chart of cone end points.</summary>
/// <param name="Id">Name of the chart in this package.</param>
/// <param name="Title">What the chart is.</param>
/// <param name="ConeForm">self-supporting, large, small, pce, seger or not-stated.</param>
/// <param name="Composition">regular, iron-free, pce or not-stated.</param>
/// <param name="ReductionSensitive">Whether the chart has iron-bearing cones among 010 to 3, which reduction moves.</param>
/// <param name="BendsLater">Whether the cones go down later than large or self-supporting ones of the same number.</param>
/// <param name="Source">Id of the source.</param>
/// <param name="Confidence">How far the description can be trusted; each cell has its own.</param>
/// <param name="Note">What a reader must know about the chart.</param>
/// <param name="Evidence">Where the row is printed, and which of its values can be trusted further than the row.</param>
public sealed record ChartRow(
    string Id,
    string Title,
    string ConeForm,
    string Composition,
    YesNo ReductionSensitive,
    YesNo BendsLater,
    string Source,
    Confidence Confidence,
    string? Note,
    RowEvidence? Evidence = null);
