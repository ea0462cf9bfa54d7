// Adds to a CSV with the columns “cone” and “rate” where each cone goes down: CsvConverter cones.csv > end-points.csv
using ConeService.Client;
using ConeService.Contract.Conversions;
using CsvHelper;
using Microsoft.Extensions.DependencyInjection;

// Without CONESERVICE the data of this process answers.
var root = Environment.GetEnvironmentVariable("CONESERVICE");
await using var services = new ServiceCollection()
    .AddConeClient(o => o.Service = root is null ? null : new Uri(root))
    .BuildServiceProvider();
var conversions = services.GetRequiredService<IConversionsClient>();

using var csv = CsvReader.FromText(await File.ReadAllTextAsync(args[0]), new() { HasHeader = true });
var lines = new List<ConversionLine>();
// A cone stays the text that it is: as a number, 06 would be 6.
while (csv.Read()) lines.Add(new(Cone: csv["cone"].ToString(), Rate: csv["rate"].ToString()));

var answer = await conversions.ConvertAsync(new(lines));
Console.WriteLine("cone,rate,celsius,fahrenheit,problem");
foreach (var (line, result) in lines.Zip(answer.Value.Lines))
{
    Console.WriteLine(result.EndPoint is { } at
        ? FormattableString.Invariant($"cone {at.Cone},{line.Rate.Text},{at.Celsius},{at.Fahrenheit},")
        : $"cone {line.Cone.Text},{line.Rate.Text},,,{result.Problems[0].Code}");
}

await Console.Error.WriteLineAsync($"{answer.Origin} answered from data {answer.DatasetVersion}.");
return answer.Value.Refused == 0 ? 0 : 1;
