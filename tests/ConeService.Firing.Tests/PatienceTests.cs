using System.IO.Pipelines;
using ConeService.Contract.Batches;
using ConeService.Contract.Colours;
using ConeService.Contract.Conversions;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Firing.Tests.Support;

namespace ConeService.Firing.Tests;

/// <summary>A computation that nobody waits for any more ends, whatever it is.</summary>
public class PatienceTests
{
    private static readonly FiringReference Door = FiringReference.Open(Reference.Dataset);

    private static readonly HeatWorkRequest Programme = new()
    {
        Units = "C",
        Start = 20,
        Segments = [.. Enumerable.Range(0, 1000).Select(i => new ProgrammeSegment(100, i % 2 == 0 ? 1222 : 1000))],
    };

    private static readonly List<LogSample?> Log = [.. Enumerable.Range(0, 2000).Select(i => new LogSample(i, 20 + (0.6 * i)))];

    private static readonly Kiln Electric = new(Heat: "electric", VolumeLitres: 150);

    private static readonly PairingRequest Pairing = new(
        Body: "mid-range-stoneware-light", Firing: new("glaze", "6", "oxidation"), Coats: [new(Glaze: "mid-range-gloss")]);

    public static TheoryData<string, Action> Computations => new()
    {
        { "conversions", () => Door.Cones.Convert(new([.. Enumerable.Repeat(new ConversionLine("6"), 1000)])) },
        { "programme", () => Door.HeatWork.Follow(Programme) },
        { "log", () => Door.HeatWork.Follow(new() { Units = "C", Log = Log }) },
        { "solve", () => Door.HeatWork.Solve(new() { Units = "C", Segments = Programme.Segments, Cone = "6", Find = "peak" }) },
        {
            "compare", () => Door.HeatWork.Compare(new()
            {
                Firings = [.. Enumerable.Repeat(
                    new WitnessedFiring { Units = "C", Log = Log, Observations = [new("6", Look: "down")] }, 50)],
            })
        },
        {
            "forecast", () => Door.HeatWork.Forecast(new()
            {
                Units = "C", Cone = "6", Log = [.. Log.Take(1900)], Segments = [new(60, 1222, 10)],
            })
        },
        { "fit", () => Door.Schedules.Fit("mid-range-glaze", new(Cone: "6", Units: "C", Kiln: Electric)) },
        { "fit without a kiln", () => Door.Schedules.Fit("mid-range-glaze", new(Cone: "6", Units: "C")) },
        {
            "fits",
            () => Door.Schedules.FitEach(
                new("C", Electric, null, [.. Enumerable.Repeat(new FitBatchItem("mid-range-glaze", "6"), 100)]))
        },
        {
            "load", () => Door.Loads.Check(new LoadRequest(
                new Kiln(Heat: "electric", MaxCone: "8", Atmospheres: ["oxidation"]), new("glaze", "6", "oxidation"),
                [.. Enumerable.Range(0, 2000).Select(i => new PieceRequest(
                    $"p{i}", default, "mid-range-stoneware-light", null, [new(Glaze: "mid-range-gloss")], "bisqued"))]))
        },
        { "pairings", () => Door.Loads.CheckEach(new([.. Enumerable.Repeat(Pairing, 100)])) },
        { "recipes", () => Door.Colours.ResolveEach(new([.. Enumerable.Repeat(new ColourRequest([new("copper")]), 100)])) },
    };

    [Theory]
    [MemberData(nameof(Computations), DisableDiscoveryEnumeration = true)]
    public void What_nobody_waits_for_ends(string name, Action compute)
    {
        Patience.Use(new CancellationToken(canceled: true));
        try
        {
            Assert.True(Record.Exception(compute) is OperationCanceledException, name);
        }
        finally
        {
            Patience.Use(CancellationToken.None);
        }
    }

    [Theory]
    [MemberData(nameof(Computations), DisableDiscoveryEnumeration = true)]
    public void What_somebody_waits_for_is_computed(string name, Action compute) => Assert.True(Record.Exception(compute) is null, name);

    [Fact]
    public async Task An_upload_that_nobody_waits_for_ends()
    {
        var upload = Door.HeatWork.Upload(new() { Units = "C", Log = [] }, new LogReading());
        Patience.Use(new CancellationToken(canceled: true));
        using var text = new MemoryStream("minutes,temperature_c\n0,20\n600,1222\n"u8.ToArray());
        await Assert.ThrowsAnyAsync<OperationCanceledException>(() =>
            upload.FollowAsync(PipeReader.Create(text), TestContext.Current.CancellationToken));
    }
}
