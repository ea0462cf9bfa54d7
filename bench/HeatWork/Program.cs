using System.Diagnostics;
using System.Globalization;
using ConeService.Bench.HeatWork;
using ConeService.Contract.HeatWork;
using ConeService.Data;
using ConeService.Firing.Cones;
using ConeService.Firing.HeatWork;
using ConeService.Firing.HeatWork.Logs;

// A day of samples by the second, against the whole scale: what the heat work costs over reading the CSV, in one run.
// Exits with 1 when the ratio is above 2.
const double mostRatio = 2;
const int rounds = 15;

var csv = DayLog.Csv();
var calculator = new HeatWorkCalculator(new ConeCharts(DatasetLoader.LoadEmbedded()));
var settings = calculator.Settings(new HeatWorkRequest(), "");
Task<CleanLog> Read() => DayLog.ReadAsync(csv);
HeatWorkResult Follow(CleanLog log) => calculator.Answer(log, settings, fahrenheit: false);

var first = Stopwatch.StartNew();
var result = Follow(await Read());
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{result.Answer.Log!.Samples} samples, {csv.Length / 1e6:0.0} MB, {result.Answer.Cones.Count} cones: {result.Answer.Reading}"));
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"first time, with compiling and the table of the chart: {first.Elapsed.TotalMilliseconds:0} ms"));

var (reading, following) = (new double[rounds], new double[rounds]);
for (var round = -10; round < rounds; round++)
{
    var watch = Stopwatch.StartNew();
    var log = await Read();
    var read = watch.Elapsed.TotalMilliseconds;
    watch.Restart();
    Follow(log);
    if (round >= 0) (reading[round], following[round]) = (read, watch.Elapsed.TotalMilliseconds);
}

Array.Sort(reading);
Array.Sort(following);
var ratio = following[rounds / 2] / reading[rounds / 2];
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"read the CSV {reading[rounds / 2]:0.0} ms, heat work {following[rounds / 2]:0.0} ms (medians of {rounds}): ratio {ratio:0.00}, at most {mostRatio} is asked for"));

var before = GC.GetAllocatedBytesForCurrentThread();
var kept = await Read();
var allocated = GC.GetAllocatedBytesForCurrentThread() - before;
before = GC.GetAllocatedBytesForCurrentThread();
Follow(kept);
Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"allocated while reading {allocated / 1e6:0.0} MB (array of samples kept: {16.0 * kept.Used / 1e6:0.0} MB, the rest is its growth), while following {(GC.GetAllocatedBytesForCurrentThread() - before) / 1e6:0.00} MB"));
return ratio <= mostRatio ? 0 : 1;
