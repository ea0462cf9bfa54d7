using System.Text.Json;
using ConeService.Api.Features.Plans;
using ConeService.Contract.Answers;
using ConeService.Contract.Json;
using ConeService.Contract.Plans;
using ConeService.Data;
using ConeService.Firing;
using ConeService.Planning;

namespace ConeService.Api.Commands;

/// <summary><c>plan-figure request out</c>: plans a request and draws the plan. The search takes a fixed number of steps from a fixed seed
/// on one worker, so that the same request gives the same figure.</summary>
internal static class WritePlanFigure
{
    private static readonly PlanEffort Fixed = new(Seconds: 0, Steps: 1500, Workers: 1, Solver: false);

    public static async Task<int> RunAsync(string[] args, TextWriter output)
    {
        if (args.Length != 2)
        {
            output.WriteLine("Usage: plan-figure request out");
            return 2;
        }

        try
        {
            var (request, plan) = await PlanAsync(await File.ReadAllBytesAsync(args[0]));
            await File.WriteAllTextAsync(args[1], PlanFigure.Render(plan, request));
            output.WriteLine($"Wrote {args[1]}.");
            return 0;
        }
        catch (RefusedException refused)
        {
            foreach (var finding in refused.Findings) output.WriteLine($"{finding.Field}: {finding.Message}");
            return 1;
        }
    }

    /// <summary>Plans a request, the same whenever it is asked.</summary>
    /// <exception cref="RefusedException">Something is wrong with it.</exception>
    internal static async Task<(PlanRequest Request, FiringPlan Plan)> PlanAsync(byte[] json)
    {
        var request = JsonSerializer.Deserialize<PlanRequest>(json, ConeJson.Options)!;
        return (request, await new Planner(FiringReference.OpenWithoutStudy(DatasetLoader.LoadEmbedded())).PlanAsync(request, Fixed));
    }
}
