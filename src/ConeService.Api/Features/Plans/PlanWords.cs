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

    /// <summary>From a moment to a later one: “Fri 4 Dec 18:00 to 18:30”.</summary>
    public static string Span(DateTimeOffset from, DateTimeOffset to) =>
        $"{Moment(from)} to {(from.Date == to.Date ? Time(to) : Moment(to))}";

    /// <summary>When somebody must be at the kiln and why, and when nobody is there, a line each.</summary>
    public static IEnumerable<string> Attendance(PlanFiring firing) => firing.Attendance.Select(a =>
        $"{Span(a.From, a.To)}: {a.Message}{NobodyThere(a)}");

    /// <summary>When of a time in which somebody must be there nobody is; empty where somebody is.</summary>
    public static string NobodyThere(PlanAttendance time) => time.NobodyThere.Count == 0
        ? ""
        : $" Nobody is there {string.Join("; ", time.NobodyThere.Select(n => Span(n.From, n.To)))}: "
            + "stay, come back, or start at another time.";

    /// <summary>What the load check says of what stands in it, a line each.</summary>
    public static IEnumerable<string> Notes(PlanFiring firing) => firing.LoadingNotes.Select(n =>
        n.Pieces.Count == 0 ? n.Reason.Texts.Student.ToString() : $"{string.Join(", ", n.Pieces)}: {n.Reason.Texts.Student}");

    /// <summary>A time of day.</summary>
    public static string Time(DateTimeOffset at) => at.ToString("HH:mm", CultureInfo.InvariantCulture);
}
