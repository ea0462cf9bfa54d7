using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Kilns.Calibration;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.Kilns;

/// <summary>How much a calibration computes, counted in steps of the heat balance.</summary>
public class CalibrationWorkTests
{
    private static readonly Kiln Electric = new(default, "electric", VolumeLitres: 150, Kilowatts: 9);

    // What is computed after a search that was ended: errors (seven kilns), each firing by the found one and by one with more power, and
    // what is led along the logs. A kiln that does not end its programme goes on for half as long again, at a step a minute.
    private const double MostAfterwards = 10 * 1.5 * 60 * CalibrateRequest.MostHours;

    // As long as all of them together may be, with meters that no kiln explains.
    [Theory]
    [InlineData(30, 14, true)]
    [InlineData(30, 14, false)]
    [InlineData(3, 250, true)]
    [InlineData(1, 250, false)]
    public void The_longest_firings_stay_within_their_steps(int firings, double hold, bool segments)
    {
        var read = Read(new("C", Electric, Fired(firings, hold, segments)));
        var simulation = new KilnSimulation(Reference.Dataset, new(Reference.Dataset), read);
        var found = new KilnEstimator(simulation, read, TestContext.Current.CancellationToken).Estimate();
        Assert.True(double.IsFinite(found.Guess.LeakFactor));
        Assert.InRange(simulation.Steps, 1, KilnEstimator.MostSteps + MostAfterwards);
    }

    [Fact]
    public void More_hours_than_are_allowed_are_told()
    {
        var finding = Assert.Single(Assert.Throws<RefusedException>(() => Read(new("C", Electric, Fired(30, 40, false)))).Findings);
        Assert.Equal(("too-much-at-once", "/firings"), (finding.Code, finding.Field));
        Assert.EndsWith(" h", finding.Value, StringComparison.Ordinal);
        Assert.Contains("800 h", Assert.Single(finding.Allowed).ToString(), StringComparison.Ordinal);
    }

    // A segment takes a step at least, however short it is.
    [Fact]
    public void Many_segments_count_as_minutes()
    {
        var zigzag = Enumerable.Range(0, 10_000).Select(i => new ProgrammeSegment(2000, i % 2 == 0 ? 306 : 300)).ToList();
        var firings = Fired(5, 4, false).Select(f => f with { Segments = zigzag }).ToList();
        var finding = Assert.Single(Assert.Throws<RefusedException>(() => Read(new("C", Electric, firings))).Findings);
        Assert.Equal("too-much-at-once", finding.Code);
    }

    // Where the chamber is known, the power that it takes is linear in the leak: nothing is led a second time for another leak, and what
    // was taken is what leading it with that leak gives.
    [Fact]
    public void A_log_is_led_along_once_for_each_wall()
    {
        var read = Read(new("C", Electric, Fired(1, 4, false)));
        var simulation = new KilnSimulation(Reference.Dataset, new(Reference.Dataset), read);
        var first = simulation.KilowattHoursAlong(read[0], new(90, 1, 1));
        var steps = simulation.Steps;
        var leaky = simulation.KilowattHoursAlong(read[0], new(90, 3, 1));
        Assert.Equal(steps, simulation.Steps);
        Assert.True(leaky > first);
        var stated = Read(new("C", Electric with { LeakFactor = 3 }, Fired(1, 4, false)));
        var led = new KilnSimulation(Reference.Dataset, new(Reference.Dataset), stated).KilowattHoursAlong(stated[0], new(90, 3, 1));
        Assert.Equal(led, leaky, 1e-6 * led);
    }

    // The numbers are those that were told before the log was led once and the steps of the heat balance were begun from where they lead;
    // a fifth of a standard error is no difference.
    [Fact]
    public void The_estimate_is_what_it_was()
    {
        List<CalibrationFiring> firings = [];
        for (var i = 0; i < 2; i++)
        {
            List<LogSample> log = [];
            for (var minute = 0; minute <= 1200; minute += 5)
            {
                var (hours, off) = (minute / 60.0, 10.25);
                var celsius = hours < 10 ? 20 + (116 * hours) : hours < off ? 1180
                    : 25 + (1155 * ((0.35 * Math.Exp(-(hours - off) / 1.25)) + (0.65 * Math.Exp(-(hours - off) / 5))));
                log.Add(new(minute, Math.Round(celsius, 1)));
            }

            firings.Add(new(
                Log: log, Load: new(KilogramsWare: 12 + (2 * i), KilogramsFurniture: 10), MeterKilowattHours: 33 + i));
        }

        var told = FiringReference.Open(Reference.Dataset).Kilns.Calibrate(
            new("C", new(default, "electric", VolumeLitres: 74, Kilowatts: 5.7), firings), TestContext.Current.CancellationToken);
        Assert.Equal(39, told.WallThicknessMillimetres.Value!.Value, 0.2 * 0.3);
        Assert.Equal(33.06, told.Firings[0].ExpectedKilowattHours, 0.02);
        Assert.Equal(34.02, told.Firings[1].ExpectedKilowattHours, 0.02);
        Assert.Equal(19.5, told.Firings[0].MissCelsiusDifference!.Value, 0.1);
        Assert.Equal(19.3, told.Firings[1].MissCelsiusDifference!.Value, 0.1);
    }

    private static IReadOnlyList<LoggedFiring> Read(CalibrateRequest request)
    {
        var together = new Together();
        var read = new CalibrationReader(new HeatWorkCalculator(Reference.Charts), new(Reference.Dataset)).Read(request, [], together);
        together.Done();
        return read;
    }

    private static List<CalibrationFiring> Fired(int count, double hold, bool segments) =>
    [
        .. Enumerable.Range(0, count).Select(i => new CalibrationFiring(
            Log: [.. Enumerable.Range(0, 60).Select(k => Sample(k, hold))],
            Segments: segments ? [new(300, 1220, hold * 60)] : null,
            Load: new(KilogramsWare: 25 + i),
            MeterKilowattHours: 700 - (5 * i))),
    ];

    private static LogSample Sample(int k, double hold)
    {
        var (hours, end) = ((hold + 12) * k / 59, hold + 4);
        return new(
            Math.Round(hours * 60),
            Math.Round(hours < 4 ? 20 + (300 * hours) : hours < end ? 1220 : 25 + (1195 * Math.Exp((end - hours) / 6))));
    }
}
