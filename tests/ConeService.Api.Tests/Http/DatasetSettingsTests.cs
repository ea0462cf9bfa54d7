using System.Text.Json;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Http;

public class DatasetSettingsTests
{
    private const string Cone6At60 = "witness-self-supporting,6,6,60,1222,2232,orton-2016,corroborated,";

    [Fact]
    public async Task A_package_in_a_directory_replaces_the_embedded_one()
    {
        using var package = new PackageCopy();
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1223,2233,orton-2016,corroborated,");
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
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1223,2233,orton-2016,corroborated,");
        await host.Log.Until("Data package");
        Assert.Equal(1223, await Celsius(host));
        package.Replace("end-points.csv", "witness-self-supporting,6,6,60,1223,2233", "witness-self-supporting,6,6,60,1223,9999");
        await host.Log.Until("The changed data package was refused");
        Assert.Equal(1223, await Celsius(host));
    }

    [Fact]
    public async Task A_broken_package_stops_the_start_with_file_line_field_and_reason()
    {
        using var package = new PackageCopy();
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1222,2332,orton-2016,corroborated,");
        var lines = File.ReadAllLines(Path.Combine(package.Directory, "end-points.csv"));
        var line = lines.Index().First(l => l.Item.Contains("1222,2332", StringComparison.Ordinal)).Index + 1;
        var (exitCode, output) = await HostProcess.Run("--ConeService:Data:Path=" + package.Directory, "--urls=http://127.0.0.1:0");
        Assert.Equal(1, exitCode);
        Assert.Contains($"end-points.csv line {line}, field fahrenheit", output, StringComparison.Ordinal);
        Assert.Contains("fahrenheit-matches-celsius", output, StringComparison.Ordinal);
    }

    private static async Task<int> Celsius(OwnHost host)
    {
        using var document = JsonDocument.Parse(await host.Text("/v1/cones/6/end-point?rate=60C/h"));
        return document.RootElement.GetProperty("celsius").GetInt32();
    }
}
