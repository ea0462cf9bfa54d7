namespace ConeService.Planning.Model;

/// <summary>
/// Fires what could be fired quicker as quick as it may: thin ware that was left in a firing for thick needs none of its hours. A search
/// that weighs ends and cost does so by itself, except where somebody comes to unload at the same time all the same.
/// </summary>
internal static class Quickest
{
    /// <summary>The plan so; nothing in it is later or dearer.</summary>
    public static Draft Of(Problem problem, Draft plan) => Draft.Of(problem, plan.Firings.Select(f => f.IsPinned ? f : Of(problem, f)));

    private static DraftFiring Of(Problem problem, DraftFiring firing)
    {
        var kiln = problem.Kilns[firing.Kiln];
        var now = kiln.Types[firing.Type];
        var end = kiln.EndOf(firing.Start, firing.Type);
        // Programmes of an entry stand the quickest first.
        var type = Enumerable.Range(0, kiln.Types.Count)
            .Where(t => kiln.Types[t].Menu == now.Menu && kiln.Types[t].Programme < now.Programme && kiln.Types[t].Cost <= now.Cost
                && kiln.EndOf(firing.Start, t) is >= 0 and var at && at <= end
                && firing.Contents.All(c => kiln.Types[t].Takes[c.Stage]))
            .OrderBy(t => kiln.Types[t].Programme).Cast<int?>().FirstOrDefault();
        return type is { } quicker ? firing with { Type = quicker } : firing;
    }
}
