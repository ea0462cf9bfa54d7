using System.Buffers;
using System.Globalization;
using System.IO.Pipelines;
using System.Text;
using ConeService.Contract.Answers;
using ConeService.Firing.HeatWork.Logs;

namespace ConeService.Firing.Tests.HeatWork;

public class LogTests
{
    // Thirty samples of an invented ramp, 5 °C every two minutes.
    private static readonly (double Minutes, double Celsius)[] Ramp = [.. Enumerable.Range(0, 30).Select(i => (2.0 * i, 900.0 + (5 * i)))];

    [Theory]
    [InlineData("minutes,temperature_c", ",", 1)]
    [InlineData("Time (min);Temp (°C)", ";", 1)]
    [InlineData("seconds\tTemp °C", "\t", 60)]
    [InlineData("Elapsed time [s],°C", ",", 60)]
    [InlineData("hours,Celsius", ",", 1 / 60.0)]
    [InlineData("\uFEFFmin,temp_C", ",", 1)]
    public async Task Headers_and_separators_are_recognised(string header, string separator, double factor)
    {
        var log = await Read(header, Ramp.Select(s => FormattableString.Invariant($"{s.Minutes * factor}{separator}{s.Celsius}")));
        Assert.Empty(log.Warnings);
        Assert.Equal((30, 30), (log.Samples, log.Used));
        Assert.Equal(58 / 60.0, log.History.DurationHours, 1e-9);
        Assert.Equal(1045 + 273.15, log.History.Peak.Kelvin, 1e-9);
    }

    [Theory]
    [InlineData("hh:mm:ss,C", "08:00:00", "10:30:00", 2.5)]
    [InlineData("time,Temp C", "23:30", "01:00", 1.5)]
    [InlineData("time,Temp C", "30:00:00", "31:15:36", 1.26)]
    [InlineData("timestamp,Temp C", "2026-11-25T08:00:00Z", "2026-11-25T11:00:00+01:00", 2)]
    [InlineData("timestamp,Temp C", "2026-11-25 08:00", "2026-11-26 08:00", 24)]
    public async Task Clocks_and_timestamps_are_read(string header, string first, string last, double hours) =>
        Assert.Equal(hours, (await Read(header, [first + ",20", last + ",900"])).History.DurationHours, 1e-6);

    [Fact]
    public async Task Fahrenheit_and_decimal_commas_are_read()
    {
        var log = await Read("minutes;temp °F", ["0;68,0", "60,5;2231,6"]);
        Assert.Equal(1222 + 273.15, log.History.Peak.Kelvin, 1e-9);
        Assert.Equal(60.5, log.History.DurationHours * 60, 1e-9);
    }

    // A comma that does not separate is decimal, in seconds, hours and degrees; 1213,5 can be nothing else.
    [Theory]
    [InlineData("hours;temp C", "0;20,125", "1,016;1213,5", 1213.5)]
    [InlineData("min\tC", "0\t20", "61,5\t1100,125", 1100.125)]
    [InlineData("min;C", "0;20.5", "61;1213.125", 1213.125)]
    public async Task A_decimal_comma_is_read_where_the_file_shows_it(string header, string first, string last, double celsius) =>
        Assert.Equal(celsius + 273.15, (await Read(header, [first, last])).History.Peak.Kelvin, 1e-9);

    // 1,213: one and a bit, or twelve hundred and thirteen?
    [Theory]
    [InlineData("minutes,C", "0,20\n1,\"1,213\"", "line 3")]
    [InlineData("minutes,C", "0,20\n\"1,213\",30", "line 3")]
    [InlineData("minutes;C", "0;20\n1;1,213\n2;1,214", "line 3")]
    [InlineData("minutes\tC", "0\t20\n1\t\"1,213\"", "line 3")]
    // Decimals have commas here, so the point could stand for thousands.
    [InlineData("minutes;C", "0;20,5\n1;1.213", "line 3")]
    public async Task A_number_that_may_be_a_thousand_is_refused_with_line_cell_and_both_readings(string header, string rows, string field)
    {
        var finding = Assert.Single((await Assert.ThrowsAsync<RefusedException>(() => Read(header, rows.Split('\n')))).Findings);
        Assert.Equal(("number-ambiguous", field), (finding.Code, finding.Field));
        Assert.Matches("^1[,.]213$", finding.Value);
        Assert.Equal(["1.213", "1213"], finding.Allowed.Select(a => a.ToString()));
    }

    [Theory]
    [InlineData("minutes,temperature", "0,20\n1,30", "units-missing", "line 1")]
    [InlineData("minutes,Temp F", "0,20\n1,30", "units-contradict", "units")]
    [InlineData("minutes,kiln", "0,20\n1,30", "csv-headers", "line 1")]
    [InlineData("0,20", "1,30", "csv-headers", "line 1")]
    [InlineData("time,C", "0,20\n1,30", "log-time-unit-missing", "line 2")]
    [InlineData("minutes,C", "", "log-empty", "")]
    [InlineData("minutes,C", "0,20", "log-too-short", "line 2")]
    [InlineData("minutes,C", "5,20\n5,30", "log-too-short", "line 2")]
    [InlineData("minutes,C", "0,20\n\n1,NaN\n2,30", "log-value-unreadable", "line 4")]
    [InlineData("minutes,C", "0,20\n1,open", "log-value-unreadable", "line 3")]
    [InlineData("minutes,C", "0,20\n1,", "log-value-unreadable", "line 3")]
    [InlineData("minutes,C", "0,20\n1,1e999", "log-value-unreadable", "line 3")]
    [InlineData("minutes,C", "0,20\nnoon,30", "log-time-unreadable", "line 3")]
    [InlineData("hh:mm,C", "0:20,20\n0:75,30", "log-time-unreadable", "line 3")]
    [InlineData("minutes,C", "0,20\n1", "csv-malformed", "line 3")]
    [InlineData("minutes,C", "0,20\n1,-31", "log-temperature-out-of-range", "line 3")]
    [InlineData("minutes,C", "0,20\n1,1501", "units-suspect", "line 3")]
    [InlineData("minutes,C", "0,20\n1,2232", "units-suspect", "line 3")]
    [InlineData("minutes,C", "0,20\n1,3000", "log-temperature-out-of-range", "line 3")]
    [InlineData("minutes,C", "0,20\n200000,30", "log-time-unreadable", "line 3")]
    [InlineData("minutes,C", "0,20\n1e305,30", "log-time-unreadable", "line 3")]
    [InlineData("minutes,C", "0,20\n1,5,30", "csv-malformed", "line 3")]
    [InlineData("minutes,C,note", "0,20,a\n1,30,b,c", "csv-malformed", "line 3")]
    [InlineData("minutes;C", "0;20\n1;30;40", "csv-malformed", "line 3")]
    [InlineData("minutes,C", "0,20\n1,\"30\n2,40\n3,50", "csv-malformed", "line 3")]
    [InlineData("minutes,C", "0,20\n1,3\"0", "csv-malformed", "line 3")]
    [InlineData("minutes,C", "0,20\n1,\"30\"5", "csv-malformed", "line 3")]
    [InlineData("minutes,C", "0,20\n1,\"1,222\"", "number-ambiguous", "line 3")]
    [InlineData("minutes,note,C", "0,\"two\nlines\",20\n1,x,open", "log-value-unreadable", "line 4")]
    [InlineData("minutes,\"C", "0,20\n1,30", "csv-malformed", "line 1")]
    public async Task A_log_that_cannot_be_used_names_the_line(string header, string lines, string code, string field)
    {
        var refused = await Assert.ThrowsAsync<RefusedException>(
            () => Read(header, lines.Split('\n'), header.Contains('F', StringComparison.Ordinal) ? "C" : null));
        Assert.All(refused.Findings, finding =>
        {
            Assert.Equal((code, field), (finding.Code, finding.Field));
            Assert.NotEmpty(finding.Allowed);
        });
    }

    // RFC 4180: a quoted cell may hold separators, line breaks and, doubled, quotation marks.
    [Theory]
    [InlineData("minutes,note,C", "{0},\"zone 1, 600\",{1}", "\n")]
    [InlineData("minutes,note,C", "{0},\"said \"\"600, then 700\"\"\",{1}", "\n")]
    [InlineData("minutes,note,C", "{0},\"zone 1\r\n600,700\",{1}", "\r\n")]
    [InlineData("minutes;note;C", "{0};\"zone 1; 600\";{1}", "\r\n")]
    [InlineData("minutes\tnote\tC", "{0}\t\"zone\t600\"\t{1}", "\n")]
    [InlineData("\"minutes\",\"zone; note; place\",\"Temp, °C\"", "\"{0}\",\"a\",\" {1} \"", "\n")]
    [InlineData("\"(min) ;;;\",\"zone\nnote\",C", "{0},a,{1}", "\n")]
    [InlineData("minutes,C", "{0},{1},,", "\n")]
    [InlineData("minutes,C", " {0} , {1} ", "\r\n\r\n")]
    public async Task A_quoted_cell_is_one_cell(string header, string row, string end)
    {
        var rows = Ramp.Select(s => string.Format(CultureInfo.InvariantCulture, row, s.Minutes, s.Celsius));
        Same(await Read(new CsvLogReader("C", new()), string.Join(end, rows.Prepend(header))));
    }

    [Fact]
    public async Task A_line_that_is_too_long_is_refused_with_its_number()
    {
        var refused = await Assert.ThrowsAsync<RefusedException>(
            () => Read("minutes,C", ["0,20", "1,30," + new string('x', CsvLogReader.LongestLine), "2,40"]));
        Assert.Equal("line 3", Assert.Single(refused.Findings).Field);
        // Longer than the reader's buffer, and never ending.
        var endless = await Assert.ThrowsAsync<RefusedException>(
            () => Read("minutes,C", ["0,20", "1,\"" + string.Concat(Enumerable.Repeat("30\n", 100_000))]));
        Assert.Equal(("csv-malformed", "line 3"), (Assert.Single(endless.Findings).Code, endless.Findings[0].Field));
    }

    [Fact]
    public async Task A_log_full_of_errors_tells_each_once_and_stops_after_twenty()
    {
        var same = await Assert.ThrowsAsync<RefusedException>(() => Read("minutes,C", Enumerable.Repeat("x,y", 500)));
        var finding = Assert.Single(same.Findings);
        Assert.Equal(("log-time-unreadable", "line 2", "x"), (finding.Code, finding.Field, finding.Value));
        Assert.Contains("500 lines", finding.Message.ToString(), StringComparison.Ordinal);
        var different = await Assert.ThrowsAsync<RefusedException>(
            () => Read("minutes,C", Enumerable.Range(0, 500).Select(i => $"x{i},y")));
        Assert.Equal(20, different.Findings.Count);
    }

    [Fact]
    public async Task A_few_late_samples_are_sorted_and_told()
    {
        var lines = Lines();
        (lines[10], lines[11]) = (lines[11], lines[10]);
        var log = await Read("minutes,C", lines);
        Assert.Equal("samples-out-of-order", Assert.Single(log.Warnings).Code);
        Assert.Equal([20.0], log.Warnings[0].AtMinutes);
        Same(log);
    }

    [Fact]
    public async Task A_log_from_new_to_old_is_turned_round()
    {
        var log = await Read("minutes,C", Lines().Reverse());
        Assert.Equal("log-newest-first", Assert.Single(log.Warnings).Code);
        Same(log);
    }

    [Fact]
    public async Task A_clock_that_was_set_back_is_refused_with_its_line()
    {
        var lines = Ramp.Select(s => FormattableString.Invariant($"{(s.Minutes >= 40 ? s.Minutes - 25 : s.Minutes)},{s.Celsius}"));
        var finding = Assert.Single((await Assert.ThrowsAsync<RefusedException>(() => Read("minutes,C", lines))).Findings);
        Assert.Equal(("log-time-backwards", "line 22"), (finding.Code, finding.Field));
    }

    [Fact]
    public async Task A_moment_that_stands_twice_is_averaged_and_told()
    {
        var lines = Lines().ToList();
        lines.Insert(6, "10,927");
        lines.Insert(20, lines[19]);
        var log = await Read("minutes,C", lines);
        Assert.Equal(("duplicate-times", 2), (log.Warnings[0].Code, log.Warnings[0].Count));
        Assert.Equal((32, 30), (log.Samples, log.Used));
        Assert.Equal(926 + 273.15, log.History.Points[5].Kelvin, 1e-9);
    }

    [Theory]
    [InlineData(15, 20)]
    [InlineData(15, -600)]
    [InlineData(29, -900)]
    public async Task A_spike_is_rejected_and_told(int at, double jump)
    {
        var samples = Ramp.ToArray();
        samples[at].Celsius += jump;
        var log = await Read("minutes,C", Lines(samples));
        Assert.Equal("spikes-rejected", log.Warnings[0].Code);
        Assert.Equal([2.0 * at], log.Warnings[0].AtMinutes);
        Assert.Equal(29, log.Used);
    }

    [Fact]
    public async Task A_sharp_peak_and_an_opened_kiln_are_no_spikes()
    {
        var up = Enumerable.Range(0, 40).Select(i => (10.0 * i, 200.0 + (25 * i)));
        var down = Enumerable.Range(1, 30).Select(i => (390 + (10.0 * i), 1175.0 - (25 * i)));
        Assert.DoesNotContain((await Read("minutes,C", Lines([.. up, .. down]))).Warnings, w => w.Code == "spikes-rejected");
        var opened = Enumerable.Range(0, 60).Select(i => (1.0 * i, i < 40 ? 1000.0 : 1000 - (60 * (i - 39) / (1 + (0.1 * (i - 39))))));
        Assert.DoesNotContain((await Read("minutes,C", Lines([.. opened]))).Warnings, w => w.Code == "spikes-rejected");
    }

    [Fact]
    public async Task Gaps_and_coarse_steps_near_the_top_are_told()
    {
        var log = await Read("minutes,C", Lines([.. Ramp.Where(s => s.Minutes is < 20 or > 36)]));
        Assert.Equal(["gaps", "coarse-sampling"], log.Warnings.Select(w => w.Code));
        Assert.All(log.Warnings, w => Assert.Equal([18.0], w.AtMinutes));
    }

    // What lies between is unknown; a log that is sparse throughout says so by every step, and is read with a warning.
    [Fact]
    public async Task A_stretch_without_rows_near_the_top_is_asked_back_with_its_lines_and_a_sparse_log_is_not()
    {
        var refused = await Assert.ThrowsAsync<RefusedException>(
            () => Read("minutes,C", Lines([.. Ramp.Where(s => s.Minutes is < 20 or > 44)])));
        var finding = Assert.Single(refused.Findings);
        // Samples from minute 0, one each two minutes: minute 18 is the tenth, on line 11.
        Assert.Equal(("log-gap-near-top", "line 12"), (finding.Code, finding.Field));
        Assert.Contains("line 11 (minute 18) and line 12 (minute 46)", finding.Message.ToString(), StringComparison.Ordinal);
        var sparse = Enumerable.Range(0, 25).Select(i => (30.0 * i, 20 + (50.0 * i)));
        Assert.Equal(["coarse-sampling"], (await Read("minutes,C", Lines([.. sparse]))).Warnings.Select(w => w.Code));
        // The corners of a firing, written down by hand.
        (double, double)[] corners = [(0, 20), (392, 1000), (452, 1090), (460, 1092), (465, 1099)];
        Assert.Equal(["gaps", "coarse-sampling"], (await Read("minutes,C", Lines(corners))).Warnings.Select(w => w.Code));
    }

    [Fact]
    public async Task Other_columns_are_named_and_one_can_be_chosen()
    {
        var lines = Lines().Select(l => l + ",77");
        var log = await Read(new CsvLogReader("C", new(TemperatureColumn: "top")), string.Join('\n', lines.Prepend("minutes,top,bottom")));
        Assert.Contains("bottom", Assert.Single(log.Warnings).Message.ToString(), StringComparison.Ordinal);
        Same(log);
    }

    // One division of two exact doubles rounds as the parser of the runtime does.
    [Theory]
    [InlineData("0")]
    [InlineData("-0.1")]
    [InlineData("1222.6")]
    [InlineData("20.125")]
    [InlineData(".5")]
    [InlineData("99999999999999")]
    [InlineData("0.0000000000001")]
    public void A_plain_number_is_the_same_to_the_last_bit(string text)
    {
        Assert.True(LogCells.TryPlain(Encoding.UTF8.GetBytes(text), out var value, out _));
        Assert.Equal(double.Parse(text, CultureInfo.InvariantCulture), value);
    }

    [Theory]
    [InlineData("")]
    [InlineData("-")]
    [InlineData(".")]
    [InlineData("1.2.3")]
    [InlineData("1-2")]
    [InlineData("1,5")]
    [InlineData("1e3")]
    [InlineData("1234567890123456")]
    public void What_is_no_plain_number_is_left_to_the_reader_of_all(string text) =>
        Assert.False(LogCells.TryPlain(Encoding.UTF8.GetBytes(text), out _, out _));

    private static string[] Lines() => Lines(Ramp);

    private static string[] Lines((double Minutes, double Celsius)[] samples) =>
        [.. samples.Select(s => FormattableString.Invariant($"{s.Minutes},{s.Celsius}"))];

    private static void Same(CleanLog log)
    {
        Assert.Equal(Ramp.Length, log.Used);
        foreach (var (i, (minutes, celsius)) in Ramp.Index())
            Assert.Equal(
                (minutes, celsius),
                (Math.Round(log.History.Points[i].Hours * 60, 9), Math.Round(log.History.Points[i].Kelvin - 273.15, 9)));
    }

    private static Task<CleanLog> Read(string header, IEnumerable<string> lines, string? units = null) =>
        Read(new CsvLogReader(units, new()), string.Join('\n', lines.Prepend(header)));

    private static Task<CleanLog> Read(CsvLogReader text, string csv) =>
        text.ReadAsync(PipeReader.Create(new ReadOnlySequence<byte>(Encoding.UTF8.GetBytes(csv))), TestContext.Current.CancellationToken);
}
