using ConeService.Contract.Answers;
using ConeService.Contract.Loads;
using ConeService.Contract.Plans;
using ConeService.Contract.Problems;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Firing.Room;
using ConeService.Planning.Requests;
using NodaTime;

namespace ConeService.Planning.Digest;

/// <summary>Reads the kilns of a request.</summary>
internal sealed class KilnsReader(
    FiringReference reference, RoomFactors factors, ProgrammeMaker maker, Moments moments, List<PlanFinding> findings,
        List<PlanAssumption> assumed)
{
    private static readonly LocalTime[] UsualStarts = [new(8, 0), new(20, 0)];
    private readonly RoomReader rooms = new(factors, findings, assumed);

    /// <summary>Reads a kiln; null where it can't be used.</summary>
    /// <param name="sent">The kiln.</param>
    /// <param name="pointer">Its pointer.</param>
    /// <param name="horizon">End of the horizon, min.</param>
    /// <param name="staffed">When somebody is there; null: always.</param>
    public ReadKiln? Read(PlanKiln? sent, string pointer, int horizon, Spans? staffed)
    {
        var count = findings.Count;
        findings.AddRange(PlanFinding.Of(PlanKilnCheck.Of(sent, pointer)));
        if (sent?.Kiln is not { } kiln) return null;
        var room = rooms.Room(sent, pointer);
        var loading = (int)(PlanNumbers.Within<PlanKiln>(sent.LoadingMinutes, nameof(PlanKiln.LoadingMinutes))
            ?? factors.LoadingMinutes);
        var unloading = (int)(PlanNumbers.Within<PlanKiln>(sent.UnloadingMinutes, nameof(PlanKiln.UnloadingMinutes))
            ?? factors.UnloadingMinutes);
        if (sent.LoadingMinutes is null) assumed.Add(new(pointer + "/loadingMinutes", Moments.Text(loading)));
        if (sent.UnloadingMinutes is null) assumed.Add(new(pointer + "/unloadingMinutes", Moments.Text(unloading)));
        var closed = Spans(sent.Closed, pointer + "/closed");
        var starts = Starts(sent, pointer, horizon, staffed, loading);
        var menu = new List<ReadEntry>();
        for (var i = 0; i < Math.Min(sent.Firings?.Count ?? 0, PlanLimits.MostMenu); i++)
        {
            var at = $"{pointer}/firings/{i}";
            if (sent.Firings![i] is not { } firing) continue;
            if (Readable(kiln, firing, pointer, at)) Add(menu, kiln, firing, at);
        }

        return findings.Count > count || room is null ? null : new(sent, kiln.Id.Text!, room, loading, unloading, closed, starts, menu);
    }

    /// <summary>Reads times.</summary>
    public Spans Spans(IReadOnlyList<PlanSpan?>? sent, string pointer)
    {
        var spans = new List<(int, int)>();
        for (var i = 0; i < (sent?.Count ?? 0); i++)
        {
            var at = $"{pointer}/{i}";
            if (moments.Minutes(sent![i]?.From, at + "/from") is not { } from
                || moments.Minutes(sent[i]?.To, at + "/to") is not { } to) continue;
            if (to <= from) findings.Add(new(FindingCodes.RangeInverted, at, sent[i]!.From));
            spans.Add((from, to));
        }

        return new(spans);
    }

    private List<int> Starts(PlanKiln sent, string pointer, int horizon, Spans? staffed, int loading)
    {
        var starts = new List<int>();
        for (var i = 0; i < (sent.Starts?.Count ?? 0); i++)
        {
            if (moments.Minutes(sent.Starts![i], $"{pointer}/starts/{i}") is { } start) starts.Add(start);
        }

        if (sent.Starts is null or [])
        {
            var heat = EnumWords.TryRead<KilnHeat>(sent.Kiln!.Heat.Text, out var read) ? read : KilnHeat.Electric;
            assumed.Add(new(pointer + "/starts", (staffed, heat) switch
            {
                (null, _) => "08:00, 20:00",
                (_, KilnHeat.Electric) => "begin of the times with somebody there, and so long before their end as a start is looked after",
                _ => "begin of the times with somebody there",
            }));
            if (staffed is null) starts.AddRange(moments.Daily(UsualStarts, horizon));
            else starts.AddRange(staffed.All.SelectMany(s => Usual(s.From + loading, s.To - Attended(heat), s.To, heat)));
        }

        return [.. starts.Where(s => s >= 0 && s < horizon).Distinct().Order()];
    }

    // The last start of a day leaves the time in which somebody must look after it; of a live flame nobody goes home.
    private static IEnumerable<int> Usual(int first, int last, int end, KilnHeat heat)
    {
        if (first >= end) return [end];
        return heat == KilnHeat.Electric && last > first ? [first, last] : [first];
    }

    // How long a start is looked after, min.
    private int Attended(KilnHeat heat) => (int)reference.Dataset.Attendances
        .Where(a => a.Moment == AttendanceMoment.Start && (a.Heats.Count == 0 || a.Heats.Contains(heat)))
        .Select(a => a.AfterMinutes).DefaultIfEmpty().Max();

    // A piece that everybody knows stands for those to come: what is found then is wrong with kiln or firing.
    private bool Readable(Contract.Kilns.Kiln kiln, MenuFiring firing, string pointer, string at)
    {
        try
        {
            var probe = new PieceRequest("probe", Body: reference.Dataset.ClayBodies[0].Id, State: "bone-dry");
            reference.Loads.Read(new(kiln, new FiringRequest(firing.FiringKind, firing.Cone, firing.Atmosphere), [probe]));
            return true;
        }
        catch (RefusedException refused)
        {
            foreach (var found in refused.Findings)
            {
                var place = found.Field.StartsWith("/kiln", StringComparison.Ordinal)
                    ? pointer + found.Field
                    : at + found.Field.Replace("/firing/", "/", StringComparison.Ordinal);
                if (!findings.Exists(f => f.Pointer == place && f.Code == found.Code)) findings.Add(
                    new(found.Code, place, found.Value, found));
            }

            return false;
        }
    }

    // Whether its hours are known shows with ware of which nothing is told; what thicker ware takes is asked when it is known what goes in.
    private void Add(List<ReadEntry> menu, Contract.Kilns.Kiln kiln, MenuFiring firing, string at)
    {
        var (usual, cause) = maker.Make(kiln, firing, menu.Count, SlowWare.Usual);
        if (usual is null) findings.Add(new(FindingCodes.HoursUnknown, at, firing.Schedule, cause));
        else menu.Add(new(firing, at, usual.Hours, maker.IsFitted(firing)));
    }
}

/// <summary>A kiln as read.</summary>
internal sealed record ReadKiln(
    PlanKiln Sent, string Id, MeasuredRoom Room, int Loading, int Unloading, Spans Closed, IReadOnlyList<int> Starts,
    IReadOnlyList<ReadEntry> Menu);

/// <summary>An entry of its menu.</summary>
/// <param name="Sent">As sent.</param>
/// <param name="Pointer">Its pointer.</param>
/// <param name="Hours">What it takes with ware of which nothing is told.</param>
/// <param name="IsFitted">True where hours or energy are those of the fit.</param>
internal sealed record ReadEntry(MenuFiring Sent, string Pointer, FiringHours Hours, bool IsFitted);
