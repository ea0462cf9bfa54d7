using ConeService.Api.Commands;
using ConeService.Api.Operation;
using ConeService.Api.Operation.Signals;
using ConeService.Api.Operation.Work;
using ConeService.Api.Tests.Support;
using Microsoft.Extensions.Configuration;

namespace ConeService.Api.Tests.Operation;

/// <summary>What the service is told at its start is understood, or stops it with what was meant.</summary>
public class SettingTests
{
    [Theory]
    [InlineData("ConeService:PublicBaes", "ConeService:PublicBase")]
    [InlineData("ConeService:Data:Pth", "ConeService:Data:Path")]
    [InlineData("ConeService:Data:Overlay:0", "ConeService:Data:Overlays:#")]
    [InlineData("ConService:Data:Path", "ConeService")]
    public void A_misspelt_setting_stops_the_start_with_what_was_meant(string name, string meant)
    {
        var message = Assert.Throws<InvalidSettingException>(() => SettingNames.Check(Of((name, "x")))).Message;
        Assert.StartsWith("There is no setting “", message, StringComparison.Ordinal);
        Assert.Contains(meant, message, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_setting_and_what_others_own_is_taken()
    {
        SettingNames.Check(Of([
            .. SettingNames.All.Select(s => (s.Name.Replace("#", "0", StringComparison.Ordinal), "1")),
            ("Logging:LogLevel:Default", "Warning"), ("AllowedHosts", "*"), ("PATH", "/bin"),
            ("Serilog:Level", "x"), ("ConeService:Data:Overlays", ""),
        ]));
        SettingNames.Check(Of(("CONESERVICE:data:path", "x")));
        SettingNames.CheckOptions(
            ["--urls", "http://localhost:1", "--environment=Test", "--ConeService:Data:Path=x", "--OTEL_SERVICE_NAME=x"]);
    }

    [Theory]
    [InlineData("--url=http://localhost:1", "Probably --urls.")]
    [InlineData("--ConServices:Data:Path=x", "Probably --ConeService:Data:Path")]
    [InlineData("--nonsense", "--help names them all.")]
    public void An_option_that_nothing_reads_stops_the_start(string option, string says) => Assert.Contains(
        says, Assert.Throws<InvalidSettingException>(() => SettingNames.CheckOptions([option])).Message, StringComparison.Ordinal);

    [Theory]
    [InlineData("ConeService:Metrics:Enabled", "yes")]
    [InlineData("ConeService:Metrics:Port", "0")]
    [InlineData("ConeService:Metrics:Port", "65536")]
    public void A_value_that_the_metrics_do_not_take_is_named(string name, string value) => Assert.Contains(
        $"“{value}”",
        Assert.Throws<InvalidSettingException>(() => MetricsSettings.Read(Of((name, value)))).Message,
        StringComparison.Ordinal);

    [Theory]
    [InlineData("AtOnce", "0")]
    [InlineData("Waiting", "-1")]
    [InlineData("SecondsAtMost", "many")]
    [InlineData("Solver", "perhaps")]
    public void A_bound_of_computations_that_is_none_is_named(string name, string value) => Assert.Contains(
        $"“{value}”",
        Assert.Throws<InvalidSettingException>(() => ComputationSettings.Read(Of(("ConeService:Computations:" + name, value)))).Message,
        StringComparison.Ordinal);

    // As its users run it: one line, and no stack.
    [Fact]
    public async Task A_misspelt_setting_is_told_in_one_line()
    {
        var (exitCode, output) = await HostProcess.Run("--urls", "http://127.0.0.1:0", "--ConeService:Data:Pth=x");
        Assert.Equal(2, exitCode);
        Assert.Equal(
            "The service does not start: There is no setting “ConeService:Data:Pth”. "
                + "Probably ConeService:Data:Path or ConeService:PathBase.",
            output.Trim());
    }

    [Fact]
    public async Task Help_names_every_verb_and_every_setting()
    {
        var (exitCode, output) = await HostProcess.Run("--help");
        Assert.Equal(0, exitCode);
        Assert.All(SettingNames.All, s => Assert.Contains(s.Name, output, StringComparison.Ordinal));
        Assert.All(
            new[] { "check-data", "data-dictionary", "probe", "version" },
            v => Assert.Contains($"  {v}", output, StringComparison.Ordinal));
    }

    [Fact]
    public async Task A_word_that_is_no_verb_is_refused_with_the_one_meant()
    {
        var (exitCode, output) = await HostProcess.Run("chek-data");
        Assert.Equal((2, "There is no command “chek-data”. Probably check-data."), (exitCode, output.Trim()));
    }

    [Fact]
    public async Task The_version_is_that_of_the_build()
    {
        Assert.Equal(0, await CommandLine.RunAsync(["version"]));
        Assert.Equal("1.0.0", BuildInfo.Version);
    }

    private static IConfigurationRoot Of(params IEnumerable<(string Name, string Value)> settings) => new ConfigurationBuilder()
        .AddInMemoryCollection(settings.Select(s => new KeyValuePair<string, string?>(s.Name, s.Value)))
        .Build();
}
