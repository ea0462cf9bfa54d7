namespace ConeService.Planning.Plans;

/// <summary>A plan in figures.</summary>
/// <param name="Late">Pieces unloaded after their date, or not at all though it lies within what is planned.</param>
/// <param name="LateWeight">Σ of late pieces × priority × (1,000 + days late): what is kept smallest first.</param>
/// <param name="Undone">Pieces that do not get all their firings.</param>
/// <param name="UndoneFirings">Firings that pieces do not get: what is kept smallest next.</param>
/// <param name="Cost">Cost, in the currency of the tariff, in kWh, or 1 a firing.</param>
/// <param name="KilowattHours">Energy of all firings, kWh; null where that of one is not known.</param>
/// <param name="Changes">Changes against the former plan: firings moved, made or given up count ten, pieces moved one.</param>
/// <param name="WaitingDays">Piece-days between ready and done, or the end of the horizon.</param>
/// <param name="LateBound">No plan has a smaller <paramref name="LateWeight"/>.</param>
/// <param name="UndoneBound">No plan leaves fewer firings undone.</param>
/// <param name="CostBound">No plan as good in both costs less; null where that was not computed.</param>
/// <param name="Gap">(cost − bound) ÷ cost; null without a bound, or where late or undone may still be bettered.</param>
/// <param name="ProvenOptimal">True when nothing is better in late, undone and cost.</param>
/// <param name="Seconds">Time that it took, s; 0 where only steps were counted.</param>
/// <param name="Seed">Seed of the search.</param>
/// <param name="Steps">Calendars tried.</param>
public sealed record PlanSummary(
    int Late,
    long LateWeight,
    int Undone,
    int UndoneFirings,
    double Cost,
    double? KilowattHours,
    int Changes,
    double WaitingDays,
    long LateBound,
    int UndoneBound,
    double? CostBound,
    double? Gap,
    bool ProvenOptimal,
    double Seconds,
    int Seed,
    long Steps);

/// <summary>What would change a plan.</summary>
/// <param name="Change">What is changed.</param>
/// <param name="Subject">Id of the kiln or of the piece.</param>
/// <param name="Late">Pieces late then, less those of the plan.</param>
/// <param name="Undone">Pieces undone then, less those of the plan.</param>
/// <param name="Cost">Cost then, less that of the plan.</param>
public sealed record WhatIf(WhatIfChange Change, string Subject, int Late, int Undone, double Cost);

/// <summary>A change to a request.</summary>
public enum WhatIfChange
{
    /// <summary>The kiln can be started on one day more.</summary>
    OneMoreKilnDay,

    /// <summary>The kiln has one layer of shelves more.</summary>
    OneMoreLayerOfShelves,

    /// <summary>The piece is due a week later.</summary>
    DueAWeekLater,
}
