using System.Text.Json;
using ConeService.Api.Tests.Support;
using Microsoft.AspNetCore.Mvc.Testing;

namespace ConeService.Api.Tests.Http;

public class DatasetSettingsTests
{
    private const string Cone6At60 = "witness-self-supporting,6,60,1222,2232,orton-2016,corroborated,";

    [Fact]
    public async Task A_package_in_a_directory_replaces_the_embedded_one()
    {
        using var package = new PackageCopy();
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,60,1223,2233,orton-2016,corroborated,");
        using var factory = new WebApplicationFactory<Program>().WithWebHostBuilder(b => b.UseSetting("ConeService:Data:Path", package.Directory));
        using var client = factory.CreateClient();
        var answer = await client.GetStringAsync(new Uri("/v1/cones/6/end-point?rate=60C/h", UriKind.Relative), Support.Api.Cancel);
        Assert.Contains("\"celsius\":1223,", answer, StringComparison.Ordinal);
    }

    [Fact]
    public async Task A_changed_directory_is_swapped_in_while_running_and_a_broken_one_is_not()
    {
        using var package = new PackageCopy();
        using var factory = new WebApplicationFactory<Program>().WithWebHostBuilder(b => b.UseSetting("ConeService:Data:Path", package.Directory));
        using var client = factory.CreateClient();
        Assert.Equal(1222, await Celsius(client));
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,60,1223,2233,orton-2016,corroborated,");
        await Eventually(async () => await Celsius(client) == 1223);
        package.Replace("end-points.csv", "witness-self-supporting,6,60,1223,2233", "witness-self-supporting,6,60,1223,9999");
        await Task.Delay(1500, Support.Api.Cancel);
        Assert.Equal(1223, await Celsius(client));
    }

    [Fact]
    public async Task A_broken_package_stops_the_start_with_file_line_field_and_reason()
    {
        using var package = new PackageCopy();
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,60,1222,2332,orton-2016,corroborated,");
        var line = File.ReadAllLines(Path.Combine(package.Directory, "end-points.csv")).Index().First(l => l.Item.Contains("1222,2332", StringComparison.Ordinal)).Index + 1;
        var (exitCode, output) = await HostProcess.Run("--ConeService:Data:Path=" + package.Directory, "--urls=http://127.0.0.1:0");
        Assert.Equal(1, exitCode);
        Assert.Contains($"end-points.csv line {line}, field fahrenheit", output, StringComparison.Ordinal);
        Assert.Contains("fahrenheit-matches-celsius", output, StringComparison.Ordinal);
    }

    [Fact]
    public async Task The_check_data_verb_says_what_the_start_would_say()
    {
        using var package = new PackageCopy();
        Assert.Equal(0, (await HostProcess.Run("check-data", package.Directory)).ExitCode);
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,60,1222,2232,nobody,corroborated,");
        var (exitCode, output) = await HostProcess.Run("check-data", package.Directory);
        Assert.Equal(1, exitCode);
        Assert.Contains("nobody", output, StringComparison.Ordinal);
        Assert.Equal(2, (await HostProcess.Run("check-data", "--nonsense")).ExitCode);
    }

    private static async Task<int> Celsius(HttpClient client)
    {
        using var document = JsonDocument.Parse(await client.GetStringAsync(new Uri("/v1/cones/6/end-point?rate=60C/h", UriKind.Relative), Support.Api.Cancel));
        return document.RootElement.GetProperty("celsius").GetInt32();
    }

    private static async Task Eventually(Func<Task<bool>> condition)
    {
        for (var i = 0; i < 100; i++)
        {
            if (await condition()) return;
            await Task.Delay(100, Support.Api.Cancel);
        }

        Assert.Fail("It did not happen within ten seconds.");
    }
}
