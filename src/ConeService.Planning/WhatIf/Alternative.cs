using ConeService.Contract.Plans;
using ConeService.Planning.Model;

namespace ConeService.Planning.WhatIf;

/// <summary>A changed question, and the plan that was found for it from the plan of the question asked.</summary>
/// <param name="Change">What was changed.</param>
/// <param name="Kiln">The kiln that there is more of; null for dates.</param>
/// <param name="Start">Place among its starts of the firing more; null for other changes.</param>
/// <param name="Due">The date that was moved, min; null for other changes.</param>
/// <param name="Problem">The changed question.</param>
/// <param name="Plan">The plan found; no worse by the changed question than the plan it was found from.</param>
/// <param name="IsBetter">True where it is better in what is told: lateness, firings undone, cost.</param>
internal sealed record Alternative(WhatIfChange Change, int? Kiln, int? Start, int? Due, Problem Problem, Draft Plan, bool IsBetter);
