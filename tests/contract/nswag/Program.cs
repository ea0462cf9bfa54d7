using ConeService.Client;

// Ten routes of a running service through the client that NSwag makes of the document, without an edit of it. Expected values are from
// the published chart of self-supporting cones at 60 °C/h: cone 06 at 998 °C, cone 6 at 1222 °C.
using var http = new HttpClient { BaseAddress = new Uri(args[0]) };
var client = new ConeServiceClient(http);

var six = await client.GetEndPointAsync("6", "60C/h", "witness-self-supporting");
Expect(six.Celsius == 1222, $"cone 6 at 60 °C/h is 1222 °C, not {six.Celsius}");
var zeroSix = await client.GetEndPointAsync("06", "60C/h", "witness-self-supporting");
Expect(zeroSix.Celsius == 998, $"cone 06 at 60 °C/h is 998 °C, not {zeroSix.Celsius}");

var cone = await client.GetConeAsync("06");
Expect(cone.MixUp?.Cone == "6", "cone 06 is easily mixed up with cone 6");

var reading = await client.GetConeReachedAsync("1222C", "60C/h", "witness-self-supporting");
Expect(reading.Reached == "6", $"1222 °C at 60 °C/h reaches cone 6, not {reading.Reached}");

var charts = await client.ListChartsAsync();
Expect(charts.DatasetVersion.Length > 0, "a list names its data");

var converted = await client.ConvertAsync(new()
{
    Units = TemperatureUnit.C,
    Lines = [new() { Cone = "6", Rate = 60 }, new() { Temperature = 998, Rate = 60 }, new() { Cone = "0" }],
});
Expect(converted is { Answered: 2, Refused: 1 }, "a bad line spoils no other");
Expect(converted.Lines.ElementAt(0).EndPoint?.Celsius == 1222, "a line is answered as the route of its cone");
Expect(converted.Lines.ElementAt(1).Reading?.Reached == "06", "a temperature as a bare number is in the request's units");

var solved = await client.SolveFiringAsync(new()
{
    Units = TemperatureUnit.C,
    Cone = "6",
    Find = SolveRequestFind.Peak,
    Segments = [new() { Rate = 60 }],
});
Expect(
    solved.Feasible && Math.Abs(solved.Celsius!.Value - 1222) < 8,
    $"a ramp of 60 °C/h puts cone 6 down near 1222 °C, not {solved.Celsius}");

var body = (await client.GetClayBodyAsync("mid-range-stoneware-light")).DatasetVersion;
Expect(body == charts.DatasetVersion, "every answer names the same data");

var load = await client.CheckLoadAsync(new()
{
    Kiln = new() { Heat = KilnHeat.Electric, MaxCone = "8", Atmospheres = [FiringAtmosphere.Oxidation] },
    Firing = new() { FiringKind = FiringKind.Glaze, Cone = "6", Atmosphere = FiringAtmosphere.Oxidation },
    Pieces = [new() { Id = "mug", Body = "red-earthenware", State = PieceState.Bisqued }],
});
Expect(load.Verdict == Verdict.Refuse, "red earthenware does not stand cone 6");

var colours = await client.ResolveColoursAsync(new()
{
    Items = [new() { Colorants = [new() { Colorant = "copper" }] }, new() { Colorants = [new() { Colorant = "coper" }] }],
});
Expect(colours is { Answered: 1, Refused: 1 }, "a bad recipe spoils no other");

var fit = await client.FitScheduleAsync("mid-range-glaze", new() { Cone = "6", Units = TemperatureUnit.C });
Expect(fit.Cautions.Count > 0, "a programme comes with its cautions");

try
{
    await client.GetConeAsync("0");
    Expect(false, "cone 0 is refused");
}
catch (ApiException<Problem> refused)
{
    Expect(refused.Result is { Status: 400, Detail.Length: > 0 }, "a refusal is a problem with words for people");
}

Console.WriteLine("Ten routes answered the client of NSwag.");

static void Expect(bool holds, string what)
{
    if (!holds) throw new InvalidOperationException("Not so: " + what);
}
