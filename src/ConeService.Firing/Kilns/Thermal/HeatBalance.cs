
namespace ConeService.Firing.Kilns.Thermal;

/// <summary>
/// Load – chamber – wall – room as a chain of ten temperatures, advanced by the implicit Euler rule. Heat contents
/// are differences of enthalpy, iterated to agreement, so that what is given is found again in parts and losses.
/// </summary>
internal sealed class HeatBalance
{
    private const int Layers = WallLayers.Count;
    private const double Agreed = 1e-4;
    private const int MostRounds = 60;

    private readonly KilnPhysics kiln;
    private readonly double start, room;
    private readonly double[] wall = new double[Layers], wallBefore = new double[Layers], conductivity = new double[Layers];
    private readonly double[] inward = new double[Layers], follow = new double[Layers], rest = new double[Layers];
    private double surface, outward;

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
        other.wall.CopyTo(wall, 0);
    }

    /// <summary>Temperature of the chamber, K.</summary>
    public double Chamber { get; private set; }

    /// <summary>Temperature of the load, K.</summary>
    public double Load { get; private set; }

    /// <summary>Heat that leaking air takes now, W/K: the kiln's own, until a vent is opened.</summary>
    public double LeakConductance { get; set; }

    /// <summary>Highest temperature of the load so far, K.</summary>
    public double Hottest { get; private set; }

    /// <summary>Heat given so far, J.</summary>
    public double Given { get; private set; }

    /// <summary>Heat lost from the outer surface so far, J.</summary>
    public double LostBySurface { get; private set; }

    /// <summary>Heat lost with air so far, J.</summary>
    public double LostByLeak { get; private set; }

    /// <summary>Where the heat stands now.</summary>
    public HeatParts Parts()
    {
        var walls = 0.0;
        for (var i = 0; i < Layers; i++) walls += kiln.Wall.Between(i, start, wall[i]);
        return new(
            Given,
            kiln.Load.Ware(start, Load),
            kiln.Load.Furniture(start, Load),
            kiln.Load.Water(Hottest) - kiln.Load.Water(start),
            walls,
            kiln.ChamberCapacity * (Chamber - start),
            LostBySurface,
            LostByLeak);
    }

    /// <summary>Advances, with just the power that brings the chamber to <paramref name="wanted"/>, within what there is.</summary>
    /// <param name="seconds">Length of the step, s.</param>
    /// <param name="wanted">Set-point at its end, K.</param>
    /// <param name="most">Most power, W; 0 with the power off.</param>
    /// <param name="least">Least power, W; below 0 where a chamber that is known is followed, whatever the model thinks of it.</param>
    /// <returns>The power, W.</returns>
    public double Step(double seconds, double wanted, double most, double least = 0)
    {
        var exchange = kiln.Exchange(Chamber, Load);
        Conductances();
        Array.Copy(wall, wallBefore, Layers);
        var (chamberBefore, loadBefore, power) = (Chamber, Load, 0.0);
        var (above, below) = (double.NegativeInfinity, double.PositiveInfinity);
        for (var round = 0; round < MostRounds; round++)
        {
            var (walls, wallFollow) = EliminateWall(seconds);
            var capacity = kiln.Load.Capacity(Load, Hottest) / seconds;
            var pivot = capacity + exchange;
            var loadRest = ((capacity * Load) - (kiln.Load.Between(loadBefore, Load, Hottest) / seconds)) / pivot;
            var loadFollow = exchange / pivot;

            var own = kiln.ChamberCapacity / seconds;
            var slope = own + (exchange * (1 - loadFollow)) + (inward[0] * (1 - wallFollow)) + LeakConductance;
            var drive = (own * chamberBefore) + (exchange * loadRest) + (inward[0] * walls) + (LeakConductance * room);
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

        Hottest = Math.Max(Hottest, Load);
        Given += power * seconds;
        LostBySurface += outward * (wall[Layers - 1] - room) * seconds;
        LostByLeak += LeakConductance * (Chamber - room) * seconds;
        return power;
    }

    // Conductances at the temperatures before the step; they change by less than 1 % in one.
    private void Conductances()
    {
        for (var i = 0; i < Layers; i++)
        {
            conductivity[i] = kiln.Wall.Conductivity(wall[i]);
            var resistance = kiln.Wall.InnerResistance(i, conductivity[i]);
            if (i > 0) resistance += kiln.Wall.OuterResistance(i - 1, conductivity[i - 1]);
            inward[i] = 1 / resistance;
        }

        var last = 1 / kiln.Wall.OuterResistance(Layers - 1, conductivity[Layers - 1]);
        for (var i = 0; i < 3; i++)
        {
            var toRoom = kiln.Surface(surface, room);
            surface = ((last * wall[Layers - 1]) + (toRoom * room)) / (last + toRoom);
            outward = last * toRoom / (last + toRoom);
        }
    }

    // From the outside in: each layer as rest + follow × the temperature inside it.
    private (double Own, double Follow) EliminateWall(double seconds)
    {
        var (next, nextRest, nextFollow) = (outward, room, 0.0);
        for (var i = Layers - 1; i >= 0; i--)
        {
            var capacity = kiln.Wall.Capacity(i, wall[i]) / seconds;
            var own = (capacity * wall[i]) - (kiln.Wall.Between(i, wallBefore[i], wall[i]) / seconds);
            var pivot = capacity + inward[i] + (next * (1 - nextFollow));
            rest[i] = (own + (next * nextRest)) / pivot;
            follow[i] = inward[i] / pivot;
            (next, nextRest, nextFollow) = (inward[i], rest[i], follow[i]);
        }

        return (nextRest, nextFollow);
    }

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
