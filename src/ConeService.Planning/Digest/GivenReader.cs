using System.Globalization;
using ConeService.Contract.Answers;
using ConeService.Contract.Plans;
using ConeService.Contract.Problems;
using ConeService.Planning.Requests;

namespace ConeService.Planning.Digest;

/// <summary>Reads firings that stand, and those of a former plan.</summary>
internal sealed class GivenReader(
    Moments moments, List<PlanFinding> findings, IReadOnlyList<ReadKiln> kilns, IReadOnlyList<ReadPiece> pieces)
{
    /// <summary>What is told all the same.</summary>
    public List<PlanFinding> Warnings { get; } = [];

    /// <summary>Reads pinned firings; what can't be read is a finding.</summary>
    public List<ReadGiven> Pins(IReadOnlyList<GivenFiring?>? sent) => Read(sent, "/firings", findings);

    /// <summary>Reads a former plan; what is not there any more is a warning.</summary>
    public List<ReadGiven> Announced(IReadOnlyList<GivenFiring?>? sent)
    {
        var told = new List<PlanFinding>();
        var read = Read(sent, "/announced", told);
        foreach (var found in told)
        {
            if (found.Code is FindingCodes.PieceUnknown or FindingCodes.FiringNotOnMenu or FindingCodes.KilnUnknown)
                Warnings.Add(found with { Code = PlanWarningCodes.AnnouncedNotPossible });
            else findings.Add(found);
        }

        return read;
    }

    /// <summary>Finds pinned firings that take a kiln at the same time.</summary>
    /// <param name="pins">The firings.</param>
    /// <param name="minutes">What one takes, min.</param>
    public void RequireApart(IReadOnlyList<ReadGiven> pins, Func<ReadGiven, int> minutes)
    {
        for (var i = 0; i < pins.Count; i++)
        {
            for (var j = 0; j < i; j++)
            {
                var (one, other) = (pins[i], pins[j]);
                if (one.Kiln == other.Kiln && Begin(one) < End(other, minutes) && Begin(other) < End(one, minutes))
                    findings.Add(new(FindingCodes.PinsOverlap, one.Pointer, Moments.Text(j)));
            }
        }
    }

    private int Begin(ReadGiven given) => given.Start - kilns[given.Kiln].Loading;

    // Until it can be opened at least; how long nobody is there is seen later.
    private int End(ReadGiven given, Func<ReadGiven, int> minutes) => given.Start + minutes(given) + kilns[given.Kiln].Unloading;

    private List<ReadGiven> Read(IReadOnlyList<GivenFiring?>? sent, string list, List<PlanFinding> found)
    {
        var read = new List<ReadGiven>();
        var counted = new Dictionary<string, int>(StringComparer.Ordinal);
        if (sent?.Count > PlanLimits.MostFirings) return read;
        for (var i = 0; i < (sent?.Count ?? 0); i++)
        {
            var at = $"{list}/{i}";
            if (sent![i] is not { } firing) continue;
            var start = moments.Minutes(firing.Start, at + "/start");
            var kiln = kilns.ToList().FindIndex(k => k.Id == firing.KilnId);
            if (kiln < 0)
            {
                found.Add(new(FindingCodes.KilnUnknown, at + "/kilnId", firing.KilnId));
                _ = Pieces(firing, at, found, counted);
                continue;
            }

            var menu = kilns[kiln].Menu.ToList().FindIndex(m => Same(m.Sent.FiringKind, firing.FiringKind)
                && Same(m.Sent.Cone, firing.Cone) && Same(m.Sent.Atmosphere, firing.Atmosphere));
            if (menu < 0) found.Add(new(FindingCodes.FiringNotOnMenu, at, firing.Cone.Text));
            var held = Pieces(firing, at, found, counted);
            if (start is not null && menu >= 0) read.Add(new(at, kiln, start.Value, menu, firing.FillUp != true, held));
        }

        return read;
    }

    private List<(int Piece, int Count)> Pieces(
        GivenFiring firing, string at, List<PlanFinding> found, Dictionary<string, int> counted)
    {
        var held = new List<(int, int)>();
        if (firing.Pieces?.Count > PlanLimits.MostPieces) return held;
        for (var j = 0; j < (firing.Pieces?.Count ?? 0); j++)
        {
            var named = firing.Pieces![j];
            var piece = pieces.ToList().FindIndex(p => p.Id == named?.Id);
            var place = $"{at}/pieces/{j}";
            if (piece < 0)
            {
                found.Add(new(FindingCodes.PieceUnknown, place, named?.Id));
                continue;
            }

            // What is no number is told with the form of the request.
            if (!named!.Count.IsAbsent && named.Count.Kind != SentKind.Number) continue;
            var count = named.Count.IsAbsent ? pieces[piece].Count : Counted(named.Count);
            var firings = (pieces[piece].Sent.Then?.Count ?? 0) + 1;
            var all = counted[named.Id!] = counted.GetValueOrDefault(named.Id!) + count;
            if (count < 1 || count > pieces[piece].Count || all > pieces[piece].Count * firings)
                found.Add(new(FindingCodes.PieceUnknown, place + "/count", named.Count.Text));
            else held.Add((piece, count));
        }

        return held;
    }

    // What is no count is none of them.
    private static int Counted(SentText sent) =>
        int.TryParse(sent.Text, NumberStyles.None, CultureInfo.InvariantCulture, out var count) ? count : 0;

    private static bool Same(SentText one, SentText other) => one.Text?.Trim() == other.Text?.Trim();
}

/// <summary>A given firing as read.</summary>
internal sealed record ReadGiven(
    string Pointer, int Kiln, int Start, int Menu, bool Closed, IReadOnlyList<(int Piece, int Count)> Pieces);
