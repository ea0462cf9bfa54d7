namespace ConeService.Contract.Plans;

/// <summary>A plan in figures.</summary>
/// <param name="Late">Pieces unloaded after their date, or not at all though it lies within what is planned.</param>
/// <param name="LateWeight">Σ of late pieces × priority × (1,000 + days late): what is kept smallest first.</param>
/// <param name="Undone">Pieces that do not get all their firings.</param>
/// <param name="UndoneFirings">Firings that pieces do not get though a firing accepts them: what is kept smallest next.</param>
/// <param name="Cost">Cost, in the currency of the tariff, in kWh, or 1 a firing.</param>
/// <param name="Currency">Currency of the cost; null where it is no money.</param>
/// <param name="KilowattHours">Energy of all firings, kWh; null where that of one is not known.</param>
/// <param name="Changes">Changes against the former plan: firings moved, made or given up count ten, pieces moved one.</param>
/// <param name="WaitingMinutes">Piece-minutes, in whole hours, between ready and done, or the end of the horizon.</param>
/// <param name="LateBound">No plan has a smaller <paramref name="LateWeight"/>.</param>
/// <param name="UndoneBound">No plan leaves fewer firings undone.</param>
/// <param name="LowerBound">No plan as good in both costs less; null where that was not computed.</param>
/// <param name="Gap">(cost − bound) ÷ cost; null without a bound, or where late or undone may still be bettered.</param>
/// <param name="ProvenOptimal">True when no plan is better in late, undone and cost.</param>
/// <param name="Steps">Calendars tried.</param>
/// <param name="Seed">Seed of the search.</param>
public sealed record PlanSummary(
    int Late,
    long LateWeight,
    int Undone,
    int UndoneFirings,
    double Cost,
    string? Currency,
    double? KilowattHours,
    long Changes,
    double WaitingMinutes,
    long LateBound,
    int UndoneBound,
    double? LowerBound,
    double? Gap,
    bool ProvenOptimal,
    long Steps,
    int Seed);
