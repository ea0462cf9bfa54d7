using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>Estimates from witness cones how far a meter is off: true temperature minus that of the meter.</summary>
/// <param name="calculator">Follows what the meter says.</param>
internal sealed class HeatWorkComparer(HeatWorkCalculator calculator)
{
    /// <summary>Most firings in one request.</summary>
    public const int MostFirings = 50;

    private const double Contradiction = 2.5;
    private static readonly string[] Notes =
    [
        "True minus meter: add the offset to what the meter shows. It holds for this thermocouple at this place and near these temperatures.",
        "A clock hand or an angle is taken as good to 4 °C; a cone that is down or standing only bounds the offset.",
        "Errors of the chart are common to all firings and do not average out: a pooled offset belongs to this chart.",
    ];

    /// <summary>Answers a request, with the history of its first firing for a figure.</summary>
    /// <exception cref="RefusedException">A firing or an observation can't be read.</exception>
    public (CompareAnswer Answer, HeatHistory History) Answer(CompareRequest request)
    {
        var several = request.Firings is not null;
        var firings = request.Firings ?? [request];
        if (firings.Count is 0 or > MostFirings) throw new RefusedException(new Finding("empty-request", "/firings", null, "The request holds no firings, or too many.", [$"1 to {MostFirings} firings"]));
        var findings = new List<Finding>();
        var witnesses = firings.Select((f, i) => WitnessReader.Read(calculator.Charts.Scale, f ?? new(), several ? $"/firings/{i}" : "", findings)).ToList();
        if (findings.Count > 0) throw new RefusedException(findings);
        var compared = firings.Select((f, i) => Compare(f!, witnesses[i], f!.Id ?? $"{i + 1}", several ? $"/firings/{i}" : "")).ToList();
        return (new(calculator.Charts.Dataset.VersionId, [.. compared.Select(c => c.Answer)], several ? Pooled(compared) : null, Notes), compared[0].History);
    }

    private (ComparedFiring Answer, HeatHistory History, (double Offset, double Error)? Estimate) Compare(WitnessedFiring firing, List<Witness> witnesses, string id, string at)
    {
        var result = calculator.Answer(firing, at);
        var chart = calculator.Settings(firing, at).Chart;
        var bins = new ResidenceHistogram(result.History).Bins().ToList();
        var rate = result.Answer.RateOverLast100CelsiusPerHour;
        var words = witnesses.Select(w => (Witness: w, Word: Word(w, chart, rate, bins, result.Answer))).ToList();
        var estimate = MeterOffsetEstimate.From([.. words.Select(w => w.Word)]);
        var best = estimate?.Offset ?? (words[0].Word.Kind == OffsetEvidence.AtLeast ? words.Max(w => w.Word.Celsius) : words.Min(w => w.Word.Celsius));
        return (new(
            id, Say(estimate, [.. words.Select(w => w.Word)]),
            [.. words.Select(w => new ComparedCone(
                w.Witness.Cone.ToString(), w.Witness.Look ?? "leaning", w.Witness.Degrees, Find(result.Answer, w.Witness.Cone).BendDegrees,
                Math.Round(w.Word.Celsius, 2), Math.Round(w.Word.Sigma, 2), Math.Round(w.Word.Residual(best), 2)))],
            Contradictions(words, best), result.Answer), result.History, estimate);
    }

    /// <summary>The offset at which the cone would look as it did: I(history + δ) = I seen. From the histogram, good to 1e-3 of I, which is 0.02 K.</summary>
    private OffsetWord Word(Witness witness, ConeChart chart, double? rate, List<(double Kelvin, double Hours)> bins, HeatWorkAnswer answer)
    {
        var meter = calculator.Meter(chart, rate);
        var curve = meter.CurveOf(witness.Cone) ?? throw new RefusedException(new Finding("cone-not-on-chart", witness.Field + "/cone", witness.Cone.ToString(), $"Chart {chart.Id} has no curve for cone {witness.Cone}.", ["a cone of the chart"]));
        var wanted = witness.Look is "down" ? 1 : witness.Look is "standing" ? ConeBend.Progress(StandingDegrees) : ConeBend.Progress(witness.Degrees!.Value);
        var (low, high) = (-Widest, Widest);
        while (high - low > 0.005)
        {
            var middle = 0.5 * (low + high);
            if (bins.Sum(b => b.Hours * curve.BendRate(b.Kelvin + middle)) < wanted) low = middle;
            else high = middle;
        }

        // The thermocouple is what is being estimated: its own part of σ stays out.
        var own = Find(answer, witness.Cone).SigmaCelsius;
        var shared = answer.Uncertainty;
        var sigma = Math.Sqrt(Math.Max(1, (own * own) - (shared.ThermocoupleCelsius * shared.ThermocoupleCelsius) - (shared.DriftCelsius * shared.DriftCelsius)) + (witness.Look is "down" ? 0 : ConeBend.ClaimKelvin * ConeBend.ClaimKelvin));
        return new(witness.Look switch { "down" => OffsetEvidence.AtLeast, "standing" => OffsetEvidence.AtMost, _ => OffsetEvidence.About }, 0.5 * (low + high), sigma);
    }

    private const double Widest = 150;

    // Less than this is not seen as a movement.
    private const double StandingDegrees = 15;

    private static ConeResult Find(HeatWorkAnswer answer, Cone cone) => answer.Cones.First(c => c.Cone == cone.ToString());

    private static List<string> Contradictions(List<(Witness Witness, OffsetWord Word)> words, double best)
    {
        var found = new List<string>();
        foreach (var (hot, cold) in words.SelectMany(h => words.Select(c => (h.Witness, c.Witness))))
        {
            if (hot.Cone > cold.Cone && Lean(hot) > Lean(cold)) found.Add($"Cone {hot.Cone} went further than cone {cold.Cone}, which goes down first: were they mixed up, set differently, or in different places?");
        }

        foreach (var group in words.GroupBy(w => w.Witness.Cone).Where(g => g.Select(w => Lean(w.Witness)).Distinct().Count() > 1))
        {
            if (Math.Abs(group.Max(w => w.Word.Celsius) - group.Min(w => w.Word.Celsius)) > 2 * group.Max(w => w.Word.Sigma)) found.Add($"Two cones {group.Key} looked different: the kiln was uneven, or one was set differently.");
        }

        found.AddRange(words.Where(w => Math.Abs(w.Word.Residual(best)) > Contradiction)
            .Select(w => FormattableString.Invariant($"Cone {w.Witness.Cone} lies {Math.Abs(w.Word.Residual(best)):0.#} standard deviations from what the others say.")));
        return found;
    }

    private static double Lean(Witness witness) => witness.Degrees ?? (witness.Look == "down" ? 90 : 0);

    private static MeterOffset Pooled(List<(ComparedFiring Answer, HeatHistory History, (double Offset, double Error)? Estimate)> compared)
    {
        var estimates = compared.Select(c => c.Estimate).OfType<(double Offset, double Error)>().ToList();
        var count = compared.Where(c => c.Estimate is not null).Sum(c => c.Answer.Observations.Count);
        var pooled = MeterOffsetEstimate.Pool(estimates);
        return pooled is { } p
            ? Offset(p, count, FormattableString.Invariant($"From {estimates.Count} of {compared.Count} firings the kiln is {Words(p.Offset)} ± {p.Error:0.#} °C."))
            : new(null, null, null, null, null, null, 0, "No firing gives more than a bound; put in a cone that leans, or one that stays standing beside one that goes down.");
    }

    private static MeterOffset Say((double Offset, double Error)? estimate, OffsetWord[] words)
    {
        if (estimate is { } e) return Offset(e, words.Length, FormattableString.Invariant($"The kiln was {Words(e.Offset)} ± {e.Error:0.#} °C."));
        var down = words[0].Kind == OffsetEvidence.AtLeast;
        var bound = down ? words.Max(w => w.Celsius) : words.Min(w => w.Celsius);
        return new(null, null, null, null, down ? Math.Round(bound, 2) : null, down ? null : Math.Round(bound, 2), words.Length, FormattableString.Invariant(
            $"True minus meter is at {(down ? "least" : "most")} {bound:0.#} °C; cones that are all {(down ? "down" : "standing")} can't say more."));
    }

    private static MeterOffset Offset((double Offset, double Error) e, int count, string message) => new(
        Math.Round(e.Offset, 2), Math.Round(e.Error, 2), Math.Round(e.Offset * 1.8, 2), Math.Round(e.Error * 1.8, 2), null, null, count, message);

    private static string Words(double offset) => FormattableString.Invariant($"{Math.Abs(offset):0.#} °C {(offset >= 0 ? "hotter" : "cooler")} than the meter says,");
}
