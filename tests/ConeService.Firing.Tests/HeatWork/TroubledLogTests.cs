using System.Buffers;
using System.IO.Pipelines;
using System.Text;
using ConeService.Contract.Answers;
using ConeService.Contract.HeatWork;
using ConeService.Firing.HeatWork;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests.HeatWork;

public class TroubledLogTests
{
    private static readonly HeatWorkReference HeatWork = new(new HeatWorkCalculator(Reference.Charts));

    public static TheoryData<string> Names => [.. TroubledLogs.All.Select(l => l.Name)];

    // The clean firing peaks at 1222.6 °C, beyond the range of class 2 of type K.
    private const string OfTheFiring = "thermocouple-beyond-range";

    [Fact]
    public void There_are_forty_troubles_at_least() => Assert.InRange(TroubledLogs.All.Count, 40, int.MaxValue);

    [Theory]
    [MemberData(nameof(Names))]
    public async Task A_troubled_log_is_read_as_the_clean_one_or_asked_back(string name)
    {
        var log = TroubledLogs.All.Single(l => l.Name == name);
        if (log.Expected.StartsWith('?'))
        {
            var refused = await Assert.ThrowsAsync<RefusedException>(() => Follow(log.File, log.Reading));
            Assert.Equal(log.Expected[2..], refused.Findings[0].Code);
            Assert.All(refused.Findings, f => Assert.NotEmpty(f.Allowed));
            return;
        }

        var (clean, answer) = (await Follow(Clean, new()), await Follow(log.File, log.Reading));
        Assert.Equal(
            log.Expected.Split(' ', StringSplitOptions.RemoveEmptyEntries),
            answer.Warnings.Select(w => w.Code).Where(c => c != OfTheFiring).Order());
        // 0.05 of the way to the next cone.
        Assert.InRange(Place(answer) - Place(clean), -0.05, 0.05);
    }

    [Fact]
    public async Task Both_readings_of_a_number_and_of_a_date_are_named()
    {
        var number = TroubledLogs.All.Single(l => l.Name == "only numbers that may be thousands");
        var finding = Assert.Single((await Assert.ThrowsAsync<RefusedException>(() => Follow(number.File, number.Reading))).Findings);
        Assert.Equal(["1.020", "1020"], finding.Allowed.Select(a => a.ToString()));
        var date = TroubledLogs.All.Single(l => l.Name == "every date of one day, both ways");
        finding = Assert.Single((await Assert.ThrowsAsync<RefusedException>(() => Follow(date.File, date.Reading))).Findings);
        Assert.Equal(["?dateOrder=day-first", "?dateOrder=month-first"], finding.Allowed.Select(a => a.ToString()));
        Assert.Contains("2026-04-03", finding.Message.ToString(), StringComparison.Ordinal);
        Assert.Contains("2026-03-04", finding.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task An_excursion_is_named_with_its_times_and_an_error_word_once_with_its_count()
    {
        var open = await Answer("open for five minutes early");
        var warning = open.Warnings.Single(w => w.Code == "excursions-cut");
        Assert.Equal((6, 180.0, 190.0), (warning.Count, warning.AtMinutes[0], warning.AtMinutes[^1]));
        Assert.Contains("1370 °C from minute 180 to 190", warning.Message.ToString(), StringComparison.Ordinal);
        var words = (await Answer("an error word for a few minutes")).Warnings.Single(w => w.Code == "readings-missing");
        Assert.Equal(6, words.Count);
        Assert.Contains("“OPEN” (6)", words.Message.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task Each_thermocouple_is_answered_and_the_coolest_decides()
    {
        var log = (await Answer("three thermocouples")).Log!;
        Assert.Equal("bottom C", log.DecidedBy);
        Assert.Equal(["bottom C", "middle C", "top C"], log.Zones.Select(z => z.Column));
        // All three run in parallel, six degrees from bottom to top; after a hold a degree of the whole firing counts for a little more
        // than one at the end of a ramp (docs/heat-work.md, g).
        Assert.InRange(log.SpreadCelsiusDifference!.Value, 6, 7);
        Assert.Equal([1222.6, 1224.6, 1228.6], log.Zones.Select(z => z.PeakCelsius));
        var dead = (await Answer("one of two thermocouples dead")).Warnings.Single(w => w.Code == "zones-differ");
        Assert.Contains("top C", dead.Message.ToString(), StringComparison.Ordinal);
    }

    // 1260 °C is the most for which ASTM E230 states a tolerance of type K; minutes for hours and the other way round.
    [Theory]
    [InlineData("minutes", 1, 1, "")]
    [InlineData("minutes", 1, 1.06, "thermocouple-overheated")]
    [InlineData("minutes", 1 / 60.0, 1, "duration-suspect")]
    [InlineData("minutes", 60, 1, "duration-suspect")]
    public async Task A_peak_beyond_the_wire_and_a_firing_of_minutes_or_weeks_are_told(
        string header, double time, double temperature, string code)
    {
        var csv = TroubledLogs.Csv(
            header + ",temp_c", s => FormattableString.Invariant($"{s.Minutes * time:0.####},{s.Celsius * temperature:0.0}"));
        var codes = (await Follow(Encoding.UTF8.GetBytes(csv), new())).Warnings.Select(w => w.Code).ToList();
        string[] asked = ["thermocouple-overheated", "duration-suspect"];
        Assert.Equal(code.Length == 0 ? [] : [code], codes.Where(asked.Contains));
    }

    private static byte[] Clean { get; } = Encoding.UTF8.GetBytes(TroubledLogs.Csv("minutes,temp_c", TroubledLogs.Plain));

    private static Task<HeatWorkAnswer> Answer(string name)
    {
        var log = TroubledLogs.All.Single(l => l.Name == name);
        return Follow(log.File, log.Reading);
    }

    private static double Place(HeatWorkAnswer answer) =>
        answer.Cones.Index().First(c => c.Item.Cone == answer.Reached).Index + answer.Fraction!.Value;

    private static async Task<HeatWorkAnswer> Follow(byte[] file, LogReading reading)
    {
        var log = HeatWork.Upload(new HeatWorkRequest(), reading);
        return (await log.FollowAsync(PipeReader.Create(new ReadOnlySequence<byte>(file)), TestContext.Current.CancellationToken)).Answer;
    }
}
