using ConeService.Contract.Plans;
using ConeService.Firing.Room;
using ConeService.Planning.Model;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Digest;

/// <summary>Makes pins and the former plan of given firings: says which firing of each piece is meant.</summary>
internal sealed class PinMaker(
    IReadOnlyList<ReadKiln> kilns, IReadOnlyList<IReadOnlyList<DigestedFiring>> fired, Programmes programmes,
    List<KilnModel> models, IReadOnlyList<Item> items, IReadOnlyList<Stage> stages,
    IReadOnlyList<(SortStage Sort, ReadPiece Piece)> wares, IReadOnlyList<DigestedPiece> pieces, List<PlanFinding> warnings)
{
    private readonly int[] taken = new int[stages.Count];

    /// <summary>Pins; what is amiss with them is a warning.</summary>
    public List<Pin> Pins(IReadOnlyList<ReadGiven> given) => [.. given.OrderBy(g => g.Start).Select(pin =>
    {
        var contents = Contents(pin);
        var model = models[pin.Kiln];
        var type = TypeFor(pin, contents);
        var start = model.Starts.ToList().IndexOf(pin.Start);
        var packing = new Packing(model.Room);
        foreach (var (stage, count) in contents) packing.Add(model.Slots[stage], count);
        if (contents.Exists(c => !model.Types[type].Takes[c.Stage])) warnings.Add(new(PlanWarningCodes.PinNotAccepted, pin.Pointer));
        if (!packing.IsWithin) warnings.Add(new(PlanWarningCodes.PinOverfull, pin.Pointer));
        if (contents.Exists(c => stages[c.Stage].Number == 0 && items[stages[c.Stage].Item].Ready > model.LoadAt(start)))
            warnings.Add(new(PlanWarningCodes.PinNotReady, pin.Pointer));
        return new Pin(pin.Kiln, start, type, pin.Closed, contents);
    })];

    /// <summary>The former plan; a firing whose start is no more is a warning.</summary>
    public List<Announced> Announced(IReadOnlyList<ReadGiven> given)
    {
        var told = new List<Announced>();
        foreach (var firing in given.OrderBy(g => g.Start))
        {
            var start = models[firing.Kiln].Starts.ToList().IndexOf(firing.Start);
            if (start < 0) warnings.Add(new(PlanWarningCodes.AnnouncedNotPossible, firing.Pointer));
            else told.Add(new(firing.Kiln, start, firing.Menu, Contents(firing)));
        }

        return told;
    }

    // The first firing of a piece that this can be and that is not taken yet.
    private List<StageCount> Contents(ReadGiven given)
    {
        var contents = new List<StageCount>();
        foreach (var (piece, count) in given.Pieces)
        {
            if (pieces[piece].Item is not { } index) continue;
            var item = items[index];
            var chain = Enumerable.Range(item.FirstStage, item.StageCount).Where(s => taken[s] + count <= item.Count).ToList();
            if (chain.Count == 0) continue;
            var bisque = kilns[given.Kiln].Menu[given.Menu].Sent.FiringKind.Text == Ware.Bisque;
            var stage = chain
                .OrderBy(s => wares[s].Sort.Accepted[given.Kiln][given.Menu] ? 0 : wares[s].Sort.IsBisque == bisque ? 1 : 2).ThenBy(s => s)
                .First();
            taken[stage] += count;
            var at = contents.FindIndex(c => c.Stage == stage);
            if (at < 0) contents.Add(new(stage, count));
            else contents[at] = new(stage, contents[at].Count + count);
        }

        return contents;
    }

    private int TypeFor(ReadGiven pin, List<StageCount> contents)
    {
        var types = models[pin.Kiln].Types;
        // What stands is fired as slowly as what it holds asks for; nothing thicker is filled up to it.
        var programme = fired[pin.Kiln].ToList().IndexOf(programmes.For(pin, fired[pin.Kiln]));
        var of = Enumerable.Range(0, types.Count).Where(t => types[t].Menu == pin.Menu && types[t].Programme == programme).ToList();
        if (of.Count > 0) return of.MinBy(t => contents.Count(c => !types[t].Takes[c.Stage]));
        ((List<FiringType>)types).Add(new(pin.Menu, new bool[stages.Count], fired[pin.Kiln][programme].Cost, programme));
        return types.Count - 1;
    }
}
