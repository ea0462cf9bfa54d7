using System.Diagnostics;
using System.Globalization;
using ConeService.Bench.HeatWork;
using ConeService.Contract.HeatWork;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.HeatWork.Logs;
using nietras.SeparatedValues;

// A day of samples by the second, against the whole scale: what reading costs over a vectorised parser that makes doubles of the
// same file, what odd dates cost over plain numbers, and what the heat work costs over reading, in one run. Exits with 1 when the
// medians of the ratios are above what is asked for.
const double mostReading = 2;
const double mostDates = 3;
const double mostFollowing = 2;
const int rounds = 31;

var csv = DayLog.Csv();
var odd = DayLog.OddDates();
var calculator = new HeatWorkCalculator(new ConeCharts(DatasetLoader.LoadEmbedded()));
var settings = calculator.Settings(new HeatWorkRequest(), "");
HeatWorkResult Follow(CleanLog log) => calculator.Answer(log, settings, fahrenheit: false);

var first = Stopwatch.StartNew();
var result = Follow(await DayLog.ReadAsync(csv));
Say($"{result.Answer.Log!.Samples} samples, {csv.Length / 1e6:0.0} MB, {result.Answer.Cones.Count} cones: {result.Answer.Reading}");
Say($"first time, with compiling and the table of the chart: {first.Elapsed.TotalMilliseconds:0} ms");

var (parsing, reading, dates, following) = (new double[rounds], new double[rounds], new double[rounds], new double[rounds]);
var (toParse, toDate, toFollow) = (new double[rounds], new double[rounds], new double[rounds]);
var sum = 0.0;
for (var round = -15; round < rounds; round++)
{
    var watch = Stopwatch.StartNew();
    sum += Doubles(csv);
    var parsed = watch.Elapsed.TotalMilliseconds;
    watch.Restart();
    var log = await DayLog.ReadAsync(csv);
    var read = watch.Elapsed.TotalMilliseconds;
    watch.Restart();
    await DayLog.ReadAsync(odd);
    var dated = watch.Elapsed.TotalMilliseconds;
    watch.Restart();
    Follow(log);
    var followed = watch.Elapsed.TotalMilliseconds;
    if (round < 0) continue;
    (parsing[round], reading[round], dates[round], following[round]) = (parsed, read, dated, followed);
    (toParse[round], toDate[round], toFollow[round]) = (read / parsed, dated / read, followed / read);
}

Say($"doubles by Sep {Median(parsing):0.0} ms, log read {Median(reading):0.0} ms: ratio {Median(toParse):0.00}, at most {mostReading}");
Say($"odd dates {Median(dates):0.0} ms: ratio to plain {Median(toDate):0.00}, at most {mostDates}");
Say($"heat work {Median(following):0.0} ms: ratio to reading {Median(toFollow):0.00}, at most {mostFollowing}");

var before = GC.GetAllocatedBytesForCurrentThread();
var kept = await DayLog.ReadAsync(csv);
var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
before = GC.GetAllocatedBytesForCurrentThread();
Follow(kept);
var allocatedFollowing = (GC.GetAllocatedBytesForCurrentThread() - before) / 1e6;
Say($"allocated while reading {allocated / 1e6:0.0} MB (array of samples kept: {16.0 * kept.Used / 1e6:0.0} MB, the rest is its growth)");
Say($"allocated while following {allocatedFollowing:0.00} MB");
return sum > 0 && Median(toParse) <= mostReading && Median(toDate) <= mostDates && Median(toFollow) <= mostFollowing ? 0 : 1;

static double Doubles(byte[] csv)
{
    using var reader = Sep.Reader(o => o with { Sep = new(',') }).From(csv);
    var values = new List<(double, double)>();
    foreach (var row in reader) values.Add((row[0].Parse<double>(), row[1].Parse<double>()));
    return values[^1].Item2;
}

static double Median(double[] values) => values.Order().ElementAt(values.Length / 2);

static void Say(FormattableString text) => Console.WriteLine(text.ToString(CultureInfo.InvariantCulture));
