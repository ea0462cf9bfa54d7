using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>Estimates from witness cones how far a meter is off: true temperature minus that of the meter.</summary>
/// <param name="calculator">Follows what the meter says.</param>
internal sealed class HeatWorkComparer(HeatWorkCalculator calculator)
{
    private const double Widest = 150;

    // Less than this is not seen as a movement.
    private const double StandingDegrees = 15;

    private static readonly Message[] Notes =
        [Message.Of("heat-work.note-offset"), Message.Of("heat-work.note-evidence"), Message.Of("heat-work.note-pooled")];

    /// <summary>Answers a request, with the history of its first firing for a figure.</summary>
    /// <exception cref="RefusedException">A firing or an observation can't be read.</exception>
    public (CompareAnswer Answer, HeatHistory History) Answer(CompareRequest request)
    {
        var several = request.Firings is not null;
        var firings = request.Firings ?? [request];
        if (firings.Count is 0 or > HeatWorkLimits.MostFirings)
        {
            throw new RefusedException(new Finding(
                FindingCodes.EmptyRequest, "/firings", null, Message.Of("heat-work.firings-count"),
                [Message.Of("heat-work.fifty-firings", ("most", HeatWorkLimits.MostFirings))]));
        }

        var findings = new List<Finding>();
        string At(int firing) => several ? $"/firings/{firing}" : "";
        var witnesses = firings.Select((f, i) => WitnessReader.Read(calculator.Charts.Scale, f ?? new(), At(i), findings)).ToList();
        if (findings.Count > 0) throw new RefusedException(findings);
        var compared = firings.Select((f, i) => Compare(f!, witnesses[i], f!.Id ?? $"{i + 1}", At(i))).ToList();
        return (new(
            calculator.Charts.Dataset.VersionId, [.. compared.Select(c => c.Answer)],
            several ? MeterOffsets.Pooled([.. compared.Select(c => (c.Estimate, c.Answer.Observations.Count))]) : null,
            Notes), compared[0].History);
    }

    private (ComparedFiring Answer, HeatHistory History, (double Offset, double Error)? Estimate) Compare(
        WitnessedFiring firing, List<Witness> witnesses, string id, string at)
    {
        var result = calculator.Answer(firing, at);
        var chart = calculator.Settings(firing, at).Chart;
        var bins = new ResidenceHistogram(result.History).Bins().ToList();
        var curves = calculator.Curves(chart, result.Answer.RateOverLast100CelsiusPerHour);
        var seen = witnesses.Select(w => new SeenCone(w, EvidenceOf(w, chart, curves, bins, result.Answer))).ToList();
        List<OffsetEvidence> evidence = [.. seen.Select(s => s.Evidence)];
        var estimate = MeterOffsetEstimate.From(evidence);
        var best = estimate?.Offset ?? MeterOffsetEstimate.Bound(evidence);
        return (new(
            id, MeterOffsets.Of(estimate, evidence),
            [.. seen.Select(s => new ComparedCone(
                s.Witness.Cone.ToString(), s.Witness.Look ?? "leaning", s.Witness.Degrees, Find(result.Answer, s.Witness.Cone).BendDegrees,
                Math.Round(s.Evidence.Celsius, 2), Math.Round(s.Evidence.Sigma, 2), Math.Round(s.Evidence.Residual(best), 2)))],
            WitnessContradictions.Find(seen, best), result.Answer), result.History, estimate);
    }

    /// <summary>
    /// The offset at which the cone would look as it did: I(history + δ) = I seen. From the histogram, good to 1e-3 of I,
    /// which is 0.02 K.
    /// </summary>
    private static OffsetEvidence EvidenceOf(
        Witness witness, ConeChart chart, ConeCurves curves, List<(double Kelvin, double Hours)> bins, HeatWorkAnswer answer)
    {
        var curve = curves.Find(witness.Cone) ?? throw new RefusedException(new Finding(
            FindingCodes.ConeNotOnChart, witness.Field + "/cone", witness.Cone.ToString(),
            Message.Of("heat-work.no-curve", ("chart", chart.Id), ("cone", witness.Cone.ToString())),
            [Message.Of("heat-work.a-cone-of-the-chart")]));
        var wanted = witness.Look switch
        {
            "down" => 1,
            "standing" => ConeBend.Progress(StandingDegrees),
            _ => ConeBend.Progress(witness.Degrees!.Value),
        };
        var (low, high) = (-Widest, Widest);
        while (high - low > 0.005)
        {
            var middle = 0.5 * (low + high);
            if (bins.Sum(b => b.Hours * curve.BendRate(b.Kelvin + middle)) < wanted) low = middle;
            else high = middle;
        }

        var kind = witness.Look switch { "down" => EvidenceKind.AtLeast, "standing" => EvidenceKind.AtMost, _ => EvidenceKind.About };
        return new(kind, 0.5 * (low + high), SigmaOf(witness, answer));
    }

    private static double SigmaOf(Witness witness, HeatWorkAnswer answer)
    {
        // The thermocouple is what is being estimated: its own part of σ stays out.
        var own = Find(answer, witness.Cone).SigmaCelsiusDifference;
        var (tolerance, drift) = (answer.Uncertainty.ThermocoupleCelsiusDifference, answer.Uncertainty.DriftCelsiusDifference);
        var lean = witness.Look is "down" ? 0 : ConeBend.ClaimKelvin;
        return Math.Sqrt(Math.Max(1, (own * own) - (tolerance * tolerance) - (drift * drift)) + (lean * lean));
    }

    private static ConeResult Find(HeatWorkAnswer answer, Cone cone) => answer.Cones.First(c => c.Cone == cone.ToString());
}
