// Prints what is loaded when, by a plan that was searched for so many seconds: WeekPlan samples/studio/request.json 5
using System.Globalization;
using System.Text.Json;
using ConeService.Client;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Plans;
using Microsoft.Extensions.DependencyInjection;

var root = Environment.GetEnvironmentVariable("CONESERVICE") ?? "http://localhost:5000";
await using var services = new ServiceCollection().AddConeClient(o => o.Service = new Uri(root)).BuildServiceProvider();

var request = JsonSerializer.Deserialize<PlanRequest>(await File.ReadAllTextAsync(args[0]), ConeJson.Options)!;
var seconds = double.Parse(args[1], CultureInfo.InvariantCulture);
try
{
    var plan = (await services.GetRequiredService<IPlansClient>().PlanAsync(request, seconds)).Value;
    foreach (var firing in plan.Firings)
    {
        var when = firing.LoadingFrom.ToString("yyyy-MM-dd HH:mm", CultureInfo.InvariantCulture);
        Console.WriteLine($"{when} {firing.KilnId}: {firing.FiringKind} to cone {firing.Cone}, {Math.Round(firing.FillPercent)} % full");
        foreach (var layer in firing.Layers)
            Console.WriteLine($"  shelf {layer.Number}: {string.Join(", ", layer.Pieces.Select(p => $"{p.Count} × {p.Id}"))}");
    }

    foreach (var left in plan.Unplanned) Console.WriteLine($"left undone: {left.Count} × {left.Id}, {left.Reason}");
    Console.WriteLine($"{plan.Summary.Late} late, {plan.Summary.Undone} undone");
    return 0;
}
catch (RefusedException refused)
{
    foreach (var finding in refused.Findings) await Console.Error.WriteLineAsync($"{finding.Field}: {finding.Message}");
}
catch (ConeServiceAwayException away)
{
    // Nobody else plans: the plan of last week still hangs on the kiln room's door.
    await Console.Error.WriteLineAsync(away.Message);
}

return 1;
