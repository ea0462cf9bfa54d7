// A program that has the packages and nothing else of this repository.
using System.Diagnostics;
using ConeService.Client;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using ConeService.Data;
using ConeService.Firing;
using Microsoft.Extensions.DependencyInjection;

// What opening the embedded package takes, which the client does in the background: by the clock, and of the processor, which others may
// be using too.
var clock = Stopwatch.StartNew();
var before = Environment.CpuUsage.TotalTime;
var dataset = DatasetLoader.LoadSealed();
_ = FiringReference.OpenWithoutStudy(dataset);
var opened = clock.ElapsedMilliseconds;
var worked = (Environment.CpuUsage.TotalTime - before).TotalMilliseconds;

await using var services = new ServiceCollection().AddConeClient(_ => { }).BuildServiceProvider();
var answer = await services.GetRequiredService<IConesClient>()
    .EndPointAsync(Cone.Parse("6"), HeatingRate.FromCelsiusPerHour(60));
Console.WriteLine(FormattableString.Invariant(
    $"{answer.Origin}: cone {answer.Value.Cone} at {answer.Value.Celsius} °C, data {answer.DatasetVersion}"));
Console.WriteLine(FormattableString.Invariant($"Opened in {opened} ms, with {worked:0} ms of the processor."));
