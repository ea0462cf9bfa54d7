// A program that has the packages and nothing else of this repository.
using ConeService.Client;
using ConeService.Contract.Cones;
using ConeService.Contract.Quantities;
using Microsoft.Extensions.DependencyInjection;

await using var services = new ServiceCollection().AddConeClient(_ => { }).BuildServiceProvider();
var answer = await services.GetRequiredService<IConesClient>()
    .EndPointAsync(Cone.Parse("6"), HeatingRate.FromCelsiusPerHour(60));
Console.WriteLine(FormattableString.Invariant(
    $"{answer.Origin}: cone {answer.Value.Cone} at {answer.Value.Celsius} °C, data {answer.DatasetVersion}"));
