using System.Text.Json;
using ConeService.Client.Tests.Support;
using ConeService.Contract.Batches;
using ConeService.Contract.Colours;
using ConeService.Contract.Cones;
using ConeService.Contract.Conversions;
using ConeService.Contract.HeatWork;
using ConeService.Contract.Json;
using ConeService.Contract.Kilns;
using ConeService.Contract.Loads;
using ConeService.Contract.Quantities;
using ConeService.Contract.Schedules;

namespace ConeService.Client.Tests;

/// <summary>The questions that are asked of the service and of local data alike: the examples of the document, and look-ups.</summary>
internal static class Vectors
{
    /// <summary>The questions by name; each answers with its JSON.</summary>
    public static IReadOnlyDictionary<string, Func<TestClient, CancellationToken, Task<string>>> All { get; } = Make();

    private static Dictionary<string, Func<TestClient, CancellationToken, Task<string>>> Make()
    {
        var all = new Dictionary<string, Func<TestClient, CancellationToken, Task<string>>>();
        void Add<T>(string name, Func<TestClient, CancellationToken, Task<Answered<T>>> ask) => new Adder(all).Add(name, ask);

        Add("cones", (c, cancel) => c.Cones.ListAsync(cancel));
        foreach (var text in (string[])["022", "06", "05.5", "6", "10", "42"])
        {
            var cone = Cone.Parse(text);
            Add($"cone {text}", (c, cancel) => c.Cones.DescribeAsync(cone, cancel));
            foreach (var rate in (decimal?[])[null, 15m, 60m, 97.3m, 150m])
            {
                HeatingRate? heating = rate is { } r ? HeatingRate.FromCelsiusPerHour(r) : null;
                Add($"end point of {text} at {rate}", (c, cancel) => c.Cones.EndPointAsync(cone, heating, null, cancel));
            }
        }

        // Refused, and alike: a rate beyond what was measured, a chart that is none, a cone that no chart prints.
        Add("end point too fast", (c, cancel) => c.Cones.EndPointAsync(Cone.Parse("6"), HeatingRate.FromCelsiusPerHour(900), null, cancel));
        Add("end point of no chart", (c, cancel) => c.Cones.EndPointAsync(Cone.Parse("6"), null, "no-such-chart", cancel));
        Add("a cone that no chart prints", (c, cancel) => c.Cones.DescribeAsync(Cone.Parse("02.5"), cancel));
        foreach (var celsius in (decimal[])[20m, 600m, 1000m, 1222m, 1222.4m, 1500m, 9000m])
            Add($"reached at {celsius} °C", (c, cancel) => c.Cones.ReachedAsync(Temperature.FromCelsius(celsius), null, null, cancel));
        Add("reached at 2232 °F", (c, cancel) => c.Cones.ReachedAsync(
            Temperature.FromFahrenheit(2232), HeatingRate.FromFahrenheitPerHour(108), null, cancel));
        Add("bodies", (c, cancel) => c.Materials.ListBodiesAsync(null, null, cancel));
        Add("bodies of cone 6", (c, cancel) => c.Materials.ListBodiesAsync(Cone.Parse("6"), "oxidation", cancel));
        Add("bodies of no atmosphere", (c, cancel) => c.Materials.ListBodiesAsync(null, "vacuum", cancel));
        Add("body", (c, cancel) => c.Materials.DescribeBodyAsync("mid-range-stoneware-light", cancel));
        Add("body of nobody", (c, cancel) => c.Materials.DescribeBodyAsync("mid-range-stonewere-light", cancel));
        Add("glazes", (c, cancel) => c.Materials.ListGlazesAsync(null, null, cancel));
        Add("glaze", (c, cancel) => c.Materials.DescribeGlazeAsync("mid-range-gloss", cancel));
        Add("schedules", (c, cancel) => c.Schedules.ListAsync(null, cancel));
        Add("schedule", (c, cancel) => c.Schedules.DescribeAsync("mid-range-glaze", cancel));
        Add("schedule of nobody", (c, cancel) => c.Schedules.DescribeAsync("no such ?c", cancel));
        foreach (var form in (string[])["minimal", "full"])
        {
            Add($"convert {form}", (c, cancel) => c.Conversions.ConvertAsync(Example<ConversionRequest>($"convert.{form}"), cancel));
            Add($"load {form}", (c, cancel) => c.Loads.CheckAsync(Example<LoadRequest>($"checkLoad.{form}"), null, cancel));
            Add($"load {form} verdicts", (c, cancel) => c.Loads.CheckAsync(Example<LoadRequest>($"checkLoad.{form}"), "verdicts", cancel));
            Add($"pairing {form}", (c, cancel) => c.Loads.CheckPairingAsync(Example<PairingRequest>($"checkPairing.{form}"), cancel));
            Add($"fit {form}", (c, cancel) => c.Schedules.FitAsync(
                "mid-range-glaze", Example<FitRequest>($"fitSchedule.{form}"), cancel));
            Add($"follow {form}", (c, cancel) => c.HeatWork.FollowAsync(Example<HeatWorkRequest>($"followFiring.{form}"), cancel));
            Add($"solve {form}", (c, cancel) => c.HeatWork.SolveAsync(Example<SolveRequest>($"solveFiring.{form}"), cancel));
            Add($"compare {form}", (c, cancel) => c.HeatWork.CompareAsync(Example<CompareRequest>($"compareFiring.{form}"), cancel));
            Add($"forecast {form}", (c, cancel) => c.HeatWork.ForecastAsync(Example<ForecastRequest>($"forecastFiring.{form}"), cancel));
            Add($"calibrate {form}", (c, cancel) => c.Kilns.CalibrateAsync(Example<CalibrateRequest>($"calibrateKiln.{form}"), cancel));
            Add($"colour {form}", (c, cancel) => c.Colours.ResolveAsync(Example<ColourRequest>($"resolveColour.{form}"), cancel));
            Add($"colours {form}", (c, cancel) => c.Colours.ResolveEachAsync(
                Example<ColourBatchRequest>($"resolveColours.{form}"), cancel));
            Add($"loads {form}", (c, cancel) => c.Loads.CheckEachAsync(Example<LoadBatchRequest>($"checkLoads.{form}"), null, cancel));
            Add($"pairings {form}", (c, cancel) => c.Loads.CheckEachPairingAsync(
                Example<PairingBatchRequest>($"checkPairings.{form}"), cancel));
            Add($"fits {form}", (c, cancel) => c.Schedules.FitEachAsync(Example<FitBatchRequest>($"fitSchedules.{form}"), cancel));
        }

        Add("loads verdicts", (c, cancel) => c.Loads.CheckEachAsync(Example<LoadBatchRequest>("checkLoads.full"), "verdicts", cancel));
        Add("colorants", (c, cancel) => c.Colours.ListColorantsAsync(cancel));
        Add("colorant", (c, cancel) => c.Colours.DescribeColorantAsync("copper", cancel));
        Add("colorant of nobody", (c, cancel) => c.Colours.DescribeColorantAsync("coper", cancel));
        Add("any colour", (c, cancel) => c.Colours.FindAsync(new(), cancel));
        Add("green of copper", (c, cancel) => c.Colours.FindAsync(
            new("copper", "oxidation", "calcium", Cone.Parse("6"), 0.5m, "electric", "green"), cancel));
        Add("a colour of no base", (c, cancel) => c.Colours.FindAsync(new("copper", Base: "glass", Percent: -1), cancel));
        AddUploads(new Adder(all));
        Add("no fits", (c, cancel) => c.Schedules.FitEachAsync(new("C", Items: []), cancel));
        Add("fits, one of which is of nobody", (c, cancel) => c.Schedules.FitEachAsync(
            new("C", Items: [new("mid-range-glaze", "6"), new("nobody", "6"), new()]), cancel));
        Add("too many loads", (c, cancel) => c.Loads.CheckEachAsync(new([.. new LoadRequest?[51]]), null, cancel));
        Add("no pairings", (c, cancel) => c.Loads.CheckEachPairingAsync(new([]), cancel));
        Add("no colours", (c, cancel) => c.Colours.ResolveEachAsync(new(null), cancel));
        Add("a forecast of nothing", (c, cancel) => c.HeatWork.ForecastAsync(new() { Units = "C" }, cancel));
        Add("a calibration of nothing", (c, cancel) => c.Kilns.CalibrateAsync(new(), cancel));

        Add("a line without units", (c, cancel) => c.Conversions.ConvertAsync(new([new(Temperature: 1222), new(Cone: 6)]), cancel));
        Add("no lines", (c, cancel) => c.Conversions.ConvertAsync(new([]), cancel));
        Add("an empty load", (c, cancel) => c.Loads.CheckAsync(new(null, null, []), null, cancel));
        Add("a load of no detail", (c, cancel) => c.Loads.CheckAsync(Example<LoadRequest>("checkLoad.minimal"), "some", cancel));
        Add("a fit of nothing", (c, cancel) => c.Schedules.FitAsync("mid-range-glaze", new(), cancel));
        return all;
    }

    private static void AddUploads(Adder add)
    {
        var celsius = new LogSettings { Units = "C" };
        add.Add("a log followed", (c, cancel) => c.HeatWork.FollowLogAsync(File("followFiring.csv"), celsius, cancel));
        add.Add("a log followed as it was measured", (c, cancel) => c.HeatWork.FollowLogAsync(
            File("followFiring.csv"),
            new()
            {
                Units = "C",
                Chart = "witness-large",
                Atmosphere = "reduction",
                Thermocouple = new("S", "iec-60584", "2", 40),
                Reading = new("minutes", "temperature"),
            },
            cancel));
        add.Add("a log without units", (c, cancel) => c.HeatWork.FollowLogAsync(File("followFiring.csv"), new(), cancel));
        add.Add("a log in no known units", (c, cancel) => c.HeatWork.FollowLogAsync(
            File("followFiring.csv"), new() { Units = "K" }, cancel));
        add.Add("a log of no order of dates", (c, cancel) => c.HeatWork.FollowLogAsync(
            File("followFiring.csv"), celsius with { Reading = new(DateOrder: "year-last") }, cancel));
        add.Add("no log", (c, cancel) => c.HeatWork.FollowLogAsync(Array.Empty<byte>(), celsius, cancel));
        add.Add("a log too large", (c, cancel) => c.HeatWork.FollowLogAsync(new byte[10 * 1024 * 1024 + 1], celsius, cancel));
        add.Add("a log of a firing under way", (c, cancel) => c.HeatWork.ForecastLogAsync(
            File("forecastFiring.csv"),
            new(Cone.Parse("6"))
            {
                Segments = [new(60, 1222, 10), new(null, 1100)],
                CoolingRate = -100.5,
                Start = "2026-12-04T18:00:00+01:00",
            },
            celsius with { Thermocouple = new("K") },
            cancel));
        add.Add("a firing that is off", (c, cancel) => c.HeatWork.ForecastLogAsync(
            File("forecastFiring.csv"), new(Cone.Parse("6")), celsius, cancel));
        add.Add("a forecast without units", (c, cancel) => c.HeatWork.ForecastLogAsync(
            File("forecastFiring.csv"), new(Cone.Parse("6")), new(), cancel));
    }

    private static byte[] File(string name) => System.IO.File.ReadAllBytes(Path.Combine(AppContext.BaseDirectory, "examples", name));

    /// <summary>An example of the document.</summary>
    public static T Example<T>(string name) => JsonSerializer.Deserialize<T>(
        File(name + ".json"), ConeJson.Options)!;

    private sealed class Adder(Dictionary<string, Func<TestClient, CancellationToken, Task<string>>> all)
    {
        public void Add<T>(string name, Func<TestClient, CancellationToken, Task<Answered<T>>> ask) =>
            all.Add(name, async (c, cancel) => System.Text.Encoding.UTF8.GetString((await ask(c, cancel)).Json.Span));
    }
}
