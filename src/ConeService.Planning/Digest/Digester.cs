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
        var numbers = new Numbers(findings);
        var moments = new Moments(request.TimeZone, findings);
        var horizon = Horizon(request, moments, findings);
        var objective = request.Objective ?? new PlanObjective();
        var basis = CostBasis.Energy;
        if (objective.Cost is { } word && !EnumWords.TryRead(word, out basis))
            findings.Add(new(FindingCodes.WordUnknown, "/objective/cost", word));
        if (objective.Cost is null) assumed.Add(new("/objective/cost", "energy"));
        if (objective.Tariff is { PerKilowattHour: null }) findings.Add(
            new(FindingCodes.MemberMissing, "/objective/tariff/perKilowattHour"));
        if (objective.Tariff is { Currency: null }) findings.Add(new(FindingCodes.MemberMissing, "/objective/tariff/currency"));
        if (objective.Tariff?.Currency is { } currency && !(currency.Length == 3 && currency.All(char.IsAsciiLetterUpper)))
            findings.Add(new(FindingCodes.TariffWithoutCurrency, "/objective/tariff/currency", currency));
        if (objective.Tariff?.PerKilowattHour is { } price) numbers.Within(price, 0, 1_000_000, 0, "/objective/tariff/perKilowattHour");
        var fill = numbers.Within(
            objective.MinimumFillPercent, 0, 100, factors.MinimumFillPercent, "/objective/minimumFillPercent");
        if (objective.MinimumFillPercent is null) assumed.Add(new("/objective/minimumFillPercent", Moments.Text(fill)));
        var reader = new KilnsReader(reference, factors, schedules, moments, findings, assumed);
        var staffed = request.Staffed is { Count: > 0 } ? reader.Spans(request.Staffed, "/staffed") : null;
        if (staffed is null) assumed.Add(new("/staffed", "always"));

        numbers.AtMost(request.Staffed?.Count, PlanLimits.MostMoments, "/staffed");
        numbers.List(request.Kilns?.Count, PlanLimits.MostKilns, "/kilns");
        var kilns = (request.Kilns ?? []).Take(PlanLimits.MostKilns)
            .Select((k, i) => reader.Read(k, $"/kilns/{i}", horizon ?? LongestHorizon, staffed, basis, objective)).ToList();
        var ids = (request.Kilns ?? []).Select(k => k?.Kiln?.Id.Text).ToList();
        for (var i = 0; i < ids.Count; i++)
        {
            if (ids[i] is not null && ids.IndexOf(ids[i]) < i) findings.Add(
                new(FindingCodes.KilnIdRepeated, $"/kilns/{i}/kiln/id", ids[i]));
        }

        var pieces = new PiecesReader(reference, factors, moments, findings, assumed).Read(request.Pieces);
        if (horizon is not null && kilns.Count > 0 && kilns.TrueForAll(k => k is { Starts.Count: 0 }))
            findings.Add(new(FindingCodes.NoStartInHorizon, "/kilns"));
        var given = new GivenReader(moments, findings, [.. kilns.OfType<ReadKiln>()], pieces);
        var pins = given.Pins(request.Firings);
        var announced = given.Announced(request.Announced);
        if (findings.Count > 0) throw new PlanRefusedException(findings);
        given.RequireApart(pins);
        if (findings.Count > 0) throw new PlanRefusedException(findings);
        return new ProblemBuilder(acceptance, moments, [.. kilns.Select(k => k!)], pieces, horizon!.Value, staffed, assumed)
            .Build((int)Math.Round(fill * 100), pins, announced, given.Warnings);
    }

    private static int? Horizon(PlanRequest request, Moments moments, List<PlanFinding> findings)
    {
        if (request.Horizon is not { } sent)
        {
            findings.Add(new(FindingCodes.MemberMissing, "/horizon"));
            return null;
        }

        if (string.IsNullOrWhiteSpace(sent.From)) findings.Add(new(FindingCodes.MemberMissing, "/horizon/from"));
        if (string.IsNullOrWhiteSpace(sent.To)) findings.Add(new(FindingCodes.MemberMissing, "/horizon/to"));
        if (moments.Read(sent.From, "/horizon/from") is not { } from) return null;
        moments.Begin(from);
        if (moments.Minutes(sent.To, "/horizon/to") is not { } length) return null;
        if (length <= 0) findings.Add(new(FindingCodes.RangeInverted, "/horizon", sent.From));
        else if (length > LongestHorizon) findings.Add(new(FindingCodes.HorizonTooLong, "/horizon/to", sent.To));
        else return length;
        return null;
    }
}
