using ConeService.Planning.Model;

namespace ConeService.Planning.WhatIf;

/// <summary>Changes of a question that a studio could make.</summary>
internal static class Changes
{
    /// <summary>By how much a due date is moved, min.</summary>
    public const int DueMoved = 7 * Problem.Day;

    /// <summary>A kiln more, like one that there is, that can be started at some of its starts only; it is the last.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="kiln">The kiln it is like.</param>
    /// <param name="starts">Places among its starts.</param>
    public static Problem KilnMore(Problem problem, int kiln, IReadOnlyList<int> starts)
    {
        var like = problem.Kilns[kiln];
        return problem.With(kilns:
        [
            .. problem.Kilns,
            new()
            {
                Index = problem.Kilns.Count,
                Room = like.Room,
                Starts = [.. starts.Select(s => like.Starts[s])],
                Loading = like.Loading,
                Types = like.Types,
                Ends = [.. like.Ends.Select(e => starts.Select(s => e[s]).ToArray())],
                Slots = like.Slots,
            },
        ]);
    }

    /// <summary>A layer of shelves more in a kiln.</summary>
    public static Problem ShelvesMore(Problem problem, int kiln)
    {
        var now = problem.Kilns[kiln];
        return problem.With(kilns:
        [
            .. problem.Kilns.Select(k => k.Index != kiln ? k : new()
            {
                Index = k.Index,
                Room = k.Room with { Layers = k.Room.Layers + 1 },
                Starts = now.Starts,
                Loading = now.Loading,
                Types = now.Types,
                Ends = now.Ends,
                Slots = now.Slots,
            }),
        ]);
    }

    /// <summary>All pieces of a due date have a week more.</summary>
    public static Problem DueLater(Problem problem, int due)
    {
        var last = problem.Kilns.SelectMany(k => k.Ends).SelectMany(e => e).DefaultIfEmpty(problem.Horizon).Max();
        return problem.With(items: [.. problem.Items.Select(i => i.Due != due ? i : Later(problem, i, Math.Max(last, problem.Horizon)))]);
    }

    private static Item Later(Problem problem, Item item, int last)
    {
        var due = item.Due!.Value + DueMoved;
        // It binds as before: where it lies within what can be fired yet.
        var shortest = problem.Kilns.SelectMany(k => k.Types.Where(t => t.Takes[item.LastStage])
            .SelectMany(t => k.Ends[t.Programme].Select((end, i) => end < 0 ? int.MaxValue : end - k.Starts[i]))).DefaultIfEmpty(0).Min();
        var moved = item with { Due = due, DueBinds = item.DueBinds && due < (long)problem.Horizon + shortest };
        return moved with { UndoneLateness = moved.DueBinds ? Problem.Lateness(moved, last + Problem.Day) : 0 };
    }
}
