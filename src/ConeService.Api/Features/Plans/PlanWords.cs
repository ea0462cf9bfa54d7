using System.Globalization;
using ConeService.Contract.Plans;

namespace ConeService.Api.Features.Plans;

/// <summary>Firings of a plan in words.</summary>
internal static class PlanWords
{
    /// <summary>A firing: “1: kiln A, glaze, cone 6, oxidation”.</summary>
    public static string Name(PlanFiring firing) => string.Create(
        CultureInfo.InvariantCulture, $"{firing.Number}: {firing.KilnId}, {firing.FiringKind}, cone {firing.Cone}, {firing.Atmosphere}");

    /// <summary>How full it is, with how many pieces.</summary>
    public static string Summary(PlanFiring firing) => string.Create(
        CultureInfo.InvariantCulture,
        $"{firing.Layers.Sum(l => l.Pieces.Sum(p => p.Count))} pieces on {firing.Layers.Count} layers, {firing.FillPercent:0} % full.");

    /// <summary>What stands on its layers, a line each.</summary>
    public static IEnumerable<string> Lines(PlanFiring firing) => firing.Layers.Select(l => string.Create(
        CultureInfo.InvariantCulture, $"Layer {l.Number}, {l.HeightMillimetres:0} mm: {string.Join(", ", l.Pieces.Select(Pieces))}"));

    /// <summary>Pieces alike: “12 × mug”.</summary>
    public static string Pieces(LayerPieces pieces) => string.Create(CultureInfo.InvariantCulture, $"{pieces.Count} × {pieces.Id}");

    /// <summary>A moment: “Fri 4 Dec 18:00”.</summary>
    public static string Moment(DateTimeOffset at) => at.ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    /// <summary>A time of day.</summary>
    public static string Time(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);
}
