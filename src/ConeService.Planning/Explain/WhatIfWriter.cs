using System.Globalization;
using ConeService.Contract.Plans;
using ConeService.Contract.Texts;
using ConeService.Planning.Digest;
using ConeService.Planning.Model;
using ConeService.Planning.WhatIf;

namespace ConeService.Planning.Explain;

/// <summary>Tells what a changed question would bring.</summary>
internal sealed class WhatIfWriter(Digested digested)
{
    /// <summary>Tells one.</summary>
    public Contract.Plans.WhatIf Told(Alternative alternative)
    {
        var (problem, moments) = (digested.Problem, digested.Moments);
        var kiln = alternative.Kiln is { } k ? digested.Kilns[k].Id : null;
        DateTimeOffset? load = alternative is { Kiln: { } of, Start: { } start } ? moments.At(problem.Kilns[of].LoadAt(start)) : null;
        DateTimeOffset? due = alternative.Due is { } was ? moments.At(was) : null;
        DateTimeOffset? moved = alternative.Due is { } date ? moments.At(date + Changes.DueMoved) : null;
        var late = Scorer.LatePieces(alternative.Problem, alternative.Plan.Firings);
        var score = alternative.Plan.Score;
        var cost = score.Cost / 100.0;
        return new(
            alternative.Change,
            kiln,
            load,
            due,
            moved,
            alternative.Due is null ? [] : [.. digested.Pieces.Where(p => p.Item is { } item && problem.Items[item].Due == alternative.Due)
                .Select(p => p.Id)],
            alternative.IsBetter,
            late,
            (int)score.Undone,
            cost,
            Message.Of(Key(alternative), [.. About(), ("late", late), ("undone", score.Undone), ("cost", cost)]));

        IEnumerable<(string, object?)> About()
        {
            if (kiln is not null) yield return ("kiln", kiln);
            if (load is { } day) yield return ("day", Text(day));
            if (due is { } from) yield return ("due", Text(from));
            if (moved is { } to) yield return ("moved", Text(to));
        }
    }

    private static string Key(Alternative alternative) => (alternative.Change, alternative.IsBetter) switch
    {
        (WhatIfChange.KilnDay, true) => "plans.what-if-kiln-day",
        (WhatIfChange.KilnDay, false) => "plans.what-if-kiln-day-nothing",
        (WhatIfChange.Shelves, true) => "plans.what-if-shelves",
        (WhatIfChange.Shelves, false) => "plans.what-if-shelves-nothing",
        (_, true) => "plans.what-if-due-dates",
        (_, false) => "plans.what-if-due-dates-nothing",
    };

    private static string Text(DateTimeOffset moment) => moment.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture);
}
