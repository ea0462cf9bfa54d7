using ConeService.Contract.Loads;
using ConeService.Contract.Problems;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Digest;

/// <summary>
/// Finds what each firing of a menu can be fired as: as for thin, dry ware, and slower where thick or damp ware may be in it. Ware that
/// asks for less may ride along in each.
/// </summary>
internal sealed class Programmes(
    ProgrammeMaker maker, IReadOnlyList<ReadPiece> pieces, Dictionary<string, Sort> sorts, List<PlanFinding> findings,
    List<PlanAssumption> assumed)
{
    // So little energy is no difference, kWh.
    private const double SameEnergy = 0.05;
    private readonly List<ReadPiece> distinct = [.. pieces.DistinctBy(p => p.SortKey)];
    private readonly Walls walls = new(pieces.Select(p => SlowWare.Of(p.Ware.Piece).ThickestMillimetres).OfType<double>());

    /// <summary>The dampest and the thickest of the class of a ware.</summary>
    public SlowWare Class(PieceRequest piece) => Class(SlowWare.Of(piece));

    /// <summary>The same of ware as it is read.</summary>
    public SlowWare Class(SlowWare ware) => walls.Class(ware);

    /// <summary>The quickest that is slow enough for what a firing that stands holds.</summary>
    /// <param name="pin">The firing.</param>
    /// <param name="fired">What its kiln can fire.</param>
    public DigestedFiring For(ReadGiven pin, IReadOnlyList<DigestedFiring> fired)
    {
        // What is empty and shall be filled up is fired for whatever may go in.
        if (pin.Pieces.Count == 0 && !pin.Closed) return fired.Last(p => p.Entry == pin.Menu);
        var held = Held(pin);
        return fired.First(p => p.Entry == pin.Menu && p.Ware.Covers(held));
    }

    /// <summary>What a kiln can fire, entry by entry of its menu, each the quickest first.</summary>
    /// <param name="kiln">The kiln.</param>
    /// <param name="index">Its place.</param>
    /// <param name="pins">Firings of it that stand.</param>
    public IReadOnlyList<DigestedFiring> Of(ReadKiln kiln, int index, IReadOnlyList<ReadGiven> pins)
    {
        var all = new List<DigestedFiring>();
        for (var entry = 0; entry < kiln.Menu.Count; entry++)
        {
            var held = pins.Where(p => p.Menu == entry && (p.Pieces.Count > 0 || p.Closed)).Select(Held);
            var programmes = Merged(kiln, entry, Together([.. Taken(kiln, index, entry).Concat(held).Distinct()]));
            Assume(kiln.Menu[entry], $"/kilns/{index}/firings/{entry}", programmes);
            all.AddRange(programmes);
        }

        return all;
    }

    private SlowWare Held(ReadGiven pin) =>
        pin.Pieces.Aggregate(SlowWare.Usual, (worst, held) => worst.With(Class(pieces[held.Piece].Ware.Piece)));

    // Of what the load check accepts there and has the room.
    private IEnumerable<SlowWare> Taken(ReadKiln kiln, int index, int entry) => distinct.SelectMany(p => sorts[p.SortKey].Stages
        .Where(s => s.Accepted[index][entry] && kiln.Room.Slot(p.Size, s.IsBisque, p.Stack).Share > 0)
        .Select(s => Class(s.Ware.Piece)));

    // With all that goes together: the dampest of one with the thickest of another.
    private static List<SlowWare> Together(List<SlowWare> wares)
    {
        if (wares.Count == 0) return [SlowWare.Usual];
        for (var i = 1; i < wares.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                if (wares[i].With(wares[j]) is var both && !wares.Contains(both)) wares.Add(both);
            }
        }

        return wares;
    }

    // Ware that is fired alike is one, named by its dampest and thickest.
    private List<DigestedFiring> Merged(ReadKiln kiln, int entry, List<SlowWare> wares)
    {
        var made = new List<DigestedFiring>();
        foreach (var ware in wares)
        {
            var (firing, cause) = maker.Make(kiln.Sent.Kiln!, kiln.Menu[entry].Sent, entry, ware);
            if (firing is null)
            {
                findings.Add(new(FindingCodes.HoursUnknown, kiln.Menu[entry].Pointer, kiln.Menu[entry].Sent.Schedule, cause));
                return [];
            }

            var alike = made.FindIndex(m => IsAlike(m, firing) && (m.Ware.Covers(ware) || ware.Covers(m.Ware)));
            if (alike < 0) made.Add(firing);
            else if (ware.Covers(made[alike].Ware)) made[alike] = firing;
        }

        return [.. made.OrderBy(m => m.Hours.Minutes).ThenBy(m => m.Cost).ThenBy(m => m.Ware.Dryness)
            .ThenBy(m => m.Ware.ThickestMillimetres)];
    }

    private static bool IsAlike(DigestedFiring one, DigestedFiring other) => one.Hours.Minutes == other.Hours.Minutes
        && Math.Abs((one.Hours.KilowattHours ?? 0) - (other.Hours.KilowattHours ?? 0)) < SameEnergy;

    private void Assume(ReadEntry entry, string at, List<DigestedFiring> programmes)
    {
        var sent = entry.Sent;
        foreach (var programme in programmes.Where(_ => entry.IsFitted))
        {
            var (hours, ware) = (programme.Hours, programme.Ware);
            if (sent.Minutes is null) assumed.Add(new(at + "/minutes", Moments.Text(hours.Minutes), ware));
            if (sent.KilowattHours is null)
                assumed.Add(new(at + "/kilowattHours", Moments.Text(Math.Round(hours.KilowattHours ?? 0, 1)), ware));
            if (sent.Schedule is null && programme == programmes[0]) assumed.Add(new(at + "/schedule", hours.Schedule!));
        }
    }
}
