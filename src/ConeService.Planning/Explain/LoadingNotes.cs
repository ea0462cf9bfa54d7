using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Planning.Digest;
using ConeService.Planning.Model;

namespace ConeService.Planning.Explain;

/// <summary>What the load check still says of a load that it accepts, for whoever loads.</summary>
internal static class LoadingNotes
{
    /// <summary>Each note once, worst first, with the pieces it is said of.</summary>
    /// <param name="answer">The load check of the firing, one piece of it for each stage in it; null where it could not be judged.</param>
    /// <param name="firing">The firing.</param>
    /// <param name="layers">What stands in it.</param>
    /// <param name="digested">The request.</param>
    public static IReadOnlyList<LoadingNote> Of(
        LoadAnswer? answer, DraftFiring firing, IReadOnlyList<PlanLayer> layers, Digested digested)
    {
        if (answer is null) return [];
        var notes = new List<(Reason Reason, HashSet<string> Pieces)>();
        var items = digested.ItemsById;
        var told = layers.SelectMany(l => l.Pieces).ToLookup(p => (p.Stage, items[p.Id]), p => p.Id);
        var numbered = answer.ReasonTable.ToDictionary(r => r.Number, r => r.Reason);
        for (var i = 0; i < answer.Pieces.Count; i++)
        {
            var stage = digested.Problem.Stages[firing.Contents[i].Stage];
            var ids = told[(stage.Number + 1, stage.Item)].ToList();
            foreach (var number in answer.Pieces[i].ReasonNumbers) Add(numbered[number], ids);
        }

        foreach (var reason in answer.Load.Reasons) Add(reason, []);
        return [.. notes.OrderByDescending(n => n.Reason.Severity)
            .Select(n => new LoadingNote(n.Reason, [.. n.Pieces.OrderBy(id => digested.PlacesById[id])]))];

        // The same words of several coats or pieces are one note.
        void Add(Reason reason, List<string> ids)
        {
            var at = notes.FindIndex(n => n.Reason.Code == reason.Code && n.Reason.Texts.Student.Equals(reason.Texts.Student));
            if (at < 0) notes.Add((reason, [.. ids]));
            else notes[at].Pieces.UnionWith(ids);
        }
    }
}
