using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing.Loads.Reading;
using ConeService.Firing.Loads.Rules;
using ConeService.Firing.Materials;
using SentKiln = ConeService.Contract.Kilns.Kiln;

namespace ConeService.Firing.Loads;

/// <summary>
/// Judges single pieces in many firings by the rules of the load check, without its sentences and suggestions: for whoever asks many
/// thousand times. Not for several threads.
/// </summary>
internal sealed class QuietCheck(LoadTables tables)
{
    private readonly PieceJudge judge = new(tables);
    private readonly Judgement ofLoad = new(tables);

    /// <summary>How many times a piece was judged in a firing.</summary>
    public long Judged { get; private set; }

    /// <summary>Reads kiln and firing.</summary>
    /// <exception cref="RefusedException">Either can't be read.</exception>
    public QuietFiring Read(SentKiln kiln, FiringRequest firing)
    {
        var (read, planned) = LoadReader.Read(tables, kiln, firing);
        return new(read, planned);
    }

    /// <summary>Reads a piece. What it is before a firing depends on the kind of that alone.</summary>
    /// <exception cref="RefusedException">It can't be read.</exception>
    public Piece Read(PieceRequest piece, QuietFiring firing) => LoadReader.Read(tables, piece, firing.Planned);

    /// <summary>What the load check says of the piece itself.</summary>
    public Verdict Of(Piece piece, QuietFiring firing)
    {
        Judged++;
        return (Verdict)(int)judge.Worst(piece, firing.Kiln, firing.Planned);
    }

    /// <summary>What it says of a load of this piece alone.</summary>
    public Verdict OfLoad(Piece piece, QuietFiring firing)
    {
        var own = Of(piece, firing);
        if (own == Verdict.Refuse) return own;
        ofLoad.Clear();
        KilnRule.Judge(tables, firing.Kiln, firing.Planned, ofLoad);
        if (piece.Size is not null && firing.Kiln.Interior is not null)
            LoadRoom.Judge(tables, new(firing.Kiln, firing.Planned, [piece], []), PieceClass.Group([piece]), ofLoad);
        return (Verdict)Math.Max((int)own, (int)ofLoad.Worst);
    }

    /// <summary>What a piece gives off in a firing that others suffer from, and what it suffers from itself.</summary>
    public PieceFumes Fumes(Piece piece, QuietFiring firing) => new(
        Neighbours.GivenOff(piece, firing.Planned).Common(Judging).Bits, Neighbours.SpoiledBy(piece, firing.Planned).Common(Judging).Bits);

    private EnumSet<Fume> Judging { get; } = new EnumSet<Fume>([Fume.Chrome, Fume.Copper])
        .With(tables.FindRule(LoadRuleIds.FoodWareAndFume) is null ? default : Neighbours.Poisonous);
}

/// <summary>A kiln and a firing as read.</summary>
internal sealed record QuietFiring(Kiln Kiln, PlannedFiring Planned);

/// <summary>What a piece gives off, and what spoils it, as bits.</summary>
internal readonly record struct PieceFumes(int GivesOff, int SpoiledBy)
{
    /// <summary>Whether neither spoils the other.</summary>
    public bool Bear(PieceFumes other) => (GivesOff & other.SpoiledBy) == 0 && (other.GivesOff & SpoiledBy) == 0;
}
