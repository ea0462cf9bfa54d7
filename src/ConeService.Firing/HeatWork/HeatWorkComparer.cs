using ConeService.Contract.Answers;
using ConeService.Contract.Cones;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Problems;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.HeatWork;

/// <summary>A firing that was read, with its witness cones.</summary>
/// <param name="Firing">The firing.</param>
/// <param name="Witnesses">Its cones.</param>
/// <param name="Id">Its name, or its number.</param>
/// <param name="At">JSON pointer to it.</param>
internal sealed record WitnessedReading(ReadFiring Firing, List<Witness> Witnesses, string Id, string At);

/// <summary>Estimates from witness cones how far a meter is off: true temperature minus that of the meter.</summary>
/// <param name="calculator">Follows what the meter says.</param>
internal sealed class HeatWorkComparer(HeatWorkCalculator calculator)
{
    private static readonly Message[] Notes =
        [Message.Of("heat-work.note-offset"), Message.Of("heat-work.note-evidence"), Message.Of("heat-work.note-pooled")];

    /// <summary>Answers a request, with the history of its first firing for a figure.</summary>
    /// <exception cref="RefusedException">A firing or an observation can't be read.</exception>
    public (CompareAnswer Answer, HeatHistory History) Answer(CompareRequest request)
    {
        var together = new Together();
        together.Try(() => HeatWorkCheck.Require(request));
        var firings = Read(request, together);
        together.Done();
        var several = request.Firings is not null;
        var compared = firings.Patiently().Select(f => Compare(f!)).ToList();
        var trend = several ? MeterTrends.Of([.. compared.Select(c => c.Estimate)]) : null;
        var pooled = several
            ? MeterOffsets.Pooled([.. compared.Select(c => (c.Estimate, c.Answer.Observations.Count))], trend?.Drifts == true)
            : null;
        var seen = compared.SelectMany(c => c.Seen).ToList();
        return (
            new(
                calculator.Charts.Dataset.VersionId, trend, pooled, [.. compared.Select(c => c.Answer)], Notes,
                // Bases are ordered from the strongest to the weakest.
                Basis: seen.Max(v => v.Basis),
                Confidence: ConfidenceOrder.Weakest([Confidence.Derived, .. seen.Select(v => v.Confidence)]),
                Sources:
                [
                    .. seen.SelectMany(v => v.Cells).Select(c => c.Source)
                        .Concat(compared.SelectMany(c => c.Answer.HeatWork.Sources)).Distinct(StringComparer.Ordinal),
                ],
                Assumed: [.. compared.SelectMany(c => c.Answer.HeatWork.Assumed)]),
            compared[0].History);
    }

    /// <summary>Reads every firing with its cones; what is wrong with one hides nothing of the others.</summary>
    /// <param name="request">The request, whatever is wrong with it.</param>
    /// <param name="together">Where findings go.</param>
    public IReadOnlyList<WitnessedReading> Read(CompareRequest request, Together together)
    {
        var firings = request.Firings ?? [request];
        if (firings.Count is 0 or > HeatWorkLimits.MostFirings)
        {
            together.Findings.Add(new(
                FindingCodes.EmptyRequest, "/firings", null, Message.Of("heat-work.firings-count"),
                [Message.Of("heat-work.fifty-firings", ("most", HeatWorkLimits.MostFirings))]));
            return [];
        }

        var read = new List<WitnessedReading>();
        foreach (var (i, firing) in firings.Patiently().Index())
        {
            if (firing is null) continue;
            var at = request.Firings is null ? "" : $"/firings/{i}";
            var witnesses = WitnessReader.Read(calculator.Charts.Scale, firing, at, together.Findings);
            var followed = calculator.Read(firing, at, together);
            foreach (var witness in witnesses)
            {
                if (followed.Settings?.Chart is { } chart && chart.Find(witness.Cone) is null)
                    together.Findings.Add(NoCurve(witness, chart));
            }

            read.Add(new(followed, witnesses, firing.Id ?? $"{i + 1}", at));
        }

        return read;
    }

    private static Finding NoCurve(Witness witness, ConeChart chart) => new(
        FindingCodes.ConeNotOnChart, witness.Field + "/cone", witness.Cone.ToString(),
        Message.Of("heat-work.no-curve", ("chart", chart.Id), ("cone", witness.Cone.ToString())),
        [Message.Of("heat-work.a-cone-of-the-chart")]);

    private Compared Compare(WitnessedReading firing)
    {
        var witnesses = firing.Witnesses;
        var result = calculator.Answer(firing.Firing, firing.At);
        var chart = firing.Firing.Settings!.Chart;
        var shifts = new HistoryShifts(result.History);
        var curves = calculator.Curves(chart, result.Answer.RateOverLast100CelsiusPerHour);
        var seen = witnesses.Select(w => new SeenCone(w, EvidenceOf(w, chart, curves, shifts, result.Answer))).ToList();
        List<OffsetEvidence> evidence = [.. seen.Select(s => s.Evidence)];
        var estimate = MeterOffsetEstimate.From(evidence);
        var best = estimate?.Offset ?? MeterOffsetEstimate.Bound(evidence);
        var rate = HeatWorkCalculator.RateOn(chart, result.Answer.RateOverLast100CelsiusPerHour);
        return new(
            new(firing.Id, MeterOffsets.Of(estimate, evidence),
            [.. seen.Select(s => new ComparedCone(
                s.Witness.Cone.ToString(), s.Witness.Look ?? "leaning", s.Witness.Degrees, Find(result.Answer, s.Witness.Cone).BendDegrees,
                Math.Round(s.Evidence.Told, 2), Math.Round(s.Evidence.Sigma, 2), Math.Round(s.Evidence.Residual(best), 2)))],
            WitnessContradictions.Find(seen, best), result.Answer), result.History, estimate,
            [.. witnesses.Select(w => chart.Find(w.Cone)!.Computed(rate)!)]);
    }

    /// <summary>What a cone says: the offsets at which it would look as it did, I(history + δ) = I seen.</summary>
    private static OffsetEvidence EvidenceOf(
        Witness witness, ConeChart chart, ConeCurves curves, HistoryShifts shifts, HeatWorkAnswer answer)
    {
        var curve = curves.Find(witness.Cone) ?? throw new RefusedException(NoCurve(witness, chart));
        double At(double progress) => shifts.To(curve, progress);
        var sigma = SigmaOf(witness, answer);
        return witness.Look switch
        {
            "down" => new(EvidenceKind.AtLeast, At(1), sigma),
            "standing" => new(EvidenceKind.AtMost, At(ConeBend.StandingProgress), sigma),
            "started" => new(EvidenceKind.Between, At(ConeBend.FirstMovement), sigma, At(ConeBend.StandingProgress)),
            _ => new(EvidenceKind.About, At(ConeBend.Progress(witness.Degrees!.Value)), sigma),
        };
    }

    private static double SigmaOf(Witness witness, HeatWorkAnswer answer)
    {
        // The thermocouple is what is being estimated: its own part of σ stays out.
        var own = Find(answer, witness.Cone).SigmaCelsiusDifference;
        var (tolerance, drift) = (answer.Uncertainty.ThermocoupleCelsiusDifference, answer.Uncertainty.DriftCelsiusDifference);
        // Where standing ends is as soft as a hand at two o'clock.
        var lean = witness.Look is "down" ? 0 : ConeBend.ReadingKelvin(witness.Degrees ?? ConeBend.StandingDegrees);
        return Math.Sqrt(Math.Max(1, (own * own) - (tolerance * tolerance) - (drift * drift)) + (lean * lean));
    }

    /// <summary>A firing with its answer.</summary>
    /// <param name="Answer">The answer.</param>
    /// <param name="History">What the meter said.</param>
    /// <param name="Estimate">The offset and its error; null where the cones only bound it.</param>
    /// <param name="Seen">What the curves of the cones that were seen rest on.</param>
    private sealed record Compared(
        ComparedFiring Answer, HeatHistory History, (double Offset, double Error)? Estimate, IReadOnlyList<EndPointValue> Seen);

    private static ConeResult Find(HeatWorkAnswer answer, Cone cone) => answer.Cones.First(c => c.Cone == cone.ToString());
}
