using ConeService.Contract.Answers;
using ConeService.Data;
using ConeService.Firing.Cones;

namespace ConeService.Firing.Tests.Support;

/// <summary>The embedded package and its charts, built once for all tests.</summary>
internal static class Reference
{
    public static Dataset Dataset { get; } = DatasetLoader.LoadEmbedded();

    public static ConeCharts Charts { get; } = new(Dataset);

    public static ConeQuestion Ask(string? rate, string? chart = null)
    {
        var findings = new List<Finding>();
        var question = ConeQuestion.Read(Charts, rate, chart, "rate", "chart", findings);
        Assert.Empty(findings);
        return question!;
    }
}
