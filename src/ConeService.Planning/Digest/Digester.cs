using ConeService.Contract.Plans;
using ConeService.Contract.Problems;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Firing.Room;
using ConeService.Planning.Requests;
using Problem = ConeService.Planning.Model.Problem;

namespace ConeService.Planning.Digest;

/// <summary>Makes a problem of a request. Remembers what the load check and the fit said; not for several threads.</summary>
internal sealed class Digester(FiringReference reference)
{
    private const int LongestHorizon = 26 * 7 * Problem.Day;
    private readonly Acceptance acceptance = new(reference);
    private readonly UsualSchedules schedules = new(reference);

    private readonly RoomFactors factors = RoomFactors.Of(reference.Dataset)
        ?? throw new InvalidOperationException("Plans need a package with loading-defaults, of 1.7 or later.");

    /// <summary>Reads a request and makes a problem of it.</summary>
    /// <exception cref="PlanRefusedException">Something is wrong; carries every finding.</exception>
    public Digested Digest(PlanRequest request)
    {
        var (findings, assumed) = (new List<PlanFinding>(), new List<PlanAssumption>());
        var moments = new Moments(request.TimeZone, findings);
        findings.AddRange(PlanFinding.Of(PlanCheck.Whole(request)));
        var horizon = Horizon(request, moments, findings);
        var objective = request.Objective ?? new PlanObjective();
        var basis = EnumWords.TryRead(objective.Cost, out CostBasis read) ? read : CostBasis.Energy;
        if (objective.Cost is null) assumed.Add(new("/objective/cost", "energy"));
        var fill = PlanNumbers.Within<PlanObjective>(objective.MinimumFillPercent, nameof(PlanObjective.MinimumFillPercent))
            ?? factors.MinimumFillPercent;
        if (objective.MinimumFillPercent is null) assumed.Add(new("/objective/minimumFillPercent", Moments.Text(fill)));
        var maker = new ProgrammeMaker(schedules, basis, objective);
        var reader = new KilnsReader(reference, factors, maker, moments, findings, assumed);
        findings.AddRange(PlanFinding.Of(PlanCheck.Spans(request.Staffed, "/staffed")));
        var staffed = request.Staffed is { Count: > 0 } ? reader.Spans(request.Staffed, "/staffed") : null;
        if (staffed is null) assumed.Add(new("/staffed", "always"));
        var kilns = (request.Kilns ?? []).Take(PlanLimits.MostKilns)
            .Select((k, i) => reader.Read(k, $"/kilns/{i}", horizon ?? LongestHorizon, staffed)).ToList();
        var pieces = new PiecesReader(reference, factors, moments, findings, assumed).Read(request.Pieces);
        // Without starts of its own a kiln starts when somebody is there: where that can't be read, it is told already.
        if (horizon is not null && kilns.Count > 0 && kilns.TrueForAll(k => k is { Starts.Count: 0 })
            && !findings.Exists(f => f.Pointer.StartsWith("/staffed", StringComparison.Ordinal)))
            findings.Add(new(FindingCodes.NoStartInHorizon, "/kilns"));
        findings.AddRange(PlanFinding.Of(PlanCheck.Given(request.Firings, "/firings")));
        findings.AddRange(PlanFinding.Of(PlanCheck.Given(request.Announced, "/announced")));
        var given = new GivenReader(moments, findings, [.. kilns.OfType<ReadKiln>()], pieces);
        var pins = given.Pins(request.Firings);
        var announced = given.Announced(request.Announced);
        findings.RemoveAll(f => IsSent(f, request));
        if (findings.Count > 0) throw new PlanRefusedException(findings);
        var whole = kilns.ConvertAll(k => k!);
        DigestBounds.Judgements(pieces, whole);
        var sorts = new Sorts(acceptance, new Wanted(reference, acceptance, whole), whole).Of(pieces);
        var programmes = new Programmes(maker, pieces, sorts, findings, assumed);
        var fired = whole.Select((k, i) => programmes.Of(k, i, [.. pins.Where(p => p.Kiln == i)])).ToList();
        if (findings.Count > 0) throw new PlanRefusedException(findings);
        given.RequireApart(pins, pin => programmes.For(pin, fired[pin.Kiln]).Hours.Minutes);
        if (findings.Count > 0) throw new PlanRefusedException(findings);
        return new ProblemBuilder(acceptance, moments, whole, fired, programmes, schedules, pieces, horizon!.Value, staffed, assumed)
            .Build(sorts, (int)Math.Round(fill * 100), pins, announced, given.Warnings);
    }

    // A kiln or a piece that was sent and can't be read is known all the same.
    private static bool IsSent(PlanFinding found, PlanRequest request) => found.Code switch
    {
        FindingCodes.KilnUnknown => (request.Kilns ?? []).Any(k => k?.Kiln?.Id.Text is { } id && id == found.Value),
        FindingCodes.PieceUnknown => !found.Pointer.EndsWith("/count", StringComparison.Ordinal)
            && (request.Pieces ?? []).Any(p => p?.Piece?.Id.Text is { } id && id == found.Value),
        _ => false,
    };

    private static int? Horizon(PlanRequest request, Moments moments, List<PlanFinding> findings)
    {
        if (request.Horizon is not { } sent || moments.Read(sent.From, "/horizon/from") is not { } from) return null;
        moments.Begin(from);
        if (moments.Minutes(sent.To, "/horizon/to") is not { } length) return null;
        if (length <= 0) findings.Add(new(FindingCodes.RangeInverted, "/horizon", sent.From));
        else if (length > LongestHorizon) findings.Add(new(FindingCodes.HorizonTooLong, "/horizon/to", sent.To));
        else return length;
        return null;
    }
}
