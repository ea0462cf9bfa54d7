using ConeService.Contract.Kilns;
using ConeService.Contract.Plans;
using ConeService.Contract.Problems;
using ConeService.Firing.Room;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Digest;

/// <summary>Reads the room of kilns.</summary>
internal sealed class RoomReader(RoomFactors factors, List<PlanFinding> findings, List<PlanAssumption> assumed)
{
    /// <summary>The room of a kiln; null where it is not known, which is a finding, of this or of the checks before.</summary>
    public MeasuredRoom? Room(PlanKiln sent, string pointer)
    {
        if (sent.Kiln?.Interior is not { } inside) return null;
        var height = PlanNumbers.Millimetres(inside.HeightMillimetres);
        var width = PlanNumbers.Millimetres(inside.WidthMillimetres);
        var depth = PlanNumbers.Millimetres(inside.DepthMillimetres);
        var diameter = PlanNumbers.Millimetres(inside.DiameterMillimetres);
        if (height is null || (diameter ?? width) is null) return null;
        var (across, along) = (diameter ?? width!.Value, diameter ?? depth ?? width!.Value);
        var shelf = Shelves(sent.Kiln.Shelves, height.Value, across, along, diameter is not null, pointer);
        var usual = shelf.IsRound ? factors.Round : factors.Rectangular;
        if (sent.FillingFactor is null) assumed.Add(new(pointer + "/fillingFactor", Moments.Text(usual)));
        var factor = PlanNumbers.Within<PlanKiln>(sent.FillingFactor, nameof(PlanKiln.FillingFactor)) ?? usual;
        var room = MeasuredRoom.Of(factors, height.Value, across, along, diameter is not null, shelf, factor);
        if (room is null)
            findings.Add(new(FindingCodes.NumberOutOfRange, pointer + "/kiln/interior/heightMillimetres", height.ToString()));
        return room;
    }

    private ShelfLayer Shelves(KilnShelves? sent, decimal height, decimal across, decimal along, bool isRound, string pointer)
    {
        var at = pointer + "/kiln/shelves";
        var width = PlanNumbers.Millimetres(sent?.WidthMillimetres ?? default);
        var depth = PlanNumbers.Millimetres(sent?.DepthMillimetres ?? default);
        var diameter = PlanNumbers.Millimetres(sent?.DiameterMillimetres ?? default);
        var stated = PlanNumbers.Millimetres(sent?.ThicknessMillimetres ?? default);
        var thickness = MeasuredRoom.Thickness(factors, stated);
        if (stated is null) assumed.Add(new(at + "/thicknessMillimetres", Moments.Text(thickness)));
        var beside = PlanNumbers.Count(sent?.PerLayer ?? default, PlanKilnCheck.MostBeside) ?? 1;
        var counted = PlanNumbers.Count(sent?.Layers ?? default, PlanKilnCheck.MostLayers);
        if (counted is null) assumed.Add(new(at + "/layers", Moments.Text(MeasuredRoom.MostLayers(factors, height, thickness))));
        if ((diameter ?? width) is null) assumed.Add(new(at, "the floor"));
        return MeasuredRoom.Shelves(factors, height, across, along, isRound, new(counted, beside, stated, width, depth, diameter));
    }
}
