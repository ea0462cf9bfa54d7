using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Firing;
using ConeService.Planning.Digest;
using ConeService.Planning.Model;

namespace ConeService.Planning.Explain;

/// <summary>A firing of a plan as a load of the load check.</summary>
internal static class LoadSent
{
    /// <summary>The load.</summary>
    public static LoadRequest Of(PlanRequest request, Digested digested, DraftFiring firing)
    {
        var menu = request.Kilns![firing.Kiln]!.Firings![digested.Problem.Kilns[firing.Kiln].Types[firing.Type].Menu]!;
        return new(
            request.Kilns![firing.Kiln]!.Kiln,
            new FiringRequest(menu.FiringKind, menu.Cone, menu.Atmosphere),
            [.. firing.Contents.Select((c, i) => digested.Wares[c.Stage].Named(i) with { Count = c.Count })],
            Offered: [new OfferedFiringRequest(menu.FiringKind, menu.Cone, menu.Atmosphere)]);
    }

    /// <summary>What the load check says of it; null of an empty firing, and of one that it can't judge, which only one that stands can
    /// be.</summary>
    public static LoadAnswer? Check(FiringReference reference, PlanRequest request, Digested digested, DraftFiring firing)
    {
        if (firing.Contents.Count == 0) return null;
        try
        {
            return reference.Loads.Check(Of(request, digested, firing), "verdicts");
        }
        catch (RefusedException) when (firing.IsPinned)
        {
            return null;
        }
    }
}
