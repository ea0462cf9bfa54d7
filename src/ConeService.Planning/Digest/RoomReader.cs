using ConeService.Contract.Kilns;
using ConeService.Contract.Plans;
using ConeService.Contract.Problems;
using ConeService.Firing.Room;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Digest;

/// <summary>Reads the room of kilns.</summary>
internal sealed class RoomReader(RoomFactors factors, List<PlanFinding> findings, List<PlanAssumption> assumed)
{
    private readonly Numbers numbers = new(findings);

    /// <summary>The room of a kiln; null where it is not known, which is a finding.</summary>
    public MeasuredRoom? Room(PlanKiln sent, string pointer)
    {
        if (sent.Kiln?.Interior is not { } inside)
        {
            findings.Add(new(FindingCodes.MemberMissing, pointer + "/kiln/interior"));
            return null;
        }

        var count = findings.Count;
        var height = numbers.Millimetres(inside.HeightMillimetres, pointer + "/kiln/interior/heightMillimetres");
        var width = numbers.Millimetres(inside.WidthMillimetres, pointer + "/kiln/interior/widthMillimetres");
        var depth = numbers.Millimetres(inside.DepthMillimetres, pointer + "/kiln/interior/depthMillimetres");
        var diameter = numbers.Millimetres(inside.DiameterMillimetres, pointer + "/kiln/interior/diameterMillimetres");
        if (height is null || (diameter ?? width) is null)
        {
            if (findings.Count == count) findings.Add(new(FindingCodes.MemberMissing, pointer + "/kiln/interior"));
            return null;
        }

        var (across, along) = (diameter ?? width!.Value, diameter ?? depth ?? width!.Value);
        var shelf = Shelves(sent.Kiln.Shelves, height.Value, across, along, diameter is not null, pointer);
        var usual = shelf.IsRound ? factors.Round : factors.Rectangular;
        if (sent.FillingFactor is null) assumed.Add(new(pointer + "/fillingFactor", Moments.Text(usual)));
        var factor = numbers.Within(sent.FillingFactor, 0.3, 0.9, usual, pointer + "/fillingFactor");
        var room = MeasuredRoom.Of(factors, height.Value, across, along, diameter is not null, shelf, factor);
        if (room is null)
            findings.Add(new(FindingCodes.NumberOutOfRange, pointer + "/kiln/interior/heightMillimetres", height.ToString()));
        return room;
    }

    private ShelfLayer Shelves(KilnShelves? sent, decimal height, decimal across, decimal along, bool isRound, string pointer)
    {
        var at = pointer + "/kiln/shelves";
        var width = sent is null ? null : numbers.Millimetres(sent.WidthMillimetres, at + "/widthMillimetres");
        var depth = sent is null ? null : numbers.Millimetres(sent.DepthMillimetres, at + "/depthMillimetres");
        var diameter = sent is null ? null : numbers.Millimetres(sent.DiameterMillimetres, at + "/diameterMillimetres");
        var stated = sent is null ? null : numbers.Millimetres(sent.ThicknessMillimetres, at + "/thicknessMillimetres");
        var thickness = MeasuredRoom.Thickness(factors, stated);
        if (stated is null) assumed.Add(new(at + "/thicknessMillimetres", Moments.Text(thickness)));
        var beside = sent is null ? 1 : numbers.Count(sent.PerLayer, 20, at + "/perLayer");
        int? counted = sent is null || sent.Layers.IsAbsent ? null : numbers.Count(sent.Layers, 100, at + "/layers");
        if (counted is null) assumed.Add(new(at + "/layers", Moments.Text(MeasuredRoom.MostLayers(factors, height, thickness))));
        if ((diameter ?? width) is null) assumed.Add(new(at, "the floor"));
        return MeasuredRoom.Shelves(factors, height, across, along, isRound, new(counted, beside, stated, width, depth, diameter));
    }
}
