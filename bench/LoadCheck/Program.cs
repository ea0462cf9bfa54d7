using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using ConeService.Bench.LoadCheck;
using ConeService.Contract.Loads;
using ConeService.Data;
using ConeService.Firing;

// The best of many rounds in which the three ways take turns: whatever else the machine does can only make a round slower.
const double Most = 2.5;
const int Rounds = 101;
var check = FiringReference.Open(DatasetLoader.LoadEmbedded()).Loads;
var failed = false;
Console.WriteLine(
    "| load | pieces | request, bytes | answer, bytes | bare, µs | whole, µs | whole / bare | same JSON only, µs | whole, µs a piece "
    + "| check allocates, bytes a piece |");
Console.WriteLine("| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |");
(string, Func<int, byte[]>)[] loads = [("class", SampleLoads.Class), ("all different", SampleLoads.AllDifferent)];
foreach (var (name, make) in loads)
{
    foreach (var pieces in new[] { 250, 500, 1000, 2000 })
    {
        var request = make(pieces);
        var answer = check.Check(Read(request));
        var written = Write(answer);
        var (bare, whole, node) = (new double[Rounds], new double[Rounds], new double[Rounds]);
        for (var round = -300; round < Rounds; round++)
        {
            var at = Math.Max(round, 0);
            bare[at] = Time(() => (Read(request), Write(answer)));
            whole[at] = Time(() => Write(check.Check(Read(request))));
            node[at] = Time(() => JsonSerializer.SerializeToUtf8Bytes(JsonNode.Parse(request)));
        }

        // Work that does not depend on what else the machine does: it must not grow with the number of pieces.
        var asked = Read(request);
        var before = GC.GetAllocatedBytesForCurrentThread();
        GC.KeepAlive(check.Check(asked));
        var allocated = (GC.GetAllocatedBytesForCurrentThread() - before) / pieces;
        var ratio = Best(whole) / Best(bare);
        Console.WriteLine(string.Create(
            CultureInfo.InvariantCulture,
            $"| {name} | {pieces} | {request.Length} | {written.Length} | {Best(bare):0} | {Best(whole):0} | {ratio:0.00} "
            + $"| {Best(node):0} | {Best(whole) / pieces:0.00} | {allocated} |"));
        if (pieces == 500 && ratio > Most) failed = true;
    }
}

return failed ? 1 : 0;

static LoadRequest Read(byte[] json) => JsonSerializer.Deserialize<LoadRequest>(json, BenchJson.Options)!;

static byte[] Write(LoadAnswer answer) => JsonSerializer.SerializeToUtf8Bytes(answer, BenchJson.Options);

static double Time<T>(Func<T> work)
{
    var start = Stopwatch.GetTimestamp();
    GC.KeepAlive(work());
    return Stopwatch.GetElapsedTime(start).TotalMicroseconds;
}

static double Best(double[] values) => values.Min();
