using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

public class DatasetSettingsTests(Support.Api api)
{
    private const string Cone6At60 = "witness-self-supporting,6,6,60,1222,2232,orton-2016,published,";

    [Fact]
    public async Task A_package_in_a_directory_replaces_the_embedded_one()
    {
        using var package = new PackageCopy();
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1223,2233,orton-2016,published,");
        using var host = new OwnHost(package.Directory);
        Assert.Equal(1223, await Celsius(host));
    }

    [Fact]
    public async Task A_changed_directory_is_swapped_in_while_running_and_a_broken_one_is_not()
    {
        using var package = new PackageCopy();
        using var host = new OwnHost(package.Directory);
        await host.Log.Until("Data package");
        Assert.Equal(1222, await Celsius(host));
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1223,2233,orton-2016,published,");
        await host.Log.Until("Data package");
        Assert.Equal(1223, await Celsius(host));
        package.Replace("end-points.csv", "witness-self-supporting,6,6,60,1223,2233", "witness-self-supporting,6,6,60,1223,9999");
        await host.Log.Until("The changed data package was refused");
        Assert.Equal(1223, await Celsius(host));
        await IsTold(host, "/health/ready");
        await IsTold(host, "/v1/dataset");
        // What is pinned is kept for ever.
        using var ready = JsonDocument.Parse(await host.Text("/health/ready"));
        var version = ready.RootElement.GetProperty("datasetVersion").GetString();
        using var pinned = JsonDocument.Parse(await host.Text($"/v1/dataset?dataset={version}"));
        Assert.Equal(JsonValueKind.Null, pinned.RootElement.GetProperty("packageNotUsed").ValueKind);
    }

    [Theory]
    [InlineData("/health/ready")]
    [InlineData("/v1/dataset")]
    public async Task Without_a_package_that_waits_none_is_told_of(string url) =>
        Assert.Equal(JsonValueKind.Null, (await api.Json(url)).GetProperty("packageNotUsed").ValueKind);

    [Fact]
    public async Task A_damaged_package_stops_the_start_and_names_the_command_for_one_that_is_meant()
    {
        using var package = new PackageCopy();
        // Every rule holds: only the seal tells that a digit is another.
        package.Damage("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1223,2233,orton-2016,published,");
        var (exitCode, output) = await HostProcess.Run("--ConeService:Data:Path=" + package.Directory, "--urls=http://127.0.0.1:0");
        Assert.Equal(1, exitCode);
        Assert.Contains("end-points.csv: has the SHA-256 ", output, StringComparison.Ordinal);
        Assert.Contains("check-data DIRECTORY --seal", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_broken_package_stops_the_start_with_file_line_field_and_reason()
    {
        using var package = new PackageCopy();
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1222,2332,orton-2016,published,");
        var lines = File.ReadAllLines(Path.Combine(package.Directory, "end-points.csv"));
        var line = lines.Index().First(l => l.Item.Contains("1222,2332", StringComparison.Ordinal)).Index + 1;
        var (exitCode, output) = await HostProcess.Run("--ConeService:Data:Path=" + package.Directory, "--urls=http://127.0.0.1:0");
        Assert.Equal(1, exitCode);
        Assert.Contains($"end-points.csv line {line}, field fahrenheit", output, StringComparison.Ordinal);
        Assert.Contains("fahrenheit-matches-celsius", output, StringComparison.Ordinal);
    }

    private static async Task IsTold(OwnHost host, string url)
    {
        using var answer = JsonDocument.Parse(await host.Text(url));
        var notUsed = answer.RootElement.GetProperty("packageNotUsed");
        Assert.Equal("refused", notUsed.GetProperty("standing").GetString());
        Assert.True(notUsed.GetProperty("since").GetDateTimeOffset() <= TimeProvider.System.GetUtcNow());
        Assert.Contains("end-points.csv line ", notUsed.GetProperty("reason").GetString(), StringComparison.Ordinal);
        Assert.Contains("(rule maximum)", notUsed.GetProperty("reason").GetString(), StringComparison.Ordinal);
    }

    private static async Task<int> Celsius(OwnHost host)
    {
        using var document = JsonDocument.Parse(await host.Text("/v1/cones/6/end-point?rate=60C/h"));
        return document.RootElement.GetProperty("celsius").GetInt32();
    }
}
