using ConeService.Planning.Model;
using Google.OrTools.Sat;

namespace ConeService.Planning.Solver;

/// <summary>The room of one kiln at one start: layers by height, the volume of the load check, and that it must be full enough.</summary>
internal sealed class RoomVariables
{
    private readonly Problem problem;
    private readonly KilnModel kiln;
    private readonly List<(int Stage, IntVar Count)> contents = [];
    private readonly IReadOnlyList<StageCount> held;
    private readonly List<int> heights;
    private readonly List<IntVar> layers = [];
    private BoolVar? dated;
    private BoolVar? high;
    private BoolVar? wide;

    /// <summary>Room for what is held already and for what is not decided yet.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="kiln">The kiln.</param>
    /// <param name="contents">What may be in it, by type.</param>
    /// <param name="held">What is in it whatever happens.</param>
    public RoomVariables(Problem problem, KilnModel kiln, IEnumerable<(int Stage, IntVar Count)> contents, IReadOnlyList<StageCount> held)
    {
        (this.problem, this.kiln, this.held) = (problem, kiln, held);
        this.contents.AddRange(contents);
        heights = [.. this.contents.Select(c => c.Stage).Concat(held.Select(h => h.Stage)).Select(s => kiln.Slots[s].Height).Distinct()
            .OrderDescending()];
    }

    /// <summary>Adds what must hold.</summary>
    /// <param name="model">The model.</param>
    /// <param name="fired">1 where the kiln is fired at this start; null where it is whatever happens.</param>
    public void Add(CpModel model, Sum? fired)
    {
        var (room, used, volume) = (kiln.Room, new Sum(), new Sum());
        foreach (var (stage, count) in contents) volume.Add(count, kiln.Slots[stage].Volume);
        foreach (var (stage, count) in held) volume.Add((long)kiln.Slots[stage].Volume * count);
        model.Add(volume.Expression <= 10_000_000);
        for (var j = 0; j < heights.Count; j++)
        {
            var of = heights[j] + room.Shelf;
            var most = Math.Min(room.Layers, room.Height / of);
            var n = model.NewIntVar(0, Math.Max(0, most), "");
            var shares = new Sum();
            foreach (var (stage, count) in contents.Where(c => kiln.Slots[c.Stage].Height >= heights[j])) shares.Add(count,
                kiln.Slots[stage].Share);
            foreach (var (stage, count) in held.Where(c => kiln.Slots[c.Stage].Height >= heights[j])) shares.Add(
                (long)kiln.Slots[stage].Share * count);
            shares.Add(n, -Problem.Whole);
            model.Add(shares.Expression <= 0);
            if (j > 0) model.Add(n >= layers[^1]);
            used.Add(n, of);
            if (j > 0) used.Add(layers[^1], -of);
            if (fired is not null)
            {
                var tight = new Sum();
                tight.Add(n);
                tight.Add(fired, -most);
                model.Add(tight.Expression <= 0);
            }

            layers.Add(n);
        }

        if (fired is not null) used.Add(fired, -room.Height);
        else used.Add(-room.Height);
        model.Add(used.Expression <= 0);
        if (fired is not null) AddFill(model, fired);
    }

    // Something must be in it, and enough, unless something in it has a date.
    private void AddFill(CpModel model, Sum fired)
    {
        var (some, due, byHeight, byLayers) = (new Sum(), new Sum(), new Sum(), new Sum());
        foreach (var (stage, count) in contents)
        {
            some.Add(count);
            if (problem.ItemOf(stage).DueBinds) due.Add(count);
            byHeight.Add(count, (long)kiln.Slots[stage].Share * (kiln.Slots[stage].Height + kiln.Room.Shelf));
            byLayers.Add(count, kiln.Slots[stage].Share);
        }

        some.Add(fired, -1);
        model.Add(some.Expression >= 0);
        if (problem.MinimumFill == 0) return;
        (dated, high, wide) = (model.NewBoolVar(""), model.NewBoolVar(""), model.NewBoolVar(""));
        due.Add(dated, -1);
        byHeight.Add(high, -(long)problem.MinimumFill * kiln.Room.Height);
        byLayers.Add(wide, -(long)problem.MinimumFill * kiln.Room.Layers);
        var any = new Sum();
        any.Add(dated);
        any.Add(high);
        any.Add(wide);
        any.Add(fired, -1);
        foreach (var sum in new[] { due, byHeight, byLayers, any }) model.Add(sum.Expression >= 0);
    }

    /// <summary>Hints at what follows from contents.</summary>
    /// <param name="model">The model.</param>
    /// <param name="now">What is in it.</param>
    public void Hint(CpModel model, IReadOnlyList<StageCount> now)
    {
        var all = now.Count == 0 ? held : now;
        for (var j = 0; j < heights.Count; j++)
        {
            var shares = all.Where(c => kiln.Slots[c.Stage].Height >= heights[j]).Sum(c => (long)kiln.Slots[c.Stage].Share * c.Count);
            model.AddHint(layers[j], (shares + Problem.Whole - 1) / Problem.Whole);
        }

        if (dated is null) return;
        var has = all.Any(c => problem.ItemOf(c.Stage).DueBinds);
        var heightFull = all.Sum(c => (long)c.Count * kiln.Slots[c.Stage].Share * (kiln.Slots[c.Stage].Height + kiln.Room.Shelf))
            >= (long)problem.MinimumFill * kiln.Room.Height;
        var layersFull = all.Sum(c => (long)c.Count * kiln.Slots[c.Stage].Share) >= (long)problem.MinimumFill * kiln.Room.Layers;
        model.AddHint(dated, has ? 1 : 0);
        model.AddHint(high!, heightFull ? 1 : 0);
        model.AddHint(wide!, layersFull ? 1 : 0);
    }
}
