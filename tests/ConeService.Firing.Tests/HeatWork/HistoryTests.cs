using ConeService.Contract.HeatWork;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;
using static ConeService.Firing.Tests.HeatWork.Firings;

namespace ConeService.Firing.Tests.HeatWork;

public class HistoryTests
{
    private static readonly HeatWorkCalculator Calculator = new(Reference.Charts);

    // Hand arithmetic: 20 → 1120 °C in 11 h, 1120 → 1220 in 2 h, half an hour of hold, then 200 °C/h down.
    [Fact]
    public void Rates_and_times_are_read_off_the_history()
    {
        var answer = Calculator.Answer(
            new HeatWorkRequest { Units = "C", Start = 20, Segments = [new(100, 1120), new(50, 1220, 30)], CoolingRate = 200 }).Answer;
        Assert.Equal((1220.0, 2228.0, 780.0), (answer.PeakCelsius, answer.PeakFahrenheit, answer.PeakAtMinutes));
        // 1119 → 1219 °C: 0.01 h at 100 °C/h and 1.98 h at 50 °C/h.
        Assert.Equal(100 / 1.99, answer.RateOverLast100CelsiusPerHour!.Value, 0.01);
        Assert.Equal(200, answer.CoolingThrough573CelsiusPerHour!.Value, 0.01);
        // 72 min to 1120 °C, 120 to the top, 30 of hold, 66 down.
        Assert.Equal(72 + 120 + 30 + 66, answer.Above1000CelsiusMinutes, 0.01);
        Assert.Equal(780 + 30 + 360, answer.DurationMinutes, 0.01);
    }

    [Fact]
    public void Units_change_nothing_but_the_numbers_sent()
    {
        var celsius = Calculator.Answer(
            new HeatWorkRequest { Units = "C", Start = 20, Segments = [new(60, 1222, 10)], CoolingRate = 250 }).Answer;
        var fahrenheit = Calculator.Answer(
            new HeatWorkRequest { Units = "F", Start = 68, Segments = [new(108, 2231.6, 10)], CoolingRate = 450 }).Answer;
        foreach (var (c, f) in celsius.Cones.Zip(fahrenheit.Cones))
            Assert.Equal(c.MarginCelsiusDifference, f.MarginCelsiusDifference, 1e-3);
    }

    // Natural cooling that starts at 250 °C/h slows down, so it does more work than a steady 250 °C/h; the first 30 K do most of it.
    [Fact]
    public void Natural_cooling_does_a_little_more_than_its_first_rate()
    {
        double Of(CoolDown cooling) => Ramp(60, 1222, 0, cooling).Progress(Curve("6"));
        var (steady, natural) = (Of(Down(250)), Of(CoolDown.Natural.StartingAt(250, 1222 + Zero, 20 + Zero)));
        Assert.InRange(natural, steady, steady + 0.02);
        // Chords of the exponential, against a thousand times finer ones.
        var tau = 1202.0 / 250;
        HeatPoint[] fine =
            [.. Enumerable.Range(0, 60_001).Select(i => new HeatPoint(tau * i / 10_000, 20 + Zero + (1202 * Math.Exp(-i / 10_000.0))))];
        Assert.Equal(HeatIntegral.Progress(Curve("6"), new(fine)), natural - 1, 3e-5);
    }

    [Fact]
    public void A_full_speed_segment_without_a_limit_says_what_was_taken()
    {
        var answer = Calculator.Answer(new HeatWorkRequest { Units = "C", Segments = [new(null, 1222)] }).Answer;
        Assert.Contains(answer.Assumed, a => a.Pointer == "/fullSpeedRate");
        Assert.Contains(answer.Warnings, w => w.Code == "full-speed-assumed");
        Assert.DoesNotContain(
            Calculator.Answer(new HeatWorkRequest { Units = "C", Segments = [new(null, 1222)], FullSpeedRate = 200 }).Answer.Warnings,
            w => w.Code == "full-speed-assumed");
    }

    [Theory]
    [InlineData("reduction", "witness-self-supporting", "reduction-not-modelled", true)]
    [InlineData("oxidation", "witness-self-supporting", "reduction-not-modelled", false)]
    [InlineData("reduction", "small", "small-cones", true)]
    public void Warnings_say_what_is_not_modelled(string atmosphere, string chart, string code, bool warned)
    {
        var answer = Calculator.Answer(
            new HeatWorkRequest { Units = "C", Segments = [new(60, 1222)], Atmosphere = atmosphere, Chart = chart }).Answer;
        Assert.Equal(warned, answer.Warnings.Any(w => w.Code == code));
    }

    [Theory]
    [InlineData(60, 1190, null)]
    [InlineData(10, 1190, "rate-extrapolated")]
    [InlineData(300, 1190, "rate-extrapolated")]
    [InlineData(700, 1190, "rate-beyond-limits")]
    [InlineData(60, 90, "nothing-down")]
    [InlineData(60, 1480, "scale-exceeded")]
    [InlineData(60, 1222, "thermocouple-beyond-range")]
    public void Warnings_say_how_far_the_answer_reaches(double rate, double peak, string? code)
    {
        var warnings = Calculator.Answer(new HeatWorkRequest { Units = "C", Segments = [new(rate, peak)] }).Answer.Warnings
            .Select(w => w.Code);
        if (code is null) Assert.Empty(warnings);
        else Assert.Contains(code, warnings);
    }

    // A long log and the same firing as a programme must tell the same.
    [Fact]
    public void A_log_tells_what_its_programme_tells()
    {
        var programme = Calculator.Answer(
            new HeatWorkRequest { Units = "C", Start = 20, Segments = [new(100, 1100), new(60, 1222, 10)] }).Answer;
        List<LogSample> samples = [];
        for (var minute = 0.0; minute <= 648 + 122 + 10; minute += 0.5)
            samples.Add(new(minute, minute < 648 ? 20 + (minute / 0.6) : Math.Min(1222, 1100 + minute - 648)));
        var log = Calculator.Answer(new HeatWorkRequest { Units = "C", Log = samples }).Answer;
        Assert.Equal((programme.Reached, programme.Next), (log.Reached, log.Next));
        foreach (var (p, l) in programme.Cones.Zip(log.Cones))
        {
            Assert.Equal(p.MarginCelsiusDifference, l.MarginCelsiusDifference, 0.002);
            Assert.Equal(p.DownAtMinutes ?? -1, l.DownAtMinutes ?? -1, 0.01);
            Assert.Equal(p.ProbabilityDown, l.ProbabilityDown, 0.002);
        }
    }
}
