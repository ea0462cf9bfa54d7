using ConeService.Contract.Quantities;
using ConeService.Data;
using ConeService.Firing.Kilns;
using ConeService.Firing.Kilns.Thermal;

namespace ConeService.Firing.HeatWork.Forecasting;

/// <summary>The modelled kiln, warm as the log has left it.</summary>
/// <param name="replay">The state of chamber, load and wall at the last sample.</param>
/// <param name="fit">Losses and power as the log shows them.</param>
/// <param name="power">Over the power that the model has, for spans.</param>
/// <param name="losses">Over the losses by leak that the model has, for spans.</param>
internal sealed class KilnAhead(KilnReplay replay, KilnFit fit, double power = 1, double losses = 1) : IFiresAhead
{
    public FiringAhead Fire(IReadOnlyList<HeatSegment> segments)
    {
        var balance = new HeatBalance(
            replay.Balance, replay.Physics with { LeakConductance = replay.LeakPerFactor * fit.LeakFactor * losses });
        var record = new FiringRecord(balance);
        var watts = replay.Setup.AvailableKilowatts * 1000 * fit.PowerFactor * power;
        Func<double, double>? available = replay.Setup.Heat == KilnHeat.Electric ? null : replay.Available;
        Func<double, double> most = available is null ? _ => watts : kelvin => watts * available(kelvin);
        var run = new FiringRun(balance, record, most, replay.Physics.Load.DryKelvin, KilnModel.StepSeconds) { Available = available };
        record.Add(0, double.NaN, 0, always: true);
        var (runs, finishes) = (new List<SegmentRun>(segments.Count), true);
        for (var i = 0; i < segments.Count && finishes; i++)
        {
            var (rate, target) = (segments[i].RateKelvinPerHour, segments[i].TargetKelvin - Temperature.KelvinAtZero);
            runs.Add(run.Run(i, new(rate, target, segments[i].HoldHours)));
            finishes = runs[i].RampEndHours is not null;
        }

        var end = run.Hours;
        var opening = run.Cool(KilnModel.OpeningCelsius + Temperature.KelvinAtZero, KilnModel.LongestHours);
        return new(run.Hours > 0 ? record.Chamber : null, end, opening, runs, finishes);
    }
}
