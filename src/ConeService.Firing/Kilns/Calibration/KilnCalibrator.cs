using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Quantities;
using ConeService.Contract.Texts;
using ConeService.Data;
using ConeService.Firing.HeatWork;

namespace ConeService.Firing.Kilns.Calibration;

/// <summary>Answers what firings tell of their kiln. Safe for parallel use; keeps nothing.</summary>
/// <param name="calculator">Follows firings.</param>
/// <param name="model">The kiln model.</param>
internal sealed class KilnCalibrator(HeatWorkCalculator calculator, KilnModel model)
{
    // Rest errors of the model itself are in no scatter; the docs say what it claims.
    private static readonly Message[] Notes =
        [Message.Of("calibration.note-model"), Message.Of("calibration.note-load"), Message.Of("calibration.note-meter")];

    private readonly CalibrationReader reader = new(calculator, model);
    private readonly HeatWorkComparer comparer = new(calculator);

    /// <summary>Answers a request.</summary>
    /// <exception cref="RefusedException">Something can't be read; carries every finding.</exception>
    /// <exception cref="OperationCanceledException">Nobody waits for the answer any more.</exception>
    public CalibrateAnswer Answer(CalibrateRequest request, CancellationToken cancel)
    {
        var assumed = new List<Assumption>();
        var together = new Together();
        together.Try(() => CalibrateCheck.Require(request));
        var firings = reader.Read(request, assumed, together);
        var compared = together.Try(() => Compare(request, isRead: !together.Any));
        together.Done();
        var simulation = new KilnSimulation(calculator.Charts.Dataset, model, firings);
        var kiln = new KilnEstimator(simulation, firings, cancel).Estimate();
        var told = firings
            .Select((f, i) => Told(f, kiln.Fired[i], simulation.KilowattHoursAlong(f, kiln.Guess), kiln.Powers[i])).ToList();
        // A single firing is pooled with none; with several, those without cones have no say.
        var offsets = compared is null ? [] : Offsets(request, compared);
        var trend = new CalibrationTrend(
            compared?.Trend is { } offset ? offset with { LatestFiring = offsets[offset.LatestFiring - 1] + 1 } : null,
            CreepTrends.Of(told.Select(t => t.EndMinutes / t.ExpectedEndMinutes)),
            CreepTrends.Of(told.Select(t => t.MeterKilowattHours / t.ExpectedKilowattHours)),
            CreepTrends.Of(told.Select(t => t.Kilowatts)));
        var (wall, leak, power) = Estimates(firings, kiln);
        return new(
            calculator.Charts.Dataset.VersionId,
            Kiln(request.Kiln!, firings[0].Setup, wall, leak, power),
            wall, leak, power,
            compared is null ? null : compared.Pooled ?? compared.Firings[0].Offset,
            told,
            trend,
            CalibrationVerdict.Of(wall, leak, power, trend, compared?.Pooled ?? compared?.Firings[0].Offset),
            kiln.CutShort ? [Message.Of("calibration.note-cut-short"), .. Notes] : Notes,
            firings[0].Setup.Sources,
            assumed,
            Confidence.Estimate);
    }

    // What was found wrong with the firings themselves is told already; the cones are judged beside it.
    private CompareAnswer? Compare(CalibrateRequest request, bool isRead)
    {
        var firings = (request.Firings ?? []).Take(CalibrateRequest.MostFirings).Select(f => f?.Observations is null
            ? null : new WitnessedFiring
            {
                Units = request.Units,
                Log = f.Log,
                Chart = request.Chart,
                Thermocouple = request.Thermocouple ?? request.Kiln?.Thermocouple,
                Atmosphere = request.Atmosphere,
                Id = f.Id,
                Observations = f.Observations,
            }).ToList();
        var with = firings.Index().Where(f => f.Item is not null).ToList();
        if (with.Count == 0) return null;
        try
        {
            var asked = new CompareRequest { Firings = [.. with.Select(f => f.Item)] };
            if (isRead) return comparer.Answer(asked).Answer;
            var cones = new Together();
            _ = comparer.Read(asked, cones);
            cones.Done();
            return null;
        }
        catch (RefusedException refused)
        {
            // The comparison numbers only the firings that have cones.
            throw new RefusedException([.. refused.Findings.Select(f => f with { Field = Renumbered(f.Field, with) })]);
        }
    }

    private static string Renumbered(string field, List<(int Index, WitnessedFiring? Item)> with)
    {
        var parts = field.Split('/');
        if (parts.Length < 3 || parts[1] != "firings" || !int.TryParse(parts[2], out var number)) return field;
        parts[2] = FormattableString.Invariant($"{with[number].Index}");
        // What is said once for all firings stands beside them.
        return parts.Length > 3 && parts[3] is "chart" or "thermocouple" or "atmosphere" or "units"
            ? "/" + string.Join('/', parts[3..])
            : string.Join('/', parts);
    }

    private static List<int> Offsets(CalibrateRequest request, CompareAnswer compared)
    {
        List<int> with = [.. request.Firings!.Index().Where(f => f.Item!.Observations is not null).Select(f => f.Index)];
        return with.Count == compared.Firings.Count ? with : [];
    }

    private static CalibratedFiring Told(
        LoggedFiring firing, SimulatedFiring fired, double kilowattHours, (double Factor, double Error)? power)
    {
        var (bins, square) = (firing.Bins, 0.0);
        for (var i = 0; i < bins.Length; i++) square += Math.Pow(bins[i] - fired.Bins[i], 2);
        return new(
            firing.Id,
            Math.Round(firing.Smooth.Peak.Kelvin - Temperature.KelvinAtZero, 1),
            Math.Round((firing.EndHours - firing.Log.Start.Hours) * 60, 1),
            fired.EndHours is { } end ? Math.Round(end * 60, 1) : null,
            firing.MeterKilowattHours,
            Math.Round(kilowattHours, 2),
            power is { } own ? Math.Round(firing.Setup.RatedKilowatts * own.Factor, 2) : null,
            bins.Length == 0 ? null : Math.Round(Math.Sqrt(square / bins.Length), 1));
    }

    private static (KilnEstimate Wall, KilnEstimate Leak, KilnEstimate Power) Estimates(
        IReadOnlyList<LoggedFiring> firings, EstimatedKiln kiln)
    {
        var (setup, guess) = (firings[0].Setup, kiln.Guess);
        var seen = firings.Any(f => f.Cools || f.MeterKilowattHours is not null);
        KilnEstimate Of(bool told, double value, double error, int digits, double before, Message why) => told
            ? new(Math.Round(value, digits), Math.Round(error, digits + 1), before, null)
            : new(null, null, before, why);
        return (
            Of(
                kiln.WallTold, guess.WallMillimetres, guess.WallMillimetres * kiln.Errors[0], 0, setup.WallMillimetres,
                seen ? Message.Of("calibration.wall-and-leak", ("wall", setup.WallMillimetres)) : Message.Of("calibration.no-loss-seen")),
            Of(
                kiln.LeakTold, guess.LeakFactor, kiln.Errors[1], 2, setup.LeakFactor,
                Message.Of("calibration.no-loss-seen")),
            Of(
                kiln.PowerTold, setup.RatedKilowatts * guess.PowerFactor, setup.RatedKilowatts * guess.PowerFactor * kiln.Errors[2], 2,
                setup.RatedKilowatts,
                firings.Any(f => f.Programme is not null)
                    ? Message.Of("calibration.power-not-reached")
                    : Message.Of("calibration.power-needs-programme")));
    }

    // What could not be told stands as the caller sent it, also where that is nothing. What nothing here reads, and no fit, is left out.
    private static Kiln Kiln(Kiln sent, KilnSetup setup, KilnEstimate wall, KilnEstimate leak, KilnEstimate power) => sent with
    {
        Thermocouple = null,
        Shelves = null,
        Wall = wall.Value is { } millimetres ? new KilnWall(setup.WallMaterial, millimetres) : sent.Wall,
        LeakFactor = leak.Value is { } factor ? factor : sent.LeakFactor,
        Kilowatts = power.Value is { } kilowatts ? kilowatts : sent.Kilowatts,
    };
}
