using System.Runtime.CompilerServices;

namespace ConeService.Firing.Kilns.Thermal;

/// <summary>
/// Load – chamber – wall – room as a chain of ten temperatures, advanced by the implicit Euler rule. Heat contents
/// are differences of enthalpy, iterated to agreement, so that what is given is found again in parts and losses.
/// </summary>
/// <remarks>A firing is thousands of steps and is mostly asked for of a process that just started or did other things: what is done in
/// each is compiled well from the first.</remarks>
internal sealed class HeatBalance
{
    private const int Layers = WallLayers.Count;
    private const double Agreed = 1e-4;
    private const int MostRounds = 60;

    private readonly KilnPhysics kiln;
    private readonly double start, room;
    private readonly double[] wall = new double[Layers], wallBefore = new double[Layers], inward = new double[Layers];
    private readonly double[] content = new double[Layers], contentBefore = new double[Layers], capacities = new double[Layers];
    private readonly double[] follow = new double[Layers], rest = new double[Layers];
    private double surface, outward;

    // By how much load and chamber moved in the last step, K, and how long it was, s: the next is begun from where they would get to.
    private double loadMoved, chamberMoved, lastSeconds;

    /// <summary>A kiln at one temperature throughout.</summary>
    public HeatBalance(KilnPhysics kiln, double startKelvin, double roomKelvin)
    {
        (this.kiln, start, room) = (kiln, startKelvin, roomKelvin);
        LeakConductance = kiln.LeakConductance;
        (Chamber, Load, Hottest, surface) = (startKelvin, startKelvin, startKelvin, startKelvin);
        Array.Fill(wall, startKelvin);
    }

    /// <summary>The same state, to go on from by itself.</summary>
    /// <param name="other">The state.</param>
    /// <param name="kiln">The kiln, which may lose heat otherwise than before.</param>
    public HeatBalance(HeatBalance other, KilnPhysics kiln)
    {
        (this.kiln, start, room) = (kiln, other.start, other.room);
        LeakConductance = kiln.LeakConductance;
        (Chamber, Load, Hottest, surface, outward) = (other.Chamber, other.Load, other.Hottest, other.surface, other.outward);
        (Given, LostBySurface, LostByLeak) = (other.Given, other.LostBySurface, other.LostByLeak);
        (loadMoved, chamberMoved, lastSeconds) = (other.loadMoved, other.chamberMoved, other.lastSeconds);
        other.wall.CopyTo(wall, 0);
        other.wallBefore.CopyTo(wallBefore, 0);
    }

    /// <summary>Temperature of the chamber, K.</summary>
    public double Chamber { get; private set; }

    /// <summary>Temperature of the load, K.</summary>
    public double Load { get; private set; }

    /// <summary>Heat that leaking air takes now, W/K: the kiln's own, until a vent is opened.</summary>
    public double LeakConductance { get; set; }

    /// <summary>Highest temperature of the load so far, K.</summary>
    public double Hottest { get; private set; }

    /// <summary>How many steps it was advanced by.</summary>
    public int Steps { get; private set; }

    /// <summary>Heat given so far, J.</summary>
    public double Given { get; private set; }

    /// <summary>Heat lost from the outer surface so far, J.</summary>
    public double LostBySurface { get; private set; }

    /// <summary>Heat lost with air so far, J.</summary>
    public double LostByLeak { get; private set; }

    /// <summary>Where the heat stands now.</summary>
    public HeatParts Parts() => Parts(Keep(new()));

    /// <summary>Where it stood.</summary>
    public HeatParts Parts(HeatState kept)
    {
        var walls = 0.0;
        for (var i = 0; i < Layers; i++) walls += kiln.Wall.Between(i, start, kept.Wall[i]);
        return new(
            kept.Given,
            kiln.Load.Ware(start, kept.Load),
            kiln.Load.Furniture(start, kept.Load),
            kiln.Load.Water(kept.Hottest) - kiln.Load.Water(start),
            walls,
            kiln.ChamberCapacity * (kept.Chamber - start),
            kept.LostBySurface,
            kept.LostByLeak);
    }

    /// <summary>Keeps what <see cref="Parts(HeatState)"/> needs of now.</summary>
    public HeatState Keep(HeatState into)
    {
        (into.Chamber, into.Load, into.Hottest) = (Chamber, Load, Hottest);
        (into.Given, into.LostBySurface, into.LostByLeak) = (Given, LostBySurface, LostByLeak);
        wall.CopyTo(into.Wall, 0);
        return into;
    }

    /// <summary>Advances, with just the power that brings the chamber to <paramref name="wanted"/>, within what there is.</summary>
    /// <param name="seconds">Length of the step, s.</param>
    /// <param name="wanted">Set-point at its end, K.</param>
    /// <param name="most">Most power, W; 0 with the power off.</param>
    /// <param name="least">Least power, W; below 0 where a chamber that is known is followed, whatever the model thinks of it.</param>
    /// <returns>The power, W.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public double Step(double seconds, double wanted, double most, double least = 0)
    {
        var exchange = kiln.Exchange(Chamber, Load);
        Conductances();
        kiln.Wall.Contents(wall, contentBefore);
        var (chamberBefore, loadBefore, power) = (Chamber, Load, 0.0);
        Foresee(seconds);
        var (above, below) = (double.NegativeInfinity, double.PositiveInfinity);
        var (own, perSecond) = (kiln.ChamberCapacity / seconds, 1 / seconds);
        for (var round = 0; round < MostRounds; round++)
        {
            var (intoWall, fromWall) = EliminateWall(perSecond);
            var capacity = kiln.Load.Capacity(Load, Hottest) * perSecond;
            var pivot = capacity + exchange;
            var loadRest = ((capacity * Load) - (kiln.Load.Between(loadBefore, Load, Hottest) * perSecond)) / pivot;
            var loadFollow = exchange / pivot;

            var slope = own + (exchange * (1 - loadFollow)) + intoWall + LeakConductance;
            var drive = (own * chamberBefore) + (exchange * loadRest) + fromWall + (LeakConductance * room);
            power = Math.Clamp((slope * wanted) - drive, least, most);

            var chamber = (drive + power) / slope;
            var load = loadRest + (loadFollow * chamber);
            var moved = Math.Max(Math.Max(Math.Abs(chamber - Chamber), Math.Abs(load - Load)), SubstituteWall(chamber));
            // Steam bends the load's heat content so sharply that Newton's rule may leap to and fro: halve instead.
            if (load > Load) above = Load;
            else below = Load;
            if (moved >= Agreed && (load < above || load > below)) load = (above + below) / 2;
            (Chamber, Load) = (chamber, load);
            if (moved < Agreed) break;
        }

        (chamberMoved, loadMoved, lastSeconds) = (Chamber - chamberBefore, Load - loadBefore, seconds);
        Steps++;
        Hottest = Math.Max(Hottest, Load);
        Given += power * seconds;
        LostBySurface += outward * (wall[Layers - 1] - room) * seconds;
        LostByLeak += LeakConductance * (Chamber - room) * seconds;
        return power;
    }

    // Begins where everything would be if it went on as in the last step. What is found does not depend on it, only how soon.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Foresee(double seconds)
    {
        var share = lastSeconds > 0 ? seconds / lastSeconds : 0;
        Chamber += share * chamberMoved;
        Load += share * loadMoved;
        for (var i = 0; i < Layers; i++)
        {
            var now = wall[i];
            if (share > 0) wall[i] += share * (now - wallBefore[i]);
            wallBefore[i] = now;
        }
    }

    // Conductances at the temperatures before the step; they change by less than 1 % in one.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Conductances()
    {
        var last = kiln.Wall.Conductances(wall, inward);
        for (var i = 0; i < 3; i++)
        {
            var toRoom = kiln.Surface(surface, room);
            surface = ((last * wall[Layers - 1]) + (toRoom * room)) / (last + toRoom);
            outward = last * toRoom / (last + toRoom);
        }
    }

    // From the outside in: each layer as rest + follow × the temperature inside it. Tells what the chamber gives to the wall as
    // conductance × its temperature − heat.
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (double Conductance, double Heat) EliminateWall(double perSecond)
    {
        kiln.Wall.Capacities(wall, capacities, content);
        var (beyond, heat) = (outward, outward * room);
        for (var i = Layers - 1; i >= 0; i--)
        {
            var capacity = capacities[i] * perSecond;
            var own = (capacity * wall[i]) - ((content[i] - contentBefore[i]) * perSecond);
            var held = capacity + beyond;
            var pivot = held + inward[i];
            follow[i] = inward[i] / pivot;
            rest[i] = (own + heat) / pivot;
            (beyond, heat) = (inward[i] * held / pivot, inward[i] * rest[i]);
        }

        return (beyond, heat);
    }

    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double SubstituteWall(double chamber)
    {
        var (moved, inside) = (0.0, chamber);
        for (var i = 0; i < Layers; i++)
        {
            inside = rest[i] + (follow[i] * inside);
            moved = Math.Max(moved, Math.Abs(inside - wall[i]));
            wall[i] = inside;
        }

        return moved;
    }
}

/// <summary>Temperatures and heat of a moment.</summary>
internal sealed class HeatState
{
    /// <summary>Layers of the wall, K.</summary>
    public double[] Wall { get; } = new double[WallLayers.Count];

    /// <summary>Chamber, K.</summary>
    public double Chamber { get; set; }

    /// <summary>Load, K.</summary>
    public double Load { get; set; }

    /// <summary>The highest that the load was, K.</summary>
    public double Hottest { get; set; }

    /// <summary>Heat given, J.</summary>
    public double Given { get; set; }

    /// <summary>Heat lost from the outer surface, J.</summary>
    public double LostBySurface { get; set; }

    /// <summary>Heat lost with air, J.</summary>
    public double LostByLeak { get; set; }
}
