using ConeService.Api.Commands;

namespace ConeService.Api.Tests.Commands;

/// <summary>The figure of a plan from the command line.</summary>
public sealed class PlanFigureTests : IDisposable
{
    private readonly DirectoryInfo directory = Directory.CreateTempSubdirectory("cone-figure-");

    public void Dispose() => directory.Delete(recursive: true);

    [Fact]
    public async Task The_sample_studio_is_drawn_as_it_is_committed()
    {
        var drawn = Path.Combine(directory.FullName, "plan.svg");
        using var output = new StringWriter();
        var code = await WritePlanFigure.RunAsync(
            [Path.Combine(Support.Repository.Root, "samples", "studio", "request.json"), drawn], output);

        Assert.Equal((0, $"Wrote {drawn}."), (code, output.ToString().Trim()));
        Assert.Equal(
            await File.ReadAllTextAsync(Path.Combine(Support.Repository.Root, "docs", "planning-sample.svg"), Support.Api.Cancel),
            await File.ReadAllTextAsync(drawn, Support.Api.Cancel));
    }

    [Fact]
    public async Task What_is_wrong_is_told_and_nothing_written()
    {
        var request = Path.Combine(directory.FullName, "request.json");
        await File.WriteAllTextAsync(request, """{"horizon":{"from":"2027-01-11T00:00Z","to":"2027-01-10T00:00Z"}}""", Support.Api.Cancel);
        using var output = new StringWriter();

        Assert.Equal(1, await WritePlanFigure.RunAsync([request, Path.Combine(directory.FullName, "none.svg")], output));
        Assert.Contains("/kilns: ", output.ToString(), StringComparison.Ordinal);
        Assert.False(File.Exists(Path.Combine(directory.FullName, "none.svg")));
        Assert.Equal(2, await WritePlanFigure.RunAsync([request], output));
    }
}
