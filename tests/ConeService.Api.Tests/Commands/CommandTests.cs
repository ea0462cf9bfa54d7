using System.Net;
using System.Net.Sockets;
using ConeService.Api.Commands;
using ConeService.Api.Tests.Support;

namespace ConeService.Api.Tests.Commands;

/// <summary>The verbs of the host besides serving.</summary>
public class CommandTests(Support.Api api)
{
    private const string Cone6At60 = "witness-self-supporting,6,6,60,1222,2232,orton-2016,published,";

    [Fact]
    public void A_valid_package_is_told_by_its_version_and_checksum()
    {
        using var package = new PackageCopy();
        using var overlay = new Overlay("shed").With("messages", "http.one-value,anyone,de,ein Wert");
        var (exitCode, output) = Run(o => CheckData.Run([package.Directory, "--overlay", overlay.Directory], o));
        Assert.Equal(0, exitCode);
        Assert.Contains("+shed.1.0.0 is valid: ", output, StringComparison.Ordinal);
        Assert.Matches("checksum [0-9a-f]{64}\\.", output);
    }

    [Fact]
    public void A_broken_package_is_told_as_the_start_would_tell_it()
    {
        using var package = new PackageCopy();
        package.Replace("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1222,2232,nobody,published,");
        var (exitCode, output) = Run(o => CheckData.Run([package.Directory], o));
        Assert.Equal(1, exitCode);
        Assert.Contains("nobody", output, StringComparison.Ordinal);
    }

    // Glazes whose cones all came without a zero: what a spreadsheet leaves of 06. It is valid, and told.
    [Fact]
    public void An_overlay_that_lost_its_zeros_is_valid_and_warned_of()
    {
        using var package = new PackageCopy();
        using var overlay = new Overlay("shed").With(
            "glazes",
            "shed-blue,shed blue,glaze,5,6,6,oxidation,,review,,,glaze,bisqued,,Dry.,,low,,,,no,leach-test,,,,,"
            + "common-practice,common-practice,common-practice,");
        var (exitCode, output) = Run(o => CheckData.Run([package.Directory, "--overlay", overlay.Directory], o));
        Assert.Equal(0, exitCode);
        Assert.Contains("Warning: glazes.csv, field cone_min, cone_best, cone_max: ", output, StringComparison.Ordinal);
        Assert.Contains("lines 2 ", output, StringComparison.Ordinal);
        Assert.Contains("(rule lost-zeros)", output, StringComparison.Ordinal);
    }

    [Fact]
    public void An_edited_package_and_its_overlay_are_sealed_by_one_command()
    {
        using var package = new PackageCopy();
        using var overlay = new Overlay("shed").With("messages", "http.one-value,anyone,de,ein Wert");
        package.Damage("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1223,2233,orton-2016,published,");
        string[] named = [package.Directory, "--overlay", overlay.Directory];
        var (refused, reason) = Run(o => CheckData.Run(named, o));
        Assert.Equal(1, refused);
        Assert.Contains("check-data DIRECTORY --seal", reason, StringComparison.Ordinal);

        var (exitCode, output) = Run(o => CheckData.Run([.. named, "--seal"], o));

        Assert.Equal(0, exitCode);
        Assert.Contains($"Sealed {Path.Combine(package.Directory, "datapackage.json")}.", output, StringComparison.Ordinal);
        Assert.Contains("\"hash\": \"sha256:", Descriptor(overlay.Directory), StringComparison.Ordinal);
        Assert.Equal(0, Run(o => CheckData.Run(named, o)).ExitCode);
    }

    [Fact]
    public void What_is_not_valid_is_not_sealed()
    {
        using var package = new PackageCopy();
        var before = Descriptor(package.Directory);
        package.Damage("end-points.csv", Cone6At60, "witness-self-supporting,6,6,60,1222,9999,orton-2016,published,");

        var (exitCode, output) = Run(o => CheckData.Run([package.Directory, "--seal"], o));

        Assert.Equal(1, exitCode);
        Assert.Contains("(rule maximum)", output, StringComparison.Ordinal);
        Assert.Equal(before, Descriptor(package.Directory));
    }

    [Theory]
    [InlineData("--seal")]
    [InlineData("package.zip", "--seal")]
    public void Only_directories_can_be_sealed(params string[] arguments)
    {
        var (exitCode, output) = Run(o => CheckData.Run(arguments, o));
        Assert.Equal(2, exitCode);
        Assert.Contains("--seal writes into the directories named", output, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--nonsense")]
    [InlineData("one", "two")]
    [InlineData("--overlay")]
    public void An_argument_that_check_data_does_not_know_is_refused(params string[] arguments)
    {
        var (exitCode, output) = Run(o => CheckData.Run(arguments, o));
        Assert.Equal(2, exitCode);
        Assert.Contains($"“{arguments[^1]}”", output, StringComparison.Ordinal);
    }

    [Fact]
    public void The_data_dictionary_is_written_to_a_file()
    {
        var directory = Directory.CreateTempSubdirectory("cone-dictionary-");
        try
        {
            var file = Path.Combine(directory.FullName, "dictionary.md");
            Assert.Equal(0, Run(o => WriteDataDictionary.Run([file], o)).ExitCode);
            Assert.Contains("end-points", File.ReadAllText(file), StringComparison.Ordinal);
        }
        finally
        {
            directory.Delete(recursive: true);
        }

        Assert.Equal((2, "Usage: data-dictionary file" + Environment.NewLine), Run(o => WriteDataDictionary.Run([], o)));
    }

    [Fact]
    public async Task The_probe_says_whether_a_service_answers()
    {
        var ready = new Uri(api.Client.BaseAddress!, "/health/ready").ToString();
        Assert.Equal(0, await CommandLine.RunAsync(["probe", ready]));
        Assert.Equal(1, await CommandLine.RunAsync(["probe", new Uri(api.Client.BaseAddress!, "/nothing").ToString()]));
        Assert.Equal(1, await CommandLine.RunAsync(["probe", $"http://127.0.0.1:{FreePort()}/health/ready"]));
    }

    [Fact]
    public async Task Without_a_verb_the_service_starts()
    {
        Assert.Null(await CommandLine.RunAsync([]));
        Assert.Null(await CommandLine.RunAsync(["--urls=http://127.0.0.1:0"]));
    }

    private static string Descriptor(string directory) => File.ReadAllText(Path.Combine(directory, "datapackage.json"));

    private static (int ExitCode, string Output) Run(Func<TextWriter, int> verb)
    {
        using var output = new StringWriter();
        var exitCode = verb(output);
        return (exitCode, output.ToString());
    }

    private static int FreePort()
    {
        using var listener = new TcpListener(IPAddress.Loopback, 0);
        listener.Start();
        return ((IPEndPoint)listener.LocalEndpoint).Port;
    }
}
