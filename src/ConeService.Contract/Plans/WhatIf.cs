using ConeService.Contract.Texts;

namespace ConeService.Contract.Plans;

/// <summary>
/// What one change of the question would bring: the changed question planned anew from this plan on, for a short time. What was found is a
/// plan that can be made, not the best one.
/// </summary>
/// <param name="Change">What would be changed.</param>
/// <param name="KilnId">Id of the kiln that there would be more of; null for dates.</param>
/// <param name="LoadingFrom">When the firing more is loaded; null for other changes.</param>
/// <param name="Due">The due date that would be moved; null for other changes.</param>
/// <param name="MovedTo">Where to; null for other changes.</param>
/// <param name="Pieces">Ids of the pieces whose date that is; empty for other changes.</param>
/// <param name="IsBetter">True when the plan found is better than this one in lateness, in firings undone, or in cost.</param>
/// <param name="Late">Pieces late in the plan found.</param>
/// <param name="UndoneFirings">Firings that pieces do not get in it.</param>
/// <param name="Cost">What it costs, with the firing more.</param>
/// <param name="Message">The same in a sentence.</param>
public sealed record WhatIf(
    WhatIfChange Change,
    string? KilnId,
    DateTimeOffset? LoadingFrom,
    DateTimeOffset? Due,
    DateTimeOffset? MovedTo,
    IReadOnlyList<string> Pieces,
    bool IsBetter,
    int Late,
    int UndoneFirings,
    double Cost,
    Message Message);

/// <summary>A change of the question.</summary>
public enum WhatIfChange
{
    /// <summary>One firing more, in a kiln like one that there is.</summary>
    KilnDay,

    /// <summary>One layer of shelves more in a kiln.</summary>
    Shelves,

    /// <summary>A due date a week later.</summary>
    DueDate,
}
